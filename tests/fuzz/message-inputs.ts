import type { Chance } from '../oracle/chance.ts';
import { corpusText } from './corpus.ts';
import { partsUri, uri } from './input.ts';
import { framed } from './session.ts';
import type { Json } from './session.ts';
import { special } from './text-inputs.ts';

/* What comes over the wire: requests and notifications that are good, strange or broken. */

export type Message =
  /** To be answered, whatever its parameters are. */
  | { readonly kind: 'request'; readonly id: number | string; readonly method: string; readonly params: Json }
  | { readonly kind: 'notification'; readonly method: string; readonly params: Json }
  | { readonly kind: 'cancel'; readonly id: Json }
  /** Bytes that are no good message, in a frame that says how long it is or in none. */
  | { readonly kind: 'raw'; readonly text: string };

export function messages(chance: Chance): readonly Message[] {
  return Array.from({ length: chance.whole(1, 14) }, (_, index) => message(chance, index));
}

const requests = [
  'textDocument/completion',
  'textDocument/hover',
  'textDocument/documentSymbol',
  'textDocument/inlayHint',
  'textDocument/diagnostic',
  'textDocument/codeAction',
  'ohmwright/card',
  'ohmwright/template',
  'initialize',
  'textDocument/definition',
  'workspace/symbol',
  'workspace/executeCommand',
  'no/such/method',
  '$/no/such/method',
  '',
];

const notifications = [
  'textDocument/didOpen',
  'textDocument/didChange',
  'textDocument/didClose',
  'textDocument/didSave',
  'textDocument/willSave',
  'initialized',
  'workspace/didChangeConfiguration',
  'workspace/didChangeWatchedFiles',
  'workspace/didChangeWorkspaceFolders',
  '$/setTrace',
  '$/progress',
  'no/such/notification',
];

function message(chance: Chance, index: number): Message {
  const id = chance.happens(0.8) ? index + 1 : `id-${index}`;
  switch (chance.whole(0, 11)) {
    case 0:
    case 1:
    case 2:
      return { kind: 'request', id, method: chance.pick(requests), params: good(chance) };
    case 3:
      return { kind: 'request', id, method: chance.pick(requests), params: strange(chance, 0) };
    case 4:
    case 5:
    case 6:
      return { kind: 'notification', method: chance.pick(notifications), params: good(chance) };
    case 7:
      return { kind: 'notification', method: chance.pick(notifications), params: strange(chance, 0) };
    case 8:
      return { kind: 'cancel', id: chance.pick<Json>([1, 2, index, 'id-1', null, 1e9]) };
    default:
      return { kind: 'raw', text: broken(chance) };
  }
}

const uris = [
  uri,
  uri,
  uri,
  partsUri,
  'file:///workshop/other.procedure.yaml',
  'untitled:Untitled-1',
  'FILE:///workshop/a.procedure.yaml',
  'file:///workshop/%61.procedure.yaml',
  '',
  ':',
  'x',
  'file:///%',
  'file:///workshop/\uD800',
];

const position = (chance: Chance): Json => ({
  line: chance.pick([0, 1, 5, 20, 1e6, -1, 2 ** 31]),
  character: chance.pick([0, 1, 4, 40, 1e6, -1]),
});

/** All that any of the messages may want, so that one shape fits all. */
function good(chance: Chance): Json {
  const where = chance.pick(uris);
  const text = chance.happens(0.8) ? corpusText(chance.whole(0, 1e9)) : chance.pick(special);
  const [one, other] = [position(chance), position(chance)];
  return {
    textDocument: { uri: where, languageId: 'ohmwright-procedure', version: chance.whole(0, 9), text },
    uri: where,
    face: chance.pick<Json>(['editor', 'paper', 'x', null]),
    date: '2031-04-17',
    draft: chance.happens(0.5),
    position: one,
    range: { start: one, end: other },
    context: { diagnostics: [], only: chance.pick<Json>([['quickfix'], ['source.fixAll'], []]) },
    contentChanges: chance.pick<Json>([
      [{ text }],
      [{ range: { start: one, end: other }, text: chance.pick(special) }],
      [],
      [{ range: { start: other, end: one }, rangeLength: 3, text: '' }, { text: 'format: 1\n' }],
    ]),
    settings: chance.pick<Json>([
      null,
      {},
      { ohmwright: { inlayHints: { enabled: false } } },
      { ohmwright: 1 },
    ]),
    changes: [{ uri: chance.pick(uris), type: chance.whole(0, 4) }],
    event: { added: [{ uri: 'file:///workshop', name: 'w' }], removed: [] },
    capabilities: {},
    processId: null,
    rootUri: null,
    value: 'off',
    token: 1,
  };
}

function strange(chance: Chance, depth: number): Json {
  const leaf: readonly Json[] = [null, 0, -1, 1e308, true, '', 'x', uri, ...special];
  if (depth > 3 || chance.happens(0.4)) return chance.pick(leaf);
  if (chance.happens(0.3))
    return Array.from({ length: chance.whole(0, 3) }, () => strange(chance, depth + 1));
  const keys = [
    'textDocument',
    'uri',
    'text',
    'version',
    'position',
    'line',
    'character',
    'range',
    'start',
    'end',
    'contentChanges',
    'context',
    'diagnostics',
    'settings',
    'changes',
    'capabilities',
    '__proto__',
  ];
  return Object.fromEntries(chance.some(keys, 0.3).map((key) => [key, strange(chance, depth + 1)]));
}

/** In a frame of its own, or between frames. */
function broken(chance: Chance): string {
  const body = JSON.stringify({ jsonrpc: '2.0', id: 77, method: 'ohmwright/template', params: {} });
  return chance.pick<() => string>([
    () => framed(body.slice(0, chance.whole(0, body.length - 1))),
    () =>
      framed(
        chance.pick([
          '',
          'null',
          '1',
          '"x"',
          '[]',
          '{}',
          '[{}]',
          'true',
          '{"jsonrpc":"2.0"}',
          '\u0000',
          '\uFEFF{}',
        ]),
      ),
    () => framed(JSON.stringify(strange(chance, 0))),
    () =>
      framed(
        JSON.stringify({
          jsonrpc: '2.0',
          id: chance.pick<Json>([1, 999, null, 'x']),
          result: strange(chance, 0),
        }),
      ),
    () =>
      framed(
        JSON.stringify({ jsonrpc: '2.0', id: chance.pick<Json>([1, 999, null]), error: strange(chance, 0) }),
      ),
    () =>
      framed(
        JSON.stringify({
          jsonrpc: chance.pick<Json>(['1.0', 2, null]),
          method: chance.pick<Json>([null, 1, {}, 'x']),
          params: strange(chance, 0),
        }),
      ),
    () =>
      framed(
        JSON.stringify({ id: chance.pick<Json>([{}, [], true, null, 1.5]), method: 'ohmwright/template' }),
      ),
    () =>
      framed(body).replace(
        'Content-Length',
        chance.pick(['content-length', 'Content-length', 'CONTENT-LENGTH']),
      ),
    () =>
      framed(body).replace('\r\n\r\n', '\r\nContent-Type: application/vscode-jsonrpc; charset=utf-8\r\n\r\n'),
    () => framed(body).replace('\r\n\r\n', '\r\nX-Other: 1\r\n\r\n'),
    // Frames that are none.
    () => 'X-Other: 1\r\n\r\n',
    () => 'Content-Length: x\r\n\r\n',
    () => 'Content-Length: -5\r\n\r\n',
    () => 'Content-Length\r\n\r\n',
    () => ': 1\r\n\r\n',
    () => '\r\n\r\n',
  ])();
}
