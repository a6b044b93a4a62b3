import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { example, makeSafe } from '../../server/src/rules/examples.ts';
import { introduced, rawClient } from './raw-client.ts';
import type { RawClient } from './raw-client.ts';

/* What the server asks its client it can do without: whether it is refused, or answered with nonsense or not at all. */

const { text } = example(
  '',
  `${makeSafe}
- unplug: K30
  warning: Stay clear of the front of the airbag.
- stop: Hand over to the workshop lead.
  leaves: [battery, K30, codes, repair]
`,
);
const section = /sources:\n(?: .*\n)+/.exec(text)?.[0] ?? '';
const using = text.replace(section, 'uses: [k.parts.yaml]\n');
const partsText = (wait: string): string => `format: 1\n${section.replace('3 min', wait)}`;

/** A client that can be asked everything that the server asks. */
const capabilities = {
  textDocument: { diagnostic: {} },
  workspace: {
    configuration: true,
    didChangeConfiguration: { dynamicRegistration: true },
    didChangeWatchedFiles: { dynamicRegistration: true },
    inlayHint: { refreshSupport: true },
    diagnostics: { refreshSupport: true },
  },
};

let folder = '';
let client: RawClient | undefined;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'ohmwright-'));
});
afterEach(() => {
  client?.server.kill('SIGKILL');
  client = undefined;
  rmSync(folder, { recursive: true });
});

describe.each([
  ['with an error', { error: { code: -32601, message: 'This client knows no such thing.' } }],
  ['with nonsense', { result: 'yes, please' }],
  ['never', undefined],
])('a client that answers %s', (_, answer) => {
  test('is served, and told that a file behind a link has changed', async () => {
    mkdirSync(join(folder, 'real'));
    const real = join(folder, 'real/k.parts.yaml');
    writeFileSync(real, partsText('3 min'));
    symlinkSync(real, join(folder, 'k.parts.yaml'));
    const uri = pathToFileURL(join(folder, 'a.procedure.yaml')).href;
    const asked = (client = await introduced(rawClient({ answer: () => answer }), capabilities));
    asked.tell('textDocument/didOpen', {
      textDocument: { uri, languageId: 'ohmwright-procedure', version: 1, text: using },
    });
    const rulesFound = async (): Promise<readonly unknown[]> => {
      const { result } = await asked.ask('textDocument/diagnostic', { textDocument: { uri } });
      return (result as { items: { code: unknown }[] }).items.map(({ code }) => code);
    };
    expect(await rulesFound()).toEqual([]);
    await asked.next(
      () => {
        writeFileSync(real, partsText('5 min'));
      },
      ({ method }) => method === 'workspace/diagnostic/refresh',
    );
    await asked.hear(({ method }) => method === 'workspace/inlayHint/refresh');
    expect(await rulesFound()).toEqual(['short-wait']);
    const range = { start: { line: 0, character: 0 }, end: { line: 1000, character: 0 } };
    const hints = await asked.ask('textDocument/inlayHint', { textDocument: { uri }, range });
    expect(hints.result).not.toEqual([]);
    asked.tell('workspace/didChangeConfiguration', { settings: null });
    expect(await rulesFound()).toEqual(['short-wait']);
    await asked.ask('shutdown', {});
    asked.tell('exit', {});
    expect(await asked.ended()).toBe(0);
  });
});
