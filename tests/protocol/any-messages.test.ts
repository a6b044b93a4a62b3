import fc from 'fast-check';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Diagnostic } from 'vscode-languageserver-types';
import { writtenTemplate as template } from '../editor/written-template.ts';
import { introduced, rawClient } from './raw-client.ts';
import type { RawClient } from './raw-client.ts';

/*
 * Whatever messages come, each request is answered, and a text that is opened after them is checked like any other.
 * OHMWRIGHT_SEEDS says how many rounds of messages are tried.
 */

const rounds = Number(process.env.OHMWRIGHT_SEEDS ?? 25);
const uri = 'file:///workshop/a.procedure.yaml';

/** What no client should send in any place. */
const nonsense = fc.constantFrom(null, undefined, 0, -1, 1.5, 2 ** 31, 'x', '', [], {}, true, '\u0000');
const mostly = <T>(arbitrary: fc.Arbitrary<T>): fc.Arbitrary<unknown> =>
  fc.oneof({ weight: 6, arbitrary }, { weight: 1, arbitrary: nonsense });

const names = ['a.procedure.yaml', './a%2Eprocedure.yaml', 'k.parts.yaml', '%E0%A4%A.procedure.yaml'];
const someUri = mostly(fc.constantFrom(...names.map((name) => `file:///workshop/${name}`), 'untitled:1'));
const position = mostly(fc.record({ line: mostly(fc.nat(60)), character: mostly(fc.nat(60)) }));
const range = mostly(fc.record({ start: position, end: position }));
const text = mostly(
  fc.constantFrom(template, template.replace('wait', 'wiat'), `uses: [k.parts.yaml]\n${template}`),
);
const change = mostly(fc.record({ range, text }, { requiredKeys: ['text'] }));
const folders = mostly(
  fc.array(mostly(fc.record({ uri: someUri, name: fc.constant('x') })), { maxLength: 2 }),
);
const kinds = mostly(fc.constantFrom(['quickfix'], ['source.fixAll'], ['']));

/** The parts of all messages together: each takes its own. */
const params = mostly(
  fc.record({
    textDocument: mostly(
      fc.record({
        uri: someUri,
        languageId: mostly(fc.constant('ohmwright-procedure')),
        version: mostly(fc.nat(9)),
        text,
      }),
    ),
    contentChanges: mostly(fc.array(change, { maxLength: 3 })),
    position,
    range,
    context: mostly(fc.record({ diagnostics: mostly(fc.constant([])), only: kinds })),
    settings: mostly(fc.record({ ohmwright: nonsense })),
    event: mostly(fc.record({ added: folders, removed: folders })),
    uri: someUri,
    face: mostly(fc.constantFrom('paper', 'editor')),
    date: mostly(fc.constant('2026-01-31')),
    draft: mostly(fc.boolean()),
    capabilities: mostly(fc.constant({})),
  }),
);

const notifications = [
  'initialized',
  'textDocument/didOpen',
  'textDocument/didChange',
  'textDocument/didClose',
  'workspace/didChangeConfiguration',
  'workspace/didChangeWatchedFiles',
  'workspace/didChangeWorkspaceFolders',
  '$/cancelRequest',
  'workshop/coffee',
];
const requests = [
  ...['hover', 'completion', 'documentSymbol', 'inlayHint', 'codeAction', 'diagnostic'].map(
    (one) => `textDocument/${one}`,
  ),
  'ohmwright/card',
  'ohmwright/template',
  'initialize',
  'workshop/coffee',
];
/** Whatever they hold. */
const refused = new Set(['initialize', 'workshop/coffee']);
const message = fc.record({
  method: fc.oneof(fc.constantFrom(...requests), fc.constantFrom(...notifications)),
  params,
});

const everything = {
  textDocument: {
    diagnostic: { relatedInformation: true },
    codeAction: { codeActionLiteralSupport: { codeActionKind: { valueSet: [''] } } },
  },
  workspace: {
    configuration: true,
    workspaceFolders: true,
    inlayHint: { refreshSupport: true },
    diagnostics: { refreshSupport: true },
  },
};

let client: RawClient;
beforeAll(async () => {
  client = await introduced(rawClient(), everything);
});
afterAll(() => client.server.kill('SIGKILL'));

test('any messages leave a server that answers', async () => {
  const short = template.replace('  - wait: 3 min\n', '');
  const document = { uri, languageId: 'ohmwright-procedure', version: 1, text: short };
  await fc.assert(
    fc.asyncProperty(fc.array(message, { minLength: 20, maxLength: 60, size: 'max' }), async (messages) => {
      const answers = messages.flatMap(({ method, params: given }) => {
        const sent = given as object;
        if (requests.includes(method))
          return [client.ask(method, sent).then((answer) => ({ method, answer }))];
        client.tell(method, sent);
        return [];
      });
      for (const { method, answer } of await Promise.all(answers))
        if (refused.has(method)) expect([method, answer.error]).toEqual([method, expect.anything()]);
        else expect('result' in answer || answer.error !== undefined).toBe(true);
      client.tell('textDocument/didOpen', { textDocument: document });
      const { result } = await client.ask('textDocument/diagnostic', { textDocument: { uri } });
      expect((result as { items: Diagnostic[] }).items.map(({ code }) => code)).toEqual(['short-wait']);
    }),
    { numRuns: rounds, seed: 5 },
  );
});
