import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { afterEach, describe, expect, test } from 'vitest';
import { TextDocument } from 'vscode-languageserver-textdocument';
import type {
  ClientCapabilities,
  Diagnostic,
  InlayHint,
  ProtocolConnection,
} from 'vscode-languageserver-protocol/node';
import { finish } from '../../server/src/model/work.ts';
import { diagnosticsOf } from '../../server/src/editor/diagnostics.ts';
import { writtenTemplate as template } from '../editor/written-template.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { inMemory } from './in-memory.ts';
import type { InMemory } from './in-memory.ts';

const shipped = readFileSync(
  new URL('../fixtures/driver-airbag-written-out.procedure.yaml', import.meta.url),
  'utf8',
);
const uri = 'file:///workshop/a.procedure.yaml';
const everything = { start: { line: 0, character: 0 }, end: { line: 10_000, character: 0 } };

const pulling: ClientCapabilities = {
  workspace: { configuration: true, didChangeConfiguration: { dynamicRegistration: true } },
  textDocument: { diagnostic: { relatedInformation: true, codeDescriptionSupport: true } },
};

let opened: InMemory | undefined;
afterEach(() => {
  opened?.close();
  opened = undefined;
});

async function open(
  text: string,
  capabilities = pulling,
  settings?: () => unknown,
): Promise<ProtocolConnection> {
  opened = await inMemory(capabilities, settings);
  await opened.client.sendNotification('textDocument/didOpen', {
    textDocument: { uri, languageId: 'ohmwright-procedure', version: 1, text },
  });
  return opened.client;
}

async function pull(client: ProtocolConnection): Promise<Diagnostic[]> {
  const report = await client.sendRequest('textDocument/diagnostic', { textDocument: { uri } });
  return (report as { items: Diagnostic[] }).items;
}

function change(client: ProtocolConnection, version: number, contentChanges: unknown[]): Promise<void> {
  return client.sendNotification('textDocument/didChange', {
    textDocument: { uri, version },
    contentChanges,
  });
}

function hints(client: ProtocolConnection, range = everything): Promise<InlayHint[]> {
  return client.sendRequest('textDocument/inlayHint', { textDocument: { uri }, range });
}

/** What a fresh check of a text finds. */
function fresh(text: string): unknown {
  const document = {
    text: TextDocument.create(uri, 'ohmwright-procedure', 1, text),
    analysis: analyse(snapshotOf([{ id: uri, text }]), uri),
  };
  const findings = finish(document.analysis.findings('order'));
  const options = { related: true, descriptionOf: (rule: string) => `file:///rules.md#${rule}` };
  return JSON.parse(JSON.stringify(diagnosticsOf(document, findings, options)));
}

/** A small stretch of the text is replaced by some of the characters that procedures are made of. */
const edit = fc.record({
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  length: fc.integer({ min: 0, max: 40 }),
  text: fc.oneof(
    fc.constantFrom(
      '',
      '\n',
      '  - wait: 3 min\n',
      '  - disconnect: battery\n',
      'K30',
      ': ',
      '- ',
      ' Ω',
      '#',
      '{',
      "'",
    ),
    fc.string({ maxLength: 5 }),
  ),
});

describe('after any sequence of edits', () => {
  test('the findings equal a fresh check of the final text', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(edit, { minLength: 1, maxLength: 6 }), async (edits) => {
        const client = await open(template);
        let text = template;
        let version = 1;
        for (const { at, length, text: inserted } of edits) {
          const document = TextDocument.create(uri, '', version, text);
          const from = Math.floor(at * text.length);
          const to = Math.min(text.length, from + length);
          const range = { start: document.positionAt(from), end: document.positionAt(to) };
          version += 1;
          await change(client, version, [{ range, text: inserted }]);
          // The range is taken at whole lines and characters, as the editor would.
          text =
            text.slice(0, document.offsetAt(range.start)) +
            inserted +
            text.slice(document.offsetAt(range.end));
          // Some requests are asked in between, and must leave no trace.
          if (version % 2 === 0) await pull(client);
        }
        const found = await pull(client);
        expect(found).toEqual(fresh(text));
        for (const { range } of found) expect(range.start.line).toBe(range.end.line);
        opened?.close();
      }),
      { numRuns: 60, seed: 7 },
    );
  });
});

describe('diagnostics', () => {
  const unsafe = shipped.replace('  - disconnect: battery\n    warning', '  - wait: 1 s\n    warning');

  test('carry rule, severity, the way as places that belong to them, and where to read more', async () => {
    const client = await open(unsafe);
    const touch = (await pull(client)).find(({ code }) => code === 'live-touch');
    expect(touch).toMatchObject({
      severity: 1,
      source: 'ohmwright',
      codeDescription: { href: 'file:///rules.md#live-touch' },
    });
    expect(touch?.message).toContain('battery is connected');
    expect(touch?.message).not.toContain('Path:');
    expect(touch?.relatedInformation?.map(({ message }) => message)).toContain(
      'step 3, read stage-1-loop: else',
    );
  });

  test('are pushed to a client that does not ask, after a pause, and taken away when the file is closed', async () => {
    const pushes: { version?: number; diagnostics: Diagnostic[] }[] = [];
    const client = await open(template, { textDocument: {} });
    const next = (): Promise<void> =>
      new Promise((resolve) => {
        client.onNotification('textDocument/publishDiagnostics', (params: (typeof pushes)[number]) => {
          pushes.push(params);
          resolve();
        });
      });
    await next();
    expect(pushes[0]?.diagnostics).toEqual([]);
    const changed = next();
    await change(client, 2, [{ text: template.replace('  - wait: 3 min\n', '') }]);
    await changed;
    expect(pushes.at(-1)?.version).toBe(2);
    expect(pushes.at(-1)?.diagnostics.map(({ code }) => code)).toEqual(['short-wait']);
    // A minimal client shows neither related places nor descriptions.
    expect(pushes.at(-1)?.diagnostics[0]).not.toHaveProperty('relatedInformation');
    expect(pushes.at(-1)?.diagnostics[0]?.message).toMatch(/ Path: steps \d.*\.$/);
    expect(pushes.at(-1)?.diagnostics[0]).not.toHaveProperty('codeDescription');
    const closed = next();
    await client.sendNotification('textDocument/didClose', { textDocument: { uri } });
    await closed;
    expect(pushes.at(-1)?.diagnostics).toEqual([]);
  });
});

describe('hints', () => {
  test('give the window of every reading step, and the wait where it begins', async () => {
    const client = await open(template);
    expect((await hints(client)).map(({ label }) => label)).toEqual([
      'wait 3 min before hands',
      'reads 1.64..2.81 Ω',
    ]);
  });

  test('honour the range asked for', async () => {
    const client = await open(shipped);
    const all = await hints(client);
    expect(all.length).toBeGreaterThan(6);
    const { line } = all[2]?.position ?? { line: 0 };
    const some = await hints(client, { start: { line, character: 0 }, end: { line, character: 1 } });
    expect(some).toEqual([all[2]]);
  });

  test('can be switched off', async () => {
    const client = await open(shipped, pulling, () => ({ inlayHints: { enabled: false } }));
    expect(await hints(client)).toEqual([]);
  });

  test('keep the last good windows while a line is half typed, and say that these are from an earlier text', async () => {
    const client = await open(shipped);
    const before = await hints(client);
    const broken = shipped.replace('  - unplug: K30\n', '  - unplug: K3');
    await change(client, 2, [{ text: broken }]);
    const after = await hints(client);
    expect(after.map(({ label }) => label)).toEqual(
      before.map(({ label }) => (typeof label === 'string' ? `earlier: ${label}` : label)),
    );
    for (const { tooltip } of after) expect(tooltip).toContain('not checked now');
    await change(client, 3, [{ text: shipped }]);
    expect(await hints(client)).toEqual(before);
    for (const hint of before) expect(hint).not.toHaveProperty('tooltip');
  });
});

describe('settings', () => {
  test('are asked for once, not at every keystroke, and again when the client says that they changed', async () => {
    const client = await open(template);
    for (let version = 2; version < 6; version++) {
      await change(client, version, [{ text: `${template}# ${version}\n` }]);
      await hints(client);
      await pull(client);
    }
    expect(opened?.asked()).toBe(1);
    await client.sendNotification('workspace/didChangeConfiguration', { settings: null });
    await hints(client);
    expect(opened?.asked()).toBe(2);
  });

  test('are taken as they are pushed by a client that answers no questions', async () => {
    const client = await open(template, { textDocument: { diagnostic: {} } });
    expect((await hints(client)).length).toBeGreaterThan(0);
    const push = (enabled: boolean): Promise<void> =>
      client.sendNotification('workspace/didChangeConfiguration', {
        settings: { ohmwright: { inlayHints: { enabled } } },
      });
    await push(false);
    expect(await hints(client)).toEqual([]);
    await push(true);
    expect((await hints(client)).length).toBeGreaterThan(0);
    expect(opened?.asked()).toBe(0);
  });

  test('that make no sense are the defaults', async () => {
    const client = await open(template, pulling, () => ({ inlayHints: 'yes please' }));
    expect((await hints(client)).length).toBeGreaterThan(0);
  });
});

describe('requests', () => {
  test('that are cancelled are answered as such', async () => {
    const client = await open(shipped);
    const { CancellationTokenSource } = await import('vscode-languageserver-protocol/node');
    const source = new CancellationTokenSource();
    const asked = client.sendRequest('textDocument/diagnostic', { textDocument: { uri } }, source.token);
    source.cancel();
    await expect(asked).rejects.toMatchObject({ code: -32800 });
    // The next one is answered in full.
    expect(await pull(client)).toEqual(fresh(shipped));
  });

  test('for a document that is not open are answered with nothing', async () => {
    const client = await open(template);
    const other = { textDocument: { uri: 'file:///other.procedure.yaml' } };
    expect(await client.sendRequest('textDocument/documentSymbol', other)).toEqual([]);
    expect(
      await client.sendRequest('ohmwright/card', {
        uri: other.textDocument.uri,
        face: 'paper',
        date: '',
        draft: true,
      }),
    ).toEqual({
      kind: 'unknown-document',
    });
  });
});

describe('the card', () => {
  const asked = { uri, face: 'paper', date: '2026-01-31', draft: false };

  test('is refused while there are errors, a draft is not', async () => {
    const client = await open(template.replace('  - wait: 3 min\n', ''));
    expect(await client.sendRequest('ohmwright/card', asked)).toEqual({ kind: 'refused', errors: 1 });
    expect(await client.sendRequest('ohmwright/card', { ...asked, draft: true })).toMatchObject({
      kind: 'card',
      draft: true,
    });
  });

  test('of a sound procedure is no draft, also where a draft would be taken', async () => {
    const client = await open(template);
    expect(await client.sendRequest('ohmwright/card', { ...asked, draft: true })).toMatchObject({
      kind: 'card',
      draft: false,
    });
  });
});

describe('a card that goes wrong inside the server', () => {
  test('is told from a document that is not open', async () => {
    const client = await open(template);
    const logged: string[] = [];
    client.onNotification('window/logMessage', ({ message }: { message: string }) => {
      logged.push(message);
    });
    // No client of this protocol sends such a date: it makes the writing of the card throw.
    const asked = { uri, face: 'paper', date: null, draft: false };
    expect(await client.sendRequest('ohmwright/card', asked)).toEqual({ kind: 'failed' });
    expect(logged).toEqual([expect.stringMatching(/^Card failed: /)]);
  });
});

describe('a new procedure', () => {
  test('is complete, and has no finding but that its values are examples', async () => {
    const client = await open('');
    const { text } = await client.sendRequest<{ text: string }>('ohmwright/template');
    const found = fresh(text) as readonly { readonly code: string }[];
    expect(new Set(found.map(({ code }) => code))).toEqual(new Set(['example-values']));
  });
});
