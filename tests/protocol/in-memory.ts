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

/** The server in this process, between two streams. */
export function serverBetween(
  toServer: PassThrough,
  toClient: PassThrough,
  files: ReadonlyMap<string, string> = new Map(),
): void {
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
}

/** A client and the server in one process, joined by two streams. `settings` answers every question for settings. */
export async function inMemory(
  capabilities: ClientCapabilities,
  settings: () => unknown = () => null,
  files: ReadonlyMap<string, string> = new Map(),
): Promise<InMemory> {
  const toServer = new PassThrough();
  const toClient = new PassThrough();
  serverBetween(toServer, toClient, files);
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
  await client.sendRequest('initialize', { processId: null, rootUri: null, capabilities });
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
