import { afterEach, describe, expect, test } from 'vitest';
import type { Diagnostic } from 'vscode-languageserver-types';
import { writtenTemplate as template } from '../editor/written-template.ts';
import { inMemory } from './in-memory.ts';
import type { InMemory } from './in-memory.ts';
import { introduced, rawClient } from './raw-client.ts';
import type { RawClient } from './raw-client.ts';

/* What comes too early, too late, twice or askew is refused or passed over, and what is said of a text is of that text. */

const uri = 'file:///workshop/a.procedure.yaml';
const languageId = 'ohmwright-procedure';
const pulling = { textDocument: { diagnostic: {} } };
const didOpen = (text: string, version = 1): object => ({ textDocument: { uri, languageId, version, text } });
/** The template, with one finding. */
const short = template.replace('  - wait: 3 min\n', '');

let opened: InMemory | undefined;
let raw: RawClient | undefined;
afterEach(() => {
  opened?.close();
  raw?.server.kill('SIGKILL');
  opened = raw = undefined;
});

async function open(text: string, capabilities: object = pulling): Promise<InMemory> {
  opened = await inMemory(capabilities);
  await opened.client.sendNotification('textDocument/didOpen', didOpen(text));
  return opened;
}

async function found({ client }: InMemory): Promise<readonly Diagnostic[]> {
  const report = await client.sendRequest('textDocument/diagnostic', { textDocument: { uri } });
  return (report as { items: Diagnostic[] }).items;
}

const rulesFound = async (at: InMemory): Promise<readonly unknown[]> =>
  (await found(at)).map(({ code }) => code);

const change = ({ client }: InMemory, version: number | null, contentChanges: unknown): Promise<void> =>
  client.sendNotification('textDocument/didChange', { textDocument: { uri, version }, contentChanges });

describe('a session', () => {
  test('begins with one `initialize` and ends with `shutdown`', async () => {
    const client = (raw = rawClient());
    const about = { textDocument: { uri }, position: { line: 0, character: 0 } };
    client.tell('textDocument/didOpen', didOpen(short));
    for (const method of ['textDocument/hover', 'textDocument/diagnostic', 'ohmwright/card', 'shutdown'])
      expect((await client.ask(method, about)).error?.code).toBe(-32002);
    expect((await client.ask('initialize', { processId: null })).error).toBeDefined();
    expect((await client.ask('textDocument/hover', about)).error?.code).toBe(-32002);

    await introduced(client, pulling);
    // What came before counts for nothing.
    expect((await client.ask('textDocument/documentSymbol', about)).result).toEqual([]);
    client.tell('textDocument/didOpen', didOpen(short));
    const again = await client.ask('initialize', { processId: null, rootUri: null, capabilities: {} });
    expect(again.error?.code).toBe(-32600);
    const { result } = await client.ask('textDocument/diagnostic', about);
    expect((result as { items: Diagnostic[] }).items.map(({ code }) => code)).toEqual(['short-wait']);
    expect((await client.ask('workshop/coffee', {})).error?.code).toBe(-32601);
    client.tell('workshop/coffee', {});

    expect((await client.ask('shutdown', {})).error).toBeUndefined();
    for (const method of [
      'textDocument/hover',
      'textDocument/diagnostic',
      'ohmwright/template',
      'shutdown',
      'x',
    ])
      expect((await client.ask(method, about)).error?.code).toBe(-32600);
    client.tell('textDocument/didChange', { textDocument: { uri, version: 2 }, contentChanges: [] });
    client.tell('exit', {});
    expect(await client.ended()).toBe(0);
  });

  test('knows later folders also after a second `initialize`', async () => {
    const at = (opened = await inMemory({ ...pulling, workspace: { workspaceFolders: true } }));
    const { client } = at;
    const using = `uses: [../x.parts.yaml]\n${short}`;
    await client.sendNotification('textDocument/didOpen', didOpen(using));
    const again = { processId: null, rootUri: null, capabilities: { workspace: { workspaceFolders: true } } };
    await expect(client.sendRequest('initialize', again)).rejects.toMatchObject({ code: -32600 });
    const says = (words: string): object => [{ message: expect.stringContaining(words) as unknown }];
    expect(await found(at)).toMatchObject(says('lies outside the workspace'));
    const event = { added: [{ uri: 'file:///', name: 'all' }], removed: [] };
    await client.sendNotification('workspace/didChangeWorkspaceFolders', { event });
    expect(await found(at)).toMatchObject(says('There is no file'));
  });
});

describe('a text', () => {
  test('that is not open is not changed, closed, or said to be without findings', async () => {
    opened = await inMemory(pulling);
    await change(opened, 2, [{ text: template }]);
    await opened.client.sendNotification('textDocument/didClose', { textDocument: { uri } });
    expect(await found(opened)).toMatchObject([
      { code: 'not-checked', severity: 1, message: expect.stringContaining('not opened it') as unknown },
    ]);
  });

  test('that is opened twice is the second one, whatever its version', async () => {
    const at = await open(template);
    expect(await rulesFound(at)).toEqual([]);
    await at.client.sendNotification('textDocument/didOpen', didOpen(short));
    expect(await rulesFound(at)).toEqual(['short-wait']);
  });

  test('is the last one sent, also where the client does not count', async () => {
    const at = await open(template);
    expect(await rulesFound(at)).toEqual([]);
    await change(at, 1, [{ text: short }]);
    expect(await rulesFound(at)).toEqual(['short-wait']);
    await change(at, null, [{ text: template }]);
    expect(await rulesFound(at)).toEqual([]);
    await change(at, 0, [{ text: short }]);
    expect(await rulesFound(at)).toEqual(['short-wait']);
  });

  test('ends where a range goes beyond it, and lines are counted rightly after that', async () => {
    const at = await open(short);
    const all = { start: { line: 0, character: 0 }, end: { line: 2 ** 31 - 1, character: 0 } };
    const lines = template.split(/(?<=\n)/);
    const [last = '', before = ''] = [lines.pop(), lines.pop()];
    await change(at, 2, [{ range: all, text: lines.join('').replace('- wait: 3 min', '- wait: 1 min') }]);
    const beyond = { start: { line: 900, character: 7 }, end: { line: 901, character: 0 } };
    await change(at, 3, [{ range: beyond, text: before }]);
    const between = { line: 500, character: 0 };
    await change(at, 4, [{ range: { start: between, end: between }, text: last }]);
    const line = template.split('\n').indexOf('  - wait: 3 min');
    const inLine = { start: { line, character: 10 }, end: { line, character: 11 } };
    expect(await rulesFound(at)).toEqual(['short-wait']);
    await change(at, 5, [{ range: inLine, text: '3' }]);
    expect(await rulesFound(at)).toEqual([]);
  });

  const wrong: readonly unknown[] = [
    [{ range: { start: { line: -1, character: 0 }, end: { line: 0, character: 0 } }, text: '#' }],
    [{ range: { start: { line: 0, character: 0 } }, text: '#' }],
    [{ range: { start: { line: 0, character: '1' }, end: { line: 0, character: 2 } }, text: '#' }],
    [{ range: { start: { line: 0.5, character: 1 }, end: { line: 1, character: 2 } }, text: '#' }],
    [{ text: 5 }],
    [null],
    'all',
    undefined,
  ];

  test.each(wrong)(
    'of which a change cannot be read, %j, is not checked until it is whole again',
    async (changes) => {
      const at = await open(template);
      const logged: string[] = [];
      at.client.onNotification('window/logMessage', ({ message }: { message: string }) => {
        logged.push(message);
      });
      await change(at, 2, changes);
      // Nothing that is built on it is known.
      const range = { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } };
      await change(at, 3, [{ range, text: '' }]);
      expect(await found(at)).toMatchObject([
        { code: 'not-checked', message: expect.stringContaining('cannot be read') as unknown },
      ]);
      expect(logged.join(' ')).toContain('cannot be read');
      const asked = { uri, face: 'paper', date: '', draft: true };
      expect(await at.client.sendRequest('ohmwright/card', asked)).toEqual({ kind: 'unknown-document' });
      await change(at, 4, [{ text: template }]);
      expect(await rulesFound(at)).toEqual([]);
    },
  );

  test('that is lost is pushed as not checked', async () => {
    const at = await open(template, {});
    const pushed = (): Promise<readonly unknown[]> =>
      new Promise((resolve) => {
        at.client.onNotification(
          'textDocument/publishDiagnostics',
          ({ diagnostics }: { diagnostics: Diagnostic[] }) => {
            resolve(diagnostics.map(({ code }) => code));
          },
        );
      });
    expect(await pushed()).toEqual([]);
    const next = pushed();
    await change(at, 2, 'all');
    expect(await next).toEqual(['not-checked']);
  });

  test('is asked about at places beyond it, and nothing breaks', async () => {
    const at = await open(template);
    for (const position of [
      { line: 2, character: 100_000 },
      { line: 100_000, character: 0 },
    ]) {
      const about = { textDocument: { uri }, position };
      expect(await at.client.sendRequest('textDocument/hover', about)).toEqual(null);
      await at.client.sendRequest('textDocument/completion', about);
      const range = { start: position, end: position };
      expect(await at.client.sendRequest('textDocument/inlayHint', { ...about, range })).toEqual([]);
    }
    expect(await rulesFound(at)).toEqual([]);
  });

  test.each([undefined, { line: -1, character: 0 }, { line: 0, character: -1 }, { line: 0.5, character: 0 }])(
    'is asked about at %j, which is no place, and that is an error',
    async (position) => {
      const at = await open(template);
      const about = { textDocument: { uri }, position, range: { start: position, end: position } };
      for (const method of ['textDocument/hover', 'textDocument/completion', 'textDocument/inlayHint'])
        await expect(at.client.sendRequest(method, about)).rejects.toMatchObject({ code: -32602 });
      expect(await rulesFound(at)).toEqual([]);
    },
  );
});
