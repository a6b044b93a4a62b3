import { afterEach, expect, test } from 'vitest';
import type { Diagnostic } from 'vscode-languageserver-types';
import { parse } from 'yaml';
import { example, makeSafe } from '../../server/src/rules/examples.ts';
import { inMemory } from './in-memory.ts';
import type { InMemory } from './in-memory.ts';

/* A parts file that is changed, in the editor or on disk, changes what is said of the procedure that uses it. */

const uri = 'file:///vans/a.procedure.yaml';
const parts = 'file:///vans/shared/k.parts.yaml';

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
const using = text.replace(section, 'uses: [shared/k.parts.yaml]\n');
const partsText = (wait: string): string => `format: 1\n${section.replace('3 min', wait)}`;

let opened: InMemory | undefined;
afterEach(() => {
  opened?.close();
  opened = undefined;
});

async function rulesFound(): Promise<readonly unknown[]> {
  const report = await opened?.client.sendRequest('textDocument/diagnostic', { textDocument: { uri } });
  return (report as { items: Diagnostic[] }).items.map(({ code }) => code);
}

async function openBoth(files: ReadonlyMap<string, string>): Promise<void> {
  opened = await inMemory({ textDocument: { diagnostic: {} } }, undefined, files);
  await opened.client.sendNotification('textDocument/didOpen', {
    textDocument: { uri, languageId: 'ohmwright-procedure', version: 1, text: using },
  });
}

test('as it stands on disk, and again when that is changed', async () => {
  const files = new Map<string, string>();
  await openBoth(files);
  expect(await rulesFound()).toEqual(['parts-file']);
  files.set(parts, partsText('3 min'));
  const changed = { changes: [{ uri: parts, type: 1 }] };
  await opened?.client.sendNotification('workspace/didChangeWatchedFiles', changed);
  expect(await rulesFound()).toEqual([]);
  files.set(parts, partsText('5 min'));
  await opened?.client.sendNotification('workspace/didChangeWatchedFiles', changed);
  expect(await rulesFound()).toEqual(['short-wait']);
});

test('as it stands in the editor, before it is saved', async () => {
  await openBoth(new Map([[parts, partsText('3 min')]]));
  expect(await rulesFound()).toEqual([]);
  await opened?.client.sendNotification('textDocument/didOpen', {
    textDocument: { uri: parts, languageId: 'ohmwright-procedure', version: 1, text: partsText('4 min') },
  });
  expect(await rulesFound()).toEqual(['short-wait']);
  await opened?.client.sendNotification('textDocument/didClose', { textDocument: { uri: parts } });
  expect(await rulesFound()).toEqual([]);
});

test('a parts file is one file, however the editor spells its address', async () => {
  opened = await inMemory({ textDocument: { diagnostic: {} } }, undefined, new Map());
  const open = (address: string, version: number, written: string) =>
    opened?.client.sendNotification('textDocument/didOpen', {
      textDocument: { uri: address, languageId: 'ohmwright-procedure', version, text: written },
    });
  const spelled = 'file:///C:/my%20vans/a.procedure.yaml';
  const found = async (): Promise<readonly unknown[]> => {
    const document = { textDocument: { uri: spelled } };
    const report = await opened?.client.sendRequest('textDocument/diagnostic', document);
    return (report as { items: Diagnostic[] }).items.map(({ code }) => code);
  };
  await open(spelled, 1, using.replace('k.parts.yaml', './/k (1).parts.json'));
  expect(await found()).toEqual(['parts-file']);
  await open(
    'file:///c%3A/my%20vans/shared/k%20%281%29.parts.json',
    1,
    JSON.stringify(parse(partsText('4 min'))),
  );
  expect(await found()).toEqual(['short-wait']);
});
