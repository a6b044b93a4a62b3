import type { Connection, InitializeParams } from 'vscode-languageserver';
import { DidChangeWatchedFilesNotification } from 'vscode-languageserver';
import { endings, isPartsFile } from '../format/file-kinds.ts';

/** Files that documents use and that are not open themselves. */
export interface PartsFiles {
  /** The folders of the workspace, as URIs. */
  readonly folders: () => readonly string[];
  /** The text of a file, read once until it is forgotten; null where there is none. */
  readonly read: (uri: string) => string | null;
  readonly forget: () => void;
  /** Called by the connection when it is set up: which folders there are. */
  readonly begin: (params: InitializeParams) => void;
}

export function partsFiles(readFile: (uri: string) => string | null): PartsFiles {
  const texts = new Map<string, string | null>();
  let folders: readonly string[] = [];
  return {
    folders: () => folders,
    read: (uri) => {
      const text = texts.has(uri) ? (texts.get(uri) ?? null) : readFile(uri);
      texts.set(uri, text);
      return text;
    },
    forget: () => {
      texts.clear();
    },
    begin: (params) => {
      // A client that knows no workspace folders has one folder at most, under an older name.
      const { rootUri } = params as { readonly rootUri?: string | null };
      folders = params.workspaceFolders?.map(({ uri }) => uri) ?? (rootUri == null ? [] : [rootUri]);
    },
  };
}

/** Asks to be told when a parts file is changed on disk, where the client can. */
export async function watchPartsFiles(connection: Connection, registers: boolean): Promise<void> {
  if (!registers) return;
  await connection.client.register(DidChangeWatchedFilesNotification.type, {
    watchers: [{ globPattern: `**/*{${endings.parts.join(',')}}` }],
  });
}

export function isPartsUri(uri: string): boolean {
  return isPartsFile(uri);
}
