import { afterEach, expect, test } from 'vitest';
import type { CodeAction, Diagnostic } from 'vscode-languageserver-types';
import { example, readOnly } from '../../server/src/rules/examples.ts';
import { tooManyStates } from '../../server/src/rules/flow/too-many-states.ts';
import { inMemory } from './in-memory.ts';
import type { InMemory } from './in-memory.ts';

/* What a client hears where not everything was checked, and where a fix is for the author to choose. */

const uri = 'file:///vans/a.procedure.yaml';
const capabilities = {
  textDocument: {
    diagnostic: {},
    codeAction: { codeActionLiteralSupport: { codeActionKind: { valueSet: ['', 'quickfix'] } } },
  },
};

let session: InMemory | undefined;
afterEach(() => {
  session?.close();
  session = undefined;
});

async function opened(text: string): Promise<InMemory> {
  session = await inMemory(capabilities, undefined, undefined, {
    introduction: { initializationOptions: { figures: true } },
  });
  await session.client.sendNotification('textDocument/didOpen', {
    textDocument: { uri, languageId: 'ohmwright-procedure', version: 1, text },
  });
  return session;
}

async function diagnostics({ client }: InMemory): Promise<readonly Diagnostic[]> {
  const report = await client.sendRequest('textDocument/diagnostic', { textDocument: { uri } });
  return (report as { items: Diagnostic[] }).items;
}

test.each([
  ['a check that met a limit', tooManyStates.examples.triggers.text, false],
  ['a check of everything', tooManyStates.examples.passes.text, true],
])('the figures of %s say so', async (_, text, complete) => {
  const here = await opened(text);
  const heard = new Promise((resolve) => void here.client.onNotification('ohmwright/figures', resolve));
  await diagnostics(here);
  expect(await heard).toMatchObject({ uri, complete });
});

test('the card beside a text of which not everything was checked says so', async () => {
  const { client } = await opened(tooManyStates.examples.triggers.text);
  const asked = { uri, face: 'editor', date: '2031-04-17', draft: true };
  const made = await client.sendRequest<{ html: string }>('ohmwright/card', asked);
  expect(made).toMatchObject({ kind: 'card', draft: true });
  expect(made.html).toContain('DRAFT - DO NOT USE: not everything was checked');
  expect(await client.sendRequest('ohmwright/card', { ...asked, draft: false })).toMatchObject({
    kind: 'refused',
  });
});

test('a missing outcome has an action for each step that it may lead to, and none is preferred', async () => {
  const { text } = example(
    '',
    `${readOnly}  outcomes: { within: next }
- stop: The loop is sound.
- stop: The loop is faulty.
  id: faulty
- stop: Ask the workshop lead.
  id: ask
`,
  );
  const here = await opened(text);
  const actions = await here.client.sendRequest<CodeAction[]>('textDocument/codeAction', {
    textDocument: { uri },
    range: { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } },
    context: { diagnostics: (await diagnostics(here)).filter(({ code }) => code === 'uncovered') },
  });
  expect(actions.map(({ title, isPreferred }) => [title, isPreferred])).toEqual([
    ['Lead everything else at step 4 to `faulty`', false],
    ['Lead everything else at step 4 to `ask`', false],
  ]);
});
