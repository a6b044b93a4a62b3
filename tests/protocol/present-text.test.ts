import { afterEach, describe, expect, test } from 'vitest';
import type { Diagnostic } from 'vscode-languageserver-types';
import { writtenTemplate as template } from '../editor/written-template.ts';
import { inMemory } from './in-memory.ts';
import type { InMemory } from './in-memory.ts';

/*
 * An answer is about the text as it is when the answer is sent. The clock of these tests stands still: the server computes
 * one slice, and the next when the test says so.
 */

const uri = 'file:///workshop/a.procedure.yaml';
const start = { line: 0, character: 0 };
/** The template, with one finding. */
const short = template.replace('  - wait: 3 min\n', '');
const pulling = {
  textDocument: {
    diagnostic: {},
    codeAction: { codeActionLiteralSupport: { codeActionKind: { valueSet: [''] } } },
  },
};

let opened: InMemory | undefined;
afterEach(() => {
  opened?.close();
  opened = undefined;
});

/** What is to be done when the test says so. */
let waiting: (() => void)[] = [];
const time = {
  // Each look at the clock is a long time after the one before: a slice has one step.
  now: (
    (moment) => () =>
      (moment += 1000)
  )(0),
  later: (task: () => void) => void waiting.push(task),
};

async function open(text: string, capabilities: object = pulling): Promise<InMemory> {
  waiting = [];
  opened = await inMemory(capabilities, undefined, undefined, { host: { time } });
  await opened.client.sendNotification('textDocument/didOpen', {
    textDocument: { uri, languageId: 'ohmwright-procedure', version: 1, text },
  });
  return opened;
}

/** All that the client has sent so far has come to the server. */
const arrived = ({ client }: InMemory): Promise<unknown> => client.sendRequest('ohmwright/template');

async function change(at: InMemory, text: string): Promise<void> {
  await at.client.sendNotification('textDocument/didChange', {
    textDocument: { uri, version: 2 },
    contentChanges: [{ text }],
  });
  await arrived(at);
}

/** The server goes on until an answer is there. */
async function finished<T>(answer: Promise<T>): Promise<T> {
  const goOn = setInterval(() => {
    for (const task of waiting.splice(0)) task();
  }, 1);
  try {
    return await answer;
  } finally {
    clearInterval(goOn);
  }
}

/** Asks, changes the text while the server computes, and waits for the answer. */
async function answerAfterChange(method: string, params: object, from: string, to: string): Promise<unknown> {
  const at = await open(from);
  const answer = at.client.sendRequest(method, { textDocument: { uri }, ...params });
  answer.catch(() => undefined);
  await arrived(at);
  expect(waiting).toHaveLength(1);
  await change(at, to);
  return finished(answer);
}

const rules = (report: unknown): readonly unknown[] =>
  (report as { items: Diagnostic[] }).items.map(({ code }) => code);

describe('where the text changes while an answer is made', () => {
  test('findings are those of the new text', async () => {
    const [without, with_] = [template, short];
    expect(rules(await answerAfterChange('textDocument/diagnostic', {}, without, with_))).toEqual([
      'short-wait',
    ]);
    opened?.close();
    expect(rules(await answerAfterChange('textDocument/diagnostic', {}, with_, without))).toEqual([]);
  });

  test('a card is one of the new text, or refused for it', async () => {
    const asked = { uri, face: 'paper', date: '2026-01-31', draft: false };
    expect(await answerAfterChange('ohmwright/card', asked, template, short)).toEqual({
      kind: 'refused',
      errors: 1,
    });
    opened?.close();
    expect(await answerAfterChange('ohmwright/card', asked, short, template)).toMatchObject({ kind: 'card' });
  });

  test.each([
    ['hints', 'textDocument/inlayHint', { range: { start, end: { line: 1000, character: 0 } } }],
    [
      'hover',
      'textDocument/hover',
      {
        position: { line: template.split('\n').findIndex((line) => line.includes('- read:')), character: 5 },
      },
    ],
    [
      'fixes',
      'textDocument/codeAction',
      { range: { start, end: start }, context: { diagnostics: [], only: ['source.fixAll'] } },
    ],
  ])('%s, which are about places in the old one, are refused as such', async (_, method, params) => {
    await expect(answerAfterChange(method, params, short, template)).rejects.toMatchObject({ code: -32801 });
  });

  test('nothing of the old text is pushed', async () => {
    const at = await open(template, {});
    const pushed: unknown[] = [];
    at.client.onNotification(
      'textDocument/publishDiagnostics',
      ({ version, diagnostics }: { version: number; diagnostics: Diagnostic[] }) => {
        pushed.push([version, diagnostics.map(({ code }) => code)]);
      },
    );
    const next = new Promise<void>((resolve) => {
      const look = (): void => {
        if (pushed.length > 0) resolve();
        else setTimeout(look, 10);
      };
      look();
    });
    while (waiting.length === 0) await new Promise((resolve) => setTimeout(resolve, 10));
    await change(at, short);
    await finished(next);
    expect(pushed).toEqual([[2, ['short-wait']]]);
  });
});

test('a cancelled request is answered as such in the middle of its work', async () => {
  const at = await open(template);
  const { CancellationTokenSource } = await import('vscode-languageserver-protocol/node');
  const source = new CancellationTokenSource();
  const answer = at.client.sendRequest('textDocument/diagnostic', { textDocument: { uri } }, source.token);
  answer.catch(() => undefined);
  await arrived(at);
  expect(waiting).toHaveLength(1);
  source.cancel();
  await arrived(at);
  await expect(finished(answer)).rejects.toMatchObject({ code: -32800 });
});
