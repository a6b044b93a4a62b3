import fc from 'fast-check';
import { afterEach, describe, expect, test } from 'vitest';
import { frames } from '../../server/src/protocol/frames.ts';
import { introduced, rawClient } from './raw-client.ts';
import type { RawClient } from './raw-client.ts';

/*
 * Whatever a client sends, the server never sits there deaf: it answers, or it ends and says why. A client whose server
 * hears nothing shows no findings.
 */

let client: RawClient | undefined;
afterEach(() => {
  client?.server.kill('SIGKILL');
  client = undefined;
});

const request = '{"jsonrpc":"2.0","id":7,"method":"ohmwright/template"}';
const framed = (body: string, length = Buffer.byteLength(body)): string =>
  `Content-Length: ${length}\r\n\r\n${body}`;

describe('frames', () => {
  test.each([
    ['garbage', 'hello there\n', 'does not end with CR LF'],
    ['an endless line', 'x'.repeat(2000), 'does not end'],
    ['bytes that are no text', '\u0000\u0001', 'does not begin with a name'],
    ['a message without a header', request, 'does not begin with a name'],
    ['a header without a colon', 'Content-Length 5\r\n\r\n', 'is not `name: value`'],
    ['lines that end with a line feed alone', `Content-Length: 54\n\n${request}`, 'CR LF'],
    ['no length', 'Content-Type: application/json\r\n\r\n', 'no Content-Length'],
    ['a length that is no number', 'Content-Length: ten\r\n\r\n', 'cannot be ten'],
    ['a length below zero', 'Content-Length: -5\r\n\r\n', 'cannot be -5'],
    ['half a length', 'Content-Length: 5.5\r\n\r\n', 'cannot be 5.5'],
    ['a length that nothing has', 'Content-Length: 99999999999\r\n\r\n', 'cannot be 99999999999'],
    ['a header in place of a message', `Content-Length: 4000\r\n\r\n${framed(request)}`, 'is missing'],
    ['a length that is too small', framed(request, 20) + framed(request), 'does not begin with a name'],
  ])('are lost by %s', (_, text, why) => {
    expect(frames().take(Buffer.from(text))).toContain(why);
    const piecewise = frames();
    const said = [...Buffer.from(text)].map((byte) => piecewise.take(Uint8Array.of(byte)));
    expect(said.find((one) => one !== null)).toContain(why);
  });

  test('are found in any pieces, whatever the messages hold', () => {
    const message = fc.string({ unit: 'binary' }).filter((text) => !text.startsWith('Content-'));
    fc.assert(
      fc.property(fc.array(message), fc.array(fc.nat(40)), (messages, lengths) => {
        const bytes = Buffer.from(messages.map((one) => framed(one)).join(''));
        const { take, isInside } = frames();
        let at = 0;
        for (const length of [...lengths, bytes.length]) {
          expect(take(bytes.subarray(at, at + length))).toBe(null);
          at += length;
        }
        expect(isInside()).toBe(false);
        expect(take(Buffer.from('Content-Length: 1\r\n\r\n'))).toBe(null);
        expect(isInside()).toBe(true);
      }),
      { seed: 11 },
    );
  });
});

describe('where the messages can no longer be told from one another the server ends with an error', () => {
  const cases: Readonly<Record<string, string>> = {
    garbage: 'hello there\n',
    'a header that has no message, and then the next one': `Content-Length: 4000\r\n\r\n${framed(request)}`,
    'half a message, and nothing more': framed(request).slice(0, -10),
  };

  test.each(Object.keys(cases))('%s', async (name) => {
    client = await introduced(rawClient());
    client.write(cases[name] ?? '');
    const lost = await client.hear(({ id, error }) => id === null && error !== undefined);
    expect(lost.error).toMatchObject({
      code: -32700,
      message: expect.stringContaining('The server ends.') as unknown,
    });
    expect(await client.ended()).toBe(1);
    expect(client.complaints()).toContain('What the client sends cannot be read.');
  });
});

test('a message that cannot be read is answered with an error, and the next one with what it asks for', async () => {
  const cases: readonly (readonly [body: string, code: number])[] = [
    ['this is no JSON', -32700],
    ['', -32700],
    ['{"jsonrpc":"2.0"', -32700],
    ['{"jsonrpc":"2.0","method":"$/cancelRequest"}', -32600],
  ];
  client = await introduced(rawClient());
  for (const [body, code] of cases) {
    const { error } = await client.next(
      () => client?.write(framed(body)),
      ({ id }) => id === null,
    );
    expect([body, error?.code]).toEqual([body, code]);
    expect((await client.ask('ohmwright/template', {})).result).toHaveProperty('text');
  }
});

test('JSON that is no message is said in the log', async () => {
  client = await introduced(rawClient());
  for (const body of [
    '5',
    'null',
    '"x"',
    '[]',
    '{}',
    '{"jsonrpc":"2.0","id":5}',
    '{"id":null,"method":"x"}',
  ]) {
    await client.next(
      () => client?.write(framed(body)),
      ({ method }) => method === 'window/logMessage',
    );
    expect((await client.ask('ohmwright/template', {})).result).toHaveProperty('text');
  }
});

test('a message in pieces, with other headers beside the length, is one message', async () => {
  client = await introduced(rawClient());
  const bytes = `Content-Type: application/vscode-jsonrpc; charset=utf-8\r\ncontent-length:${request.length}\r\n\r\n${request}`;
  for (const byte of bytes) {
    client.write(byte);
    await new Promise((resolve) => setImmediate(resolve));
  }
  expect((await client.hear(({ id }) => id === 7)).result).toHaveProperty('text');
});
