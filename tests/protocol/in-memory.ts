import { PassThrough } from 'node:stream';
import {
  createConnection,
  ProposedFeatures,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node';
import { createProtocolConnection } from 'vscode-languageserver-protocol/node';
import type { ClientCapabilities, ProtocolConnection } from 'vscode-languageserver-protocol/node';
import { startServer } from '../../server/src/protocol/server.ts';

export interface InMemory {
  readonly client: ProtocolConnection;
  /** How often the server asked for settings. */
  readonly asked: () => number;
  readonly close: () => void;
}

/** A client and the server in one process, joined by two streams. `settings` answers every question for settings. */
export async function inMemory(
  capabilities: ClientCapabilities,
  settings: () => unknown = () => null,
  files: ReadonlyMap<string, string> = new Map(),
  initializationOptions?: unknown,
): Promise<InMemory> {
  const toServer = new PassThrough();
  const toClient = new PassThrough();
  startServer(
    createConnection(
      ProposedFeatures.all,
      new StreamMessageReader(toServer),
      new StreamMessageWriter(toClient),
    ),
    {
      version: '0.0.0',
      descriptionOf: (rule) => `file:///rules.md#${rule}`,
      readFile: (uri) => files.get(uri) ?? null,
      time: {
        now: () => performance.now(),
        later: (task) => void setImmediate(task),
        after: (milliseconds, task) => {
          const timer = setTimeout(task, milliseconds);
          return () => {
            clearTimeout(timer);
          };
        },
      },
    },
  );
  const client = createProtocolConnection(toClient, toServer);
  let asked = 0;
  client.onRequest('workspace/configuration', () => {
    asked += 1;
    return [settings()];
  });
  client.onRequest('client/registerCapability', () => null);
  client.onRequest('workspace/inlayHint/refresh', () => null);
  client.onRequest('workspace/diagnostic/refresh', () => null);
  client.listen();
  await client.sendRequest('initialize', {
    processId: null,
    rootUri: null,
    capabilities,
    initializationOptions,
  });
  await client.sendNotification('initialized', {});
  return {
    client,
    asked: () => asked,
    close: () => {
      client.dispose();
      toServer.destroy();
      toClient.destroy();
    },
  };
}
