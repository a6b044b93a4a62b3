import { workspace } from 'vscode';
import type { LanguageClient, LanguageClientOptions, ServerOptions } from 'vscode-languageclient/node';
import type { CardParams, CardResult, Figures, TemplateResult } from '../../server/src/protocol/messages.ts';
import {
  cardRequest,
  figuresNotification,
  languageId,
  templateRequest,
} from '../../server/src/protocol/messages.ts';

/** The language server, as the rest of the extension sees it. Requests wait until it runs, and fail where it does not. */
export interface Server {
  readonly card: (params: CardParams) => Promise<CardResult>;
  readonly template: () => Promise<TemplateResult>;
  readonly stop: () => Promise<void>;
}

/** Starts the server and returns at once. `hear` is called with the figures of a document each time they are new. */
export function startServer(bundle: string, hear: (figures: Figures) => void): Server {
  const running = run(bundle, hear);
  // The client has told the user why it did not start; whoever asks it something later hears it as well.
  running.catch(() => undefined);
  return {
    card: async (params) => (await running).sendRequest<CardResult>(cardRequest, params),
    template: async () => (await running).sendRequest<TemplateResult>(templateRequest),
    stop: async () => {
      const client = await running.catch(() => undefined);
      await client?.dispose();
    },
  };
}

async function run(bundle: string, hear: (figures: Figures) => void): Promise<LanguageClient> {
  // The client library is the larger part of the extension; it is loaded after activation has returned.
  const { LanguageClient, TransportKind } = await import('vscode-languageclient/node');
  const node = { module: bundle, transport: TransportKind.ipc };
  const server: ServerOptions = {
    run: node,
    debug: { ...node, options: { execArgv: ['--nolazy', '--inspect=6009'] } },
  };
  const client = new LanguageClient('ohmwright', 'Ohmwright', server, options());
  client.onNotification(figuresNotification, hear);
  await client.start();
  return client;
}

/** Only where the user works: the older sides of a comparison (`git:` and the like) are left alone. */
function options(): LanguageClientOptions {
  const folders = workspace.workspaceFolders ?? [];
  const schemes = new Set(['file', 'untitled', ...folders.map(({ uri }) => uri.scheme)]);
  return {
    documentSelector: [...schemes].map((scheme) => ({ scheme, language: languageId })),
    initializationOptions: { figures: true },
  };
}
