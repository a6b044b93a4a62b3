import type { InitializeParams, WorkspaceFoldersChangeEvent } from 'vscode-languageserver';
import { fileId } from '../project/file-names.ts';

/** The folders of the workspace, which may come and go. */
export interface Folders {
  readonly all: () => readonly string[];
  readonly change: (event: WorkspaceFoldersChangeEvent) => void;
}

/** A client that knows no workspace folders has one folder at most, under an older name. */
export function foldersOf(params: InitializeParams): Folders {
  const { rootUri } = params as { readonly rootUri?: string | null };
  const first = params.workspaceFolders?.map(({ uri }) => uri) ?? (rootUri == null ? [] : [rootUri]);
  const folders = new Set(first.map(fileId));
  return {
    all: () => [...folders],
    change: ({ added, removed }) => {
      for (const { uri } of removed) folders.delete(fileId(uri));
      for (const { uri } of added) folders.add(fileId(uri));
    },
  };
}
