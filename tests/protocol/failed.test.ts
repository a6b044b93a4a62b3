import { afterEach, expect, test } from 'vitest';
import type { Diagnostic } from 'vscode-languageserver-types';
import { writtenTemplate as template } from '../editor/written-template.ts';
import { inMemory } from './in-memory.ts';
import type { InMemory } from './in-memory.ts';

/* What goes wrong inside the server is never answered like a file in which there is nothing to say. */

const uri = 'file:///workshop/a.procedure.yaml';
const start = { line: 0, character: 0 };
const about = { textDocument: { uri }, position: start, range: { start, end: start } };
const codeActionLiteralSupport = { codeActionKind: { valueSet: [''] } };

let opened: InMemory | undefined;
afterEach(() => {
  opened?.close();
  opened = undefined;
});

/** A server whose clock breaks when something is computed. */
async function open(capabilities: object): Promise<InMemory> {
  const now = (): number => {
    throw new Error('the clock is broken');
  };
  opened = await inMemory(capabilities, undefined, undefined, {
    host: { time: { now } },
    introduction: { initializationOptions: { figures: true } },
  });
  return opened;
}

const openText = ({ client }: InMemory): Promise<void> =>
  client.sendNotification('textDocument/didOpen', {
    textDocument: { uri, languageId: 'ohmwright-procedure', version: 1, text: template },
  });

test('findings that could not be made are an error among the findings, and the extension is told', async () => {
  const at = await open({ textDocument: { diagnostic: {} } });
  const failure = new Promise((resolve) => {
    at.client.onNotification('ohmwright/failure', resolve);
  });
  await openText(at);
  const report = await at.client.sendRequest('textDocument/diagnostic', about);
  expect((report as { items: Diagnostic[] }).items).toMatchObject([
    { severity: 1, code: 'not-checked', message: expect.stringContaining('the clock is broken') as unknown },
  ]);
  expect(await failure).toEqual({ uri });
});

test('they are pushed as well', async () => {
  const at = await open({});
  const pushed = new Promise((resolve) => {
    at.client.onNotification('textDocument/publishDiagnostics', resolve);
  });
  await openText(at);
  expect(await pushed).toMatchObject({ diagnostics: [{ severity: 1, code: 'not-checked' }] });
});

test('every other request is answered with an error, and the log says where', async () => {
  const at = await open({ textDocument: { diagnostic: {}, codeAction: { codeActionLiteralSupport } } });
  const logged: string[] = [];
  at.client.onNotification('window/logMessage', ({ message }: { message: string }) => {
    logged.push(message);
  });
  await openText(at);
  const context = { diagnostics: [] };
  for (const method of ['hover', 'completion', 'documentSymbol', 'inlayHint', 'codeAction'])
    await expect(
      at.client.sendRequest(`textDocument/${method}`, { ...about, context }),
    ).rejects.toMatchObject({
      code: -32603,
      message: expect.stringContaining('the clock is broken') as unknown,
    });
  expect(logged).toHaveLength(5);
  expect(logged[0]).toContain('slices.ts');
  const card = { uri, face: 'paper', date: '2026-01-31', draft: true };
  expect(await at.client.sendRequest('ohmwright/card', card)).toEqual({ kind: 'failed' });
});
