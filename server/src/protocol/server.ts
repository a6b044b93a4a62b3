import {
  CodeActionKind,
  DidChangeWorkspaceFoldersNotification,
  TextDocumentSyncKind,
} from 'vscode-languageserver';
import type { Connection, InitializeResult, ServerCapabilities } from 'vscode-languageserver';
import { fixAllKind } from '../editor/code-actions.ts';
import type { DescriptionOf } from '../editor/diagnostics.ts';
import type { Files } from '../project/snapshot.ts';
import type { Abilities } from './abilities.ts';
import { abilitiesOf } from './abilities.ts';
import { serve } from './serving.ts';
import type { Serving } from './serving.ts';
import { sessionOf } from './session.ts';
import type { Session } from './session.ts';
import type { Time } from './slices.ts';

/** What the server needs of the place it runs in. */
export interface ServerHost {
  readonly time: Time;
  readonly version: string;
  readonly descriptionOf: DescriptionOf;
  /** Files by their URIs. */
  readonly files: Files;
  /** Called with the process that the client runs in, where it says which that is. */
  readonly onClient?: (processId: number) => void;
}

/** Serves one client over a connection. */
export function startServer(connection: Connection, host: ServerHost): Session {
  let serving: Serving | null = null;
  const session = sessionOf(connection, () => serving?.stop());
  connection.onInitialize((params): InitializeResult => {
    // The library takes this notification for itself at every `initialize`, also one that is refused.
    connection.onNotification(DidChangeWorkspaceFoldersNotification.type, ({ event }) => {
      serving?.changeFolders(event);
    });
    const abilities = abilitiesOf(params);
    session.begin();
    serving = serve({ connection, host, session, params, abilities });
    if (typeof params.processId === 'number') host.onClient?.(params.processId);
    return {
      capabilities: capabilitiesFor(abilities),
      serverInfo: { name: 'ohmwright', version: host.version },
    };
  });
  connection.listen();
  return session;
}

/** What the server offers, no more than the client can use. */
export function capabilitiesFor(abilities: Abilities): ServerCapabilities {
  return {
    textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental },
    inlayHintProvider: true,
    hoverProvider: true,
    documentSymbolProvider: true,
    completionProvider: { triggerCharacters: [' ', ':', '-', '.', '[', '{', ','] },
    workspace: { workspaceFolders: { supported: true, changeNotifications: true } },
    ...(abilities.codeActionLiterals
      ? { codeActionProvider: { codeActionKinds: [CodeActionKind.QuickFix, fixAllKind] } }
      : {}),
    ...(abilities.pullsDiagnostics
      ? { diagnosticProvider: { interFileDependencies: true, workspaceDiagnostics: false } }
      : {}),
  };
}
