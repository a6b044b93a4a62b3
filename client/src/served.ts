import { workspace } from 'vscode';
import { languageId } from '../../server/src/protocol/messages.ts';

/** What the server is asked about: only where the user works. The older sides of a comparison (`git:` and the like) are left alone. */
export function servedDocuments(): { readonly scheme: string; readonly language: string }[] {
  const folders = workspace.workspaceFolders ?? [];
  const schemes = new Set(['file', 'untitled', ...folders.map(({ uri }) => uri.scheme)]);
  return [...schemes].map((scheme) => ({ scheme, language: languageId }));
}
