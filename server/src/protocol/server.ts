import { CodeActionKind, TextDocumentSyncKind } from 'vscode-languageserver';
import type { Connection, InitializeResult, ServerCapabilities } from 'vscode-languageserver';
import { fixAllKind } from '../editor/code-actions.ts';
import type { DescriptionOf } from '../editor/diagnostics.ts';
import type { Files } from '../project/snapshot.ts';
import type { Abilities } from './abilities.ts';
import { abilitiesOf } from './abilities.ts';
import { registerDiagnostics } from './diagnostics.ts';
import { registerHandlers } from './handlers.ts';
import { openDocuments } from './open-documents.ts';
import { isPartsUri, partsFiles, watchPartsFiles } from './parts-files.ts';
import { registerForSettings, settingsStore } from './settings.ts';
import type { Time } from './slices.ts';

/** What the server needs of the place it runs in. */
export interface ServerHost {
  readonly time: Time;
  readonly version: string;
  readonly descriptionOf: DescriptionOf;
  /** Files by their URIs. */
  readonly files: Files;
}

/** Serves one client over a connection. */
export function startServer(
  connection: Connection,
  { time, version, descriptionOf, files }: ServerHost,
): void {
  const parts = partsFiles(files);
  const documents = openDocuments(parts);
  connection.onInitialize((params): InitializeResult => {
    parts.begin(params);
    const abilities = abilitiesOf(params);
    const refreshHints = (): void => {
      if (abilities.refreshesHints) void connection.languages.inlayHint.refresh();
    };
    const refresh = (): void => {
      refreshHints();
      if (abilities.refreshesDiagnostics) void connection.languages.diagnostics.refresh();
    };
    const settings = settingsStore(connection, abilities, refresh);
    documents.texts.onDidClose(({ document }) => {
      settings.forget(document.uri);
    });
    const refreshDiagnostics = registerDiagnostics({ connection, documents, abilities, descriptionOf, time });
    const partsChanged = (): void => {
      refreshDiagnostics(documents.partsChanged());
      refreshHints();
    };
    documents.texts.onDidChangeContent(({ document }) => {
      if (isPartsUri(document.uri)) partsChanged();
    });
    documents.texts.onDidClose(({ document }) => {
      if (isPartsUri(document.uri)) partsChanged();
    });
    connection.onDidChangeWatchedFiles(partsChanged);
    registerHandlers({ connection, documents, abilities, settings, time, version });
    connection.onInitialized(() => {
      registerForSettings(connection, abilities).catch((error: unknown) => {
        connection.console.warn(`Changes of settings will not be seen: ${String(error)}`);
      });
      watchPartsFiles(connection, abilities.registersWatchers).catch((error: unknown) => {
        connection.console.warn(`Changes of parts files on disk will not be seen: ${String(error)}`);
      });
    });
    return { capabilities: capabilitiesFor(abilities), serverInfo: { name: 'ohmwright', version } };
  });
  documents.texts.listen(connection);
  connection.listen();
}

/** What the server offers, no more than the client can use. */
export function capabilitiesFor(abilities: Abilities): ServerCapabilities {
  return {
    textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental },
    inlayHintProvider: true,
    hoverProvider: true,
    documentSymbolProvider: true,
    completionProvider: { triggerCharacters: [' ', ':', '-', '.', '[', '{', ','] },
    ...(abilities.codeActionLiterals
      ? { codeActionProvider: { codeActionKinds: [CodeActionKind.QuickFix, fixAllKind] } }
      : {}),
    ...(abilities.pullsDiagnostics
      ? { diagnosticProvider: { interFileDependencies: true, workspaceDiagnostics: false } }
      : {}),
  };
}
