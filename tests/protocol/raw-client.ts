import type { ChildProcessWithoutNullStreams } from 'node:child_process';
import { spawn } from 'node:child_process';
import { program } from './stdio-client.ts';

/* A client that can do wrong what the libraries for clients do right: it writes bytes, and reads what comes back. */

export interface Message {
  readonly id?: number | null;
  readonly method?: string;
  readonly params?: unknown;
  readonly result?: unknown;
  readonly error?: { readonly code: number; readonly message: string };
}

export interface RawClient {
  readonly server: ChildProcessWithoutNullStreams;
  readonly write: (bytes: string) => void;
  /** A message in its frame. */
  readonly send: (message: object) => void;
  /** Sends a request and waits for its answer. */
  readonly ask: (method: string, params: object) => Promise<Message>;
  readonly tell: (method: string, params: object) => void;
  /** The first message, of those that came or come, that is as wanted. */
  readonly hear: (wanted: (message: Message) => boolean) => Promise<Message>;
  /** The first such message that comes after something is done. */
  readonly next: (act: () => void, wanted: (message: Message) => boolean) => Promise<Message>;
  /** What it said to standard error so far. */
  readonly complaints: () => string;
  /** The status with which the process ends, or `alive` where it does not end in some seconds. */
  readonly ended: () => Promise<number | NodeJS.Signals | 'alive' | null>;
}

/** How long a message or an end is waited for, in milliseconds: far longer than either takes. */
const patience = 30_000;

export interface RawOptions {
  /** Words for Node before the program. */
  readonly node?: readonly string[];
  /** What the server is answered where it asks something; undefined: nothing. */
  readonly answer?: (asked: Message) => object | undefined;
}

export function rawClient({ node = [], answer = () => ({ result: null }) }: RawOptions = {}): RawClient {
  const server = spawn(process.execPath, [...node, program, 'serve', '--stdio']);
  server.stdin.on('error', () => undefined);
  const heard: Message[] = [];
  const listeners = new Set<() => void>();
  let complaints = '';
  server.stderr.on('data', (data: Buffer) => (complaints += String(data)));
  let rest = Buffer.alloc(0);
  server.stdout.on('data', (data: Buffer) => {
    rest = Buffer.concat([rest, data]);
    for (;;) {
      const end = rest.indexOf('\r\n\r\n');
      const length = Number(/Content-Length: (\d+)/.exec(rest.subarray(0, Math.max(end, 0)).toString())?.[1]);
      if (end === -1 || rest.length < end + 4 + length) return;
      const message = JSON.parse(rest.subarray(end + 4, end + 4 + length).toString()) as Message;
      rest = rest.subarray(end + 4 + length);
      heard.push(message);
      if (message.id !== undefined && message.method !== undefined) {
        const reply = answer(message);
        if (reply !== undefined) send({ id: message.id, ...reply });
      }
      for (const listen of [...listeners]) listen();
    }
  });

  const write = (bytes: string): void => {
    server.stdin.write(bytes);
  };
  const send = (message: object): void => {
    const body = JSON.stringify({ jsonrpc: '2.0', ...message });
    write(`Content-Length: ${Buffer.byteLength(body)}\r\n\r\n${body}`);
  };
  const hear = (wanted: (message: Message) => boolean, from = 0): Promise<Message> =>
    new Promise((resolve, reject) => {
      const stop = setTimeout(() => {
        reject(new Error(`The server did not say it. It said ${JSON.stringify(heard)}, and: ${complaints}`));
      }, patience);
      const look = (): void => {
        const message = heard.slice(from).find(wanted);
        if (message === undefined) return;
        clearTimeout(stop);
        listeners.delete(look);
        resolve(message);
      };
      listeners.add(look);
      look();
    });
  let asked = 0;
  return {
    server,
    write,
    send,
    hear: (wanted) => hear(wanted),
    next: (act, wanted) => {
      const from = heard.length;
      act();
      return hear(wanted, from);
    },
    ask: (method, params) => {
      const id = ++asked;
      send({ id, method, params });
      return hear((message) => message.id === id && message.method === undefined);
    },
    tell: (method, params) => {
      send({ method, params });
    },
    complaints: () => complaints,
    ended: () =>
      new Promise((resolve) => {
        if (server.exitCode !== null || server.signalCode !== null) {
          resolve(server.exitCode ?? server.signalCode);
          return;
        }
        const stop = setTimeout(() => {
          server.kill('SIGKILL');
          resolve('alive');
        }, patience);
        server.once('close', (status, signal) => {
          clearTimeout(stop);
          resolve(status ?? signal);
        });
      }),
  };
}

/** The client introduces itself. */
export async function introduced(
  client: RawClient,
  capabilities: object = {},
  processId: number | null = null,
): Promise<RawClient> {
  await client.ask('initialize', { processId, rootUri: null, capabilities });
  client.tell('initialized', {});
  return client;
}
