import { TextDocument } from 'vscode-languageserver-textdocument';
import { finish } from '../../server/src/model/work.ts';
import { complete } from '../../server/src/editor/completion.ts';
import { diagnosticsOf } from '../../server/src/editor/diagnostics.ts';
import { hover } from '../../server/src/editor/hover.ts';
import { hintTexts, inlayHints } from '../../server/src/editor/inlay-hints.ts';
import { outline } from '../../server/src/editor/outline.ts';
import type { Chance } from '../oracle/chance.ts';
import { strokesOf } from './edit-inputs.ts';
import type { Writing } from './edit-inputs.ts';
import { parts } from './everything.ts';
import { opened, partsUri, uri } from './input.ts';
import { session } from './session.ts';
import type { Json, Session } from './session.ts';

/*
 * The server follows what is written, asked all sorts of things meanwhile. In the end it must know what it would know had
 * the text been opened as it is.
 */

const capabilities: Json = {
  workspace: {
    configuration: true,
    inlayHint: { refreshSupport: true },
    diagnostics: { refreshSupport: true },
  },
  textDocument: {
    diagnostic: { relatedInformation: true },
    completion: { completionItem: { snippetSupport: true } },
    documentSymbol: { hierarchicalDocumentSymbolSupport: true },
    codeAction: { codeActionLiteralSupport: { codeActionKind: { valueSet: ['quickfix'] } } },
  },
};

export async function begun(files: ReadonlyMap<string, string>, chance: Chance): Promise<Session> {
  const open = session(files, { refuses: () => chance.happens(0.1) });
  await open.request('initialize', { processId: null, rootUri: null, capabilities });
  open.notify('initialized', {});
  return open;
}

export async function afterWriting({ start, acts }: Writing, chance: Chance): Promise<readonly string[]> {
  const server = await begun(new Map([[partsUri, parts]]), chance);
  const asked: Promise<Json>[] = [];
  const ask = (method: string, params: Json): void => {
    asked.push(server.request(method, params));
  };
  let text = start;
  let version = 1;
  const earlier: string[] = [];
  server.notify('textDocument/didOpen', {
    textDocument: { uri, languageId: 'ohmwright-procedure', version, text },
  });
  for (const act of acts) {
    const before = text;
    for (const { from, to, text: put } of strokesOf(act, text, earlier)) {
      const document = TextDocument.create(uri, '', version, text);
      // Positions are whole lines and characters, as an editor has them.
      const range = { start: document.positionAt(from), end: document.positionAt(to) };
      const [start, end] = [document.offsetAt(range.start), document.offsetAt(range.end)];
      version += 1;
      text = text.slice(0, start) + put + text.slice(end);
      server.notify('textDocument/didChange', {
        textDocument: { uri, version },
        contentChanges: [{ range: range as unknown as Json, text: put }],
      });
    }
    if (act.kind === 'undo') earlier.pop();
    else earlier.push(before);
    askAbout(text, chance, ask);
    if (chance.happens(0.3)) await asked.at(-1);
  }
  const answers = await Promise.all(asked);
  const wrong = answers.includes(null) ? ['a request was never answered'] : [];
  wrong.push(...answers.flatMap(errorOf), ...(await differences(server, text, chance)));
  server.close();
  return wrong;
}

const everything = { start: { line: 0, character: 0 }, end: { line: 1_000_000, character: 0 } };

function askAbout(text: string, chance: Chance, ask: (method: string, params: Json) => void): void {
  const document = TextDocument.create(uri, '', 1, text);
  const position = { ...document.positionAt(chance.whole(0, text.length)) };
  const about = { textDocument: { uri } };
  const range = { start: position, end: position };
  const questions: readonly (() => void)[] = [
    () => {
      ask('textDocument/completion', { ...about, position });
    },
    () => {
      ask('textDocument/hover', { ...about, position });
    },
    () => {
      ask('textDocument/documentSymbol', about);
    },
    () => {
      ask('textDocument/inlayHint', { ...about, range: everything });
    },
    () => {
      ask('textDocument/diagnostic', about);
    },
    () => {
      ask('textDocument/codeAction', { ...about, range, context: { diagnostics: [] } });
    },
    () => {
      ask('ohmwright/card', { uri, face: 'editor', date: '2031-04-17', draft: true });
    },
  ];
  for (const question of chance.some(questions, 0.4)) question();
}

/** A request that the server could not answer, other than one that it was told to leave. */
function errorOf(answer: Json): readonly string[] {
  if (typeof answer !== 'object' || answer === null || !('error' in answer)) return [];
  return [`a request was answered with ${JSON.stringify((answer as { error: Json }).error)}`];
}

async function differences(server: Session, text: string, chance: Chance): Promise<readonly string[]> {
  const document = opened({ text, parts });
  const position = document.text.positionAt(chance.whole(0, text.length));
  const findings = finish(document.analysis.findings('order'));
  const at = { textDocument: { uri }, position: { ...position } };
  const now = hintTexts(
    document,
    finish(document.analysis.windows()).value,
    finish(document.analysis.order()).value,
  );
  const isWhole = !document.analysis.procedure().findings.some(({ severity }) => severity === 'error');
  const pairs: readonly (readonly [string, Json, unknown])[] = [
    [
      'diagnostics',
      await resultOf(server, 'textDocument/diagnostic', { textDocument: { uri } }),
      {
        kind: 'full',
        items: diagnosticsOf(document, findings, { related: true, descriptionOf: () => null }),
      },
    ],
    ['the outline', await resultOf(server, 'textDocument/documentSymbol', at), outline(document)],
    [
      'completion',
      await resultOf(server, 'textDocument/completion', at),
      complete(document, position, { snippets: true }),
    ],
    ['the hover', await resultOf(server, 'textDocument/hover', at), finish(hover(document, position))],
    [
      'hints',
      isWhole ? await resultOf(server, 'textDocument/inlayHint', { ...at, range: everything }) : null,
      isWhole ? inlayHints(document, everything, now, now) : null,
    ],
  ];
  return pairs.flatMap(([what, known, fresh]) => {
    const [one, other] = [JSON.stringify(known), JSON.stringify(fresh)];
    return one === other ? [] : [`${what} differ from a fresh start: ${apart(one, other)}`];
  });
}

async function resultOf(server: Session, method: string, params: Json): Promise<Json> {
  const answer = await server.request(method, params);
  return typeof answer === 'object' && answer !== null && !Array.isArray(answer)
    ? (answer.result ?? null)
    : 'no answer';
}

/** Where two texts part. */
function apart(one: string, other: string): string {
  let at = 0;
  while (at < one.length && one[at] === other[at]) at += 1;
  return `${one.slice(Math.max(0, at - 30), at + 60)} instead of ${other.slice(Math.max(0, at - 30), at + 60)}`;
}
