import type { LanguageClient, ServerOptions } from 'vscode-languageclient/node';
import type {
  CardParams,
  CardResult,
  Failure,
  Figures,
  Stale,
  TemplateResult,
} from '../../server/src/protocol/messages.ts';
import {
  cardRequest,
  failureNotification,
  figuresNotification,
  staleNotification,
  templateRequest,
} from '../../server/src/protocol/messages.ts';
import { servedDocuments } from './served.ts';

/** The language server, as the rest of the extension sees it. Requests wait until it runs, and fail where it does not. */
export interface Server {
  readonly card: (params: CardParams) => Promise<CardResult>;
  readonly template: () => Promise<TemplateResult>;
  readonly stop: () => Promise<void>;
}

/** What the server says unasked. */
export interface Hearing {
  /** The figures of a document, each time they are new. */
  readonly figures: (figures: Figures) => void;
  /** A document could not be checked. */
  readonly failure: (failure: Failure) => void;
  /** What was said of documents no longer holds. */
  readonly stale: (stale: Stale) => void;
  /** It runs, or does not. */
  readonly running: (isRunning: boolean) => void;
}

/** Starts the server and returns at once. */
export function startServer(bundle: string, hear: Hearing): Server {
  const running = run(bundle, hear);
  // The client has told the user why it did not start; whoever asks it something later hears it as well.
  running.catch(() => {
    hear.running(false);
  });
  return {
    card: async (params) => (await running).sendRequest<CardResult>(cardRequest, params),
    template: async () => (await running).sendRequest<TemplateResult>(templateRequest),
    stop: async () => {
      const client = await running.catch(() => undefined);
      await client?.dispose();
    },
  };
}

async function run(bundle: string, hear: Hearing): Promise<LanguageClient> {
  // The client library is the larger part of the extension; it is loaded after activation has returned.
  const { LanguageClient, State, TransportKind } = await import('vscode-languageclient/node');
  const node = { module: bundle, transport: TransportKind.ipc };
  const server: ServerOptions = {
    run: node,
    debug: { ...node, options: { execArgv: ['--nolazy', '--inspect=6009'] } },
  };
  const client = new LanguageClient('ohmwright', 'Ohmwright', server, {
    documentSelector: servedDocuments(),
    initializationOptions: { figures: true },
  });
  client.onNotification(figuresNotification, hear.figures);
  client.onNotification(failureNotification, hear.failure);
  client.onNotification(staleNotification, hear.stale);
  client.onDidChangeState(({ newState }) => {
    hear.running(newState !== State.Stopped);
  });
  await client.start();
  return client;
}
