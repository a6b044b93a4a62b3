import type { Connection, InitializeParams } from 'vscode-languageserver';
import { DidChangeWatchedFilesNotification } from 'vscode-languageserver';
import { fileId } from '../project/file-names.ts';
import type { FileRead, Files } from '../project/snapshot.ts';
import { endings, isPartsFile } from '../format/file-kinds.ts';

/** Files that documents use and that are not open themselves. */
export interface PartsFiles {
  /** The folders of the workspace, as URIs. */
  readonly folders: () => readonly string[];
  /** As on disk, each asked for once until it is forgotten. */
  readonly locate: Files['locate'];
  readonly read: Files['read'];
  readonly forget: () => void;
  /** Called by the connection when it is set up: which folders there are. */
  readonly begin: (params: InitializeParams) => void;
}

export function partsFiles(disk: Files): PartsFiles {
  const places = new Map<string, ReturnType<Files['locate']>>();
  const texts = new Map<string, FileRead | null>();
  let folders: readonly string[] = [];
  return {
    folders: () => folders,
    locate: (uri, home) => {
      const key = JSON.stringify([uri, home]);
      const place = places.get(key) ?? disk.locate(uri, home);
      places.set(key, place);
      return place;
    },
    read: (uri) => {
      const known = texts.get(uri);
      const text = known === undefined ? disk.read(uri) : known;
      texts.set(uri, text);
      return text;
    },
    forget: () => {
      places.clear();
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
  return isPartsFile(fileId(uri));
}
