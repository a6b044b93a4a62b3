import { PassThrough } from 'node:stream';
import { serverBetween } from '../protocol/in-memory.ts';

/* The server and somebody at the other end of its streams who may write anything into them. */

export type Json = string | number | boolean | null | Json[] | { [key: string]: Json };

export interface Session {
  /** Bytes as they are. */
  readonly raw: (text: string) => void;
  /** A message in its frame. */
  readonly send: (message: Json) => void;
  /** A request and its whole answer; null where none comes. */
  readonly request: (method: string, params: Json) => Promise<Json>;
  readonly notify: (method: string, params: Json) => void;
  /** The ids of all answers so far. */
  readonly answered: ReadonlySet<Json>;
  readonly close: () => void;
}

/**
 * A server that has not answered after so many turns of the event loop will never answer: in each turn it takes a message
 * or works for a few milliseconds. No clock is asked, so that it does not matter how busy the machine is.
 */
const mostTurns = 20_000;

/** Waits until something holds, or for ever is over. */
export async function turnsUntil(holds: () => boolean): Promise<void> {
  for (let left = mostTurns; left > 0 && !holds(); left -= 1)
    await new Promise((resolve) => setImmediate(resolve));
}

export interface Habits {
  /** Whether the client answers a question of the server with an error. */
  readonly refuses: () => boolean;
}

export function session(files: ReadonlyMap<string, string>, { refuses }: Habits): Session {
  const toServer = new PassThrough();
  const toClient = new PassThrough();
  serverBetween(toServer, toClient, files);
  const waiting = new Map<Json, (answer: Json) => void>();
  const answered = new Set<Json>();
  let next = 1_000_000;

  const raw = (text: string): void => void toServer.write(text);
  const send = (message: Json): void => {
    raw(framed(JSON.stringify(message)));
  };
  framesOf(toClient, (message) => {
    if (typeof message !== 'object' || message === null || Array.isArray(message)) return;
    const { id, method } = message;
    if (id === undefined) return;
    if (method !== undefined) {
      if (refuses()) send({ jsonrpc: '2.0', id, error: { code: -32603, message: 'no' } });
      else send({ jsonrpc: '2.0', id, result: method === 'workspace/configuration' ? [null] : null });
      return;
    }
    answered.add(id);
    waiting.get(id)?.(message);
    waiting.delete(id);
  });
  return {
    raw,
    send,
    notify: (method, params) => {
      send({ jsonrpc: '2.0', method, params });
    },
    request: async (method, params) => {
      const id = next++;
      let answer: Json = null;
      waiting.set(id, (given) => {
        answer = given;
      });
      send({ jsonrpc: '2.0', id, method, params });
      await turnsUntil(() => answered.has(id));
      return answer;
    },
    answered,
    close: () => {
      toServer.destroy();
      toClient.destroy();
    },
  };
}

export function framed(body: string): string {
  return `Content-Length: ${Buffer.byteLength(body)}\r\n\r\n${body}`;
}

/** What the server writes is in good frames. */
function framesOf(stream: PassThrough, take: (message: Json) => void): void {
  let buffer = Buffer.alloc(0);
  stream.on('data', (data: Buffer) => {
    buffer = Buffer.concat([buffer, data]);
    for (;;) {
      const end = buffer.indexOf('\r\n\r\n');
      if (end === -1) return;
      const length = Number(/Content-Length: (\d+)/i.exec(buffer.toString('latin1', 0, end))?.[1]);
      if (buffer.length < end + 4 + length) return;
      const body = buffer.toString('utf8', end + 4, end + 4 + length);
      buffer = buffer.subarray(end + 4 + length);
      take(JSON.parse(body) as Json);
    }
  });
}
