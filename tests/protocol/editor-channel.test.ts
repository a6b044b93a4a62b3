import type { ChildProcess } from 'node:child_process';
import { fork } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { afterEach, expect, test } from 'vitest';
import type { Message } from './raw-client.ts';

/* Over the channel between the editor and the server, no message ends the server, and the next request has its answer. */

const program = fileURLToPath(new URL('../../dist/server.cjs', import.meta.url));

let server: ChildProcess | undefined;
afterEach(() => {
  server?.kill('SIGKILL');
  server = undefined;
});

interface Channel {
  readonly send: (message: unknown) => void;
  /** The first message from now on that is as wanted. */
  readonly hear: (wanted: (message: Message) => boolean) => Promise<Message>;
  readonly complaints: () => string;
}

function opened(): Channel {
  const started = fork(program, ['--node-ipc'], { stdio: ['ignore', 'ignore', 'pipe', 'ipc'] });
  server = started;
  let complaints = '';
  started.stderr?.on('data', (data: Buffer) => (complaints += String(data)));
  return {
    send: (message) => {
      started.send(message as object);
    },
    hear: (wanted) =>
      new Promise((resolve, reject) => {
        const end = (status: number | null, signal: NodeJS.Signals | null): void => {
          reject(new Error(`The server ended with ${status ?? signal ?? 'nothing'}. It said: ${complaints}`));
        };
        const take = (message: Message): void => {
          if (!wanted(message)) return;
          started.off('message', take).off('exit', end);
          resolve(message);
        };
        started.on('message', take).on('exit', end);
      }),
    complaints: () => complaints,
  };
}

async function ask({ send, hear }: Channel, id: number, method: string, params?: object): Promise<Message> {
  const answer = hear((message) => message.id === id && message.method === undefined);
  send({ jsonrpc: '2.0', id, method, params });
  return answer;
}

async function introduced(): Promise<Channel> {
  const channel = opened();
  await ask(channel, 1, 'initialize', { processId: null, rootUri: null, capabilities: {} });
  channel.send({ jsonrpc: '2.0', method: 'initialized', params: {} });
  return channel;
}

const cancel = { jsonrpc: '2.0', method: '$/cancelRequest' };

test.each([
  ['no parameters', cancel],
  ['parameters that are null', { ...cancel, params: null }],
  ['parameters without an id', { ...cancel, params: {} }],
  ['parameters in a list', { ...cancel, params: [1] }],
  ['an id that is null', { ...cancel, params: { id: null } }],
  ['an id that has no text', { ...cancel, params: { id: { toString: null } } }],
])('a cancellation with %s is answered with an error', async (_, message) => {
  const channel = await introduced();
  const answer = channel.hear(({ id }) => id === null);
  channel.send(message);
  expect((await answer).error).toEqual({
    code: -32600,
    message: expect.stringContaining('A message of the client cannot be read.') as unknown,
  });
  expect((await ask(channel, 2, 'ohmwright/template')).result).toHaveProperty('text');
  expect(channel.complaints()).toContain('A message of the client cannot be read.');
});

test('what is no message, and messages of no known kind, leave a server that answers', async () => {
  const channel = await introduced();
  const nonsense: readonly unknown[] = [
    ...[5, 'x', true, null, [], {}, [cancel], { id: 5 }, { id: null, method: 'x' }, { id: 3, result: null }],
    ...[{ method: 5 }, { method: 'x', params: 5 }, { id: 'y', method: '$/x' }, { id: {}, method: {} }],
    ...['initialized', 'exit/', '$/progress', '$/setTrace', 'textDocument/didOpen'].flatMap((method) =>
      [undefined, null, [], {}, 'x', 5].map((params) => ({ jsonrpc: '2.0', method, params })),
    ),
  ];
  for (const [index, message] of nonsense.entries()) {
    channel.send(message);
    const { result } = await ask(channel, 100 + index, 'ohmwright/template');
    expect([message, result]).toEqual([message, { text: expect.any(String) as unknown }]);
  }
});
