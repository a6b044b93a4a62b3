import { expect, test } from 'vitest';
import type { CodeAction, Diagnostic } from 'vscode-languageserver-types';
import { example, giveBackOpened, makeSafe } from '../../server/src/rules/examples.ts';
import { inMemory } from './in-memory.ts';
import { edited } from './stdio-client.ts';

/* All that has a sure way is mended in one edit, where a client asks for it: by command, or when it saves. */

const uri = 'file:///vans/a.procedure.yaml';
const { text: good } = example(
  '',
  `${makeSafe}
- unplug: K30
  warning: Stay clear of the front of the airbag.
- plug: K30
${giveBackOpened}`,
);
const text = good.replace('  - wait: 3 min\n', '').replace('  - ignition: off\n', '');

test('mends all that has a sure way at once, and only where that is asked for', async () => {
  const capabilities = {
    textDocument: {
      diagnostic: {},
      codeAction: { codeActionLiteralSupport: { codeActionKind: { valueSet: ['', 'quickfix', 'source'] } } },
    },
  };
  const { client, close } = await inMemory(capabilities);
  const send = (method: string, params: object): Promise<unknown> => client.sendRequest(method, params);
  const diagnostics = async (): Promise<readonly Diagnostic[]> =>
    ((await send('textDocument/diagnostic', { textDocument: { uri } })) as { items: Diagnostic[] }).items;
  await client.sendNotification('textDocument/didOpen', {
    textDocument: { uri, languageId: 'ohmwright-procedure', version: 1, text },
  });
  const found = await diagnostics();
  expect(found.length).toBeGreaterThan(1);
  const actions = async (only?: readonly string[]): Promise<readonly CodeAction[]> =>
    (await send('textDocument/codeAction', {
      textDocument: { uri },
      range: { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } },
      context: { diagnostics: found, ...(only === undefined ? {} : { only }) },
    })) as CodeAction[];
  const [all, ...others] = await actions(['source.fixAll']);
  expect(others).toEqual([]);
  expect(all?.kind).toBe('source.fixAll.ohmwright');
  for (const only of [undefined, ['quickfix']])
    expect(new Set((await actions(only)).map(({ kind }) => kind))).toEqual(new Set(['quickfix']));
  const mended = edited(uri, text, all?.edit?.changes?.[uri] ?? []);
  await client.sendNotification('textDocument/didChange', {
    textDocument: { uri, version: 2 },
    contentChanges: [{ text: mended }],
  });
  expect(await diagnostics()).toEqual([]);
  expect(await actions(['source'])).toEqual([]);
  close();
});
