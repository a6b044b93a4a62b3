import { DidChangeWatchedFilesNotification } from 'vscode-languageserver';
import type { Connection, InitializeParams, WorkspaceFoldersChangeEvent } from 'vscode-languageserver';
import { endings } from '../format/file-kinds.ts';
import type { Abilities } from './abilities.ts';
import { answering } from './answering.ts';
import { asking } from './asking.ts';
import type { Asking } from './asking.ts';
import { registerDiagnostics } from './diagnostics.ts';
import { foldersOf } from './folders.ts';
import { registerHandlers } from './handlers.ts';
import { staleNotification } from './messages.ts';
import type { Stale } from './messages.ts';
import { openDocuments } from './open-documents.ts';
import { openTexts } from './open-texts.ts';
import { partsFiles } from './parts-files.ts';
import type { ServerHost } from './server.ts';
import type { Session } from './session.ts';
import { registerForSettings, settingsStore } from './settings.ts';

/** What goes on between a client and the server from its `initialize` to its `shutdown`. */
export interface Serving {
  readonly changeFolders: (event: WorkspaceFoldersChangeEvent) => void;
  readonly stop: () => void;
}

export interface Served {
  readonly connection: Connection;
  readonly host: ServerHost;
  readonly session: Session;
  readonly params: InitializeParams;
  readonly abilities: Abilities;
}

/**
 * What documents use is read again from the disk so often, in milliseconds. No client watches all of it: it may lie outside
 * the folders of the workspace, or behind a link.
 */
const readingPause = 2000;

export function serve({ connection, host, session, params, abilities }: Served): Serving {
  const { console, languages } = connection;
  const { time, version, descriptionOf, files } = host;
  const ask = asking(console, session);
  const folders = foldersOf(params);
  const texts = openTexts(connection);

  const refreshHints = (): void => {
    if (abilities.refreshesHints) ask('Hints anew', () => languages.inlayHint.refresh());
  };
  const onStale = (uris: readonly string[]): void => {
    if (abilities.hearsFigures)
      ask('Changes of parts files', () =>
        connection.sendNotification(staleNotification, { uris } satisfies Stale),
      );
    refreshDiagnostics(uris);
    refreshHints();
  };
  const documents = openDocuments({ texts, parts: partsFiles(files), folders: folders.all, onStale });
  const answer = answering({ console, documents, session, time });
  const settings = settingsStore({ connection, abilities, time, onChange: refreshHints });
  texts.onClose(({ uri }) => {
    settings.forget(uri);
  });
  const refreshDiagnostics = registerDiagnostics({
    connection,
    texts,
    abilities,
    answering: answer,
    ask,
    descriptionOf,
    time,
  });
  registerHandlers({ connection, documents, abilities, answering: answer, session, settings, version });

  connection.onDidChangeWatchedFiles(documents.readAgain);
  connection.onInitialized(() => {
    registerForSettings(connection, abilities, ask);
    watchPartsFiles(connection, abilities, ask);
  });
  let stop = (): void => undefined;
  const readOn = (): void => {
    stop = time.after(readingPause, () => {
      if (documents.useOthers()) documents.readAgain();
      readOn();
    });
  };
  readOn();
  return {
    changeFolders: (event) => {
      folders.change(event);
      documents.forget();
    },
    stop: () => {
      stop();
    },
  };
}

/** A client that watches tells of most changes at once. */
function watchPartsFiles(connection: Connection, { registersWatchers }: Abilities, ask: Asking): void {
  if (!registersWatchers) return;
  ask('Changes of parts files', () =>
    connection.client.register(DidChangeWatchedFilesNotification.type, {
      watchers: [{ globPattern: `**/*{${endings.parts.join(',')}}` }],
    }),
  );
}
