import type { Uri } from 'vscode';

export interface Rename {
  readonly oldUri: Uri;
  readonly newUri: Uri;
}

/** Where a file is after files and folders have other names; null: where it was. */
export function movedTo(uri: Uri, renames: readonly Rename[]): Uri | null {
  for (const { oldUri, newUri } of renames) {
    if (uri.toString() === oldUri.toString()) return newUri;
    const isInside = uri.scheme === oldUri.scheme && uri.path.startsWith(`${oldUri.path}/`);
    if (isInside) return newUri.with({ path: newUri.path + uri.path.slice(oldUri.path.length) });
  }
  return null;
}
