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
import type { ServerHost } from '../../server/src/protocol/server.ts';
import type { Time } from '../../server/src/protocol/slices.ts';

export interface InMemory {
  readonly client: ProtocolConnection;
  /** How often the server asked for settings. */
  readonly asked: () => number;
  readonly close: () => void;
}

export interface Surroundings {
  /** What the host of the server does otherwise than a good one. */
  readonly host?: Partial<Omit<ServerHost, 'time'>> & { readonly time?: Partial<Time> };
  /** What the client says of itself beside its capabilities. */
  readonly introduction?: Readonly<Record<string, unknown>>;
}

const realTime: Time = {
  now: () => performance.now(),
  later: (task) => void setImmediate(task),
  after: (milliseconds, task) => {
    const timer = setTimeout(task, milliseconds);
    return () => {
      clearTimeout(timer);
    };
  },
};

/** The server in this process, between two streams. */
export function serverBetween(
  toServer: PassThrough,
  toClient: PassThrough,
  files: ReadonlyMap<string, string> = new Map(),
  { host: { time, ...host } = {} }: Pick<Surroundings, 'host'> = {},
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
      files: {
        locate: (id) => ({ id }),
        read: (id) => {
          const text = files.get(id);
          return text === undefined ? null : { text };
        },
      },
      ...host,
      time: { ...realTime, ...time },
    },
  );
}

/** A client and the server in one process, joined by two streams. `settings` answers every question for settings. */
export async function inMemory(
  capabilities: ClientCapabilities,
  settings: () => unknown = () => null,
  files: ReadonlyMap<string, string> = new Map(),
  { host = {}, introduction = {} }: Surroundings = {},
): Promise<InMemory> {
  const toServer = new PassThrough();
  const toClient = new PassThrough();
  serverBetween(toServer, toClient, files, { host });
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
    ...introduction,
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
