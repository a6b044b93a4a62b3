import { Composer, isAlias, isMap, isScalar, isSeq, Parser, Scalar } from 'yaml';
import type { CST, Document, ParsedNode, YAMLMap } from 'yaml';
import { sentenceFor } from './problems/yaml-errors.ts';
import type { Problem } from './problem.ts';
import type { Entry, Node } from './tree.ts';
import { marksOf } from './marks.ts';
import type { Marks } from './marks.ts';
import type { Range } from './where.ts';

export interface ParsedDocument {
  readonly root: Node | null;
  readonly problems: readonly Problem[];
}

/** Deeper than anything that the format knows; a file of brackets must not exhaust the stack. */
const deepest = 32;

/** Reads YAML into a tree. Every scalar stays the text that was written: the schema decides what it is. */
export function parseDocument(text: string): ParsedDocument {
  try {
    const tokens = [...new Parser().parse(text)];
    const composer = new Composer({
      schema: 'failsafe',
      keepSourceTokens: true,
      prettyErrors: false,
      uniqueKeys: false,
    });
    const documents = [...composer.compose(tokens, true, text.length)] as Document.Parsed[];
    return assemble(text, tokens, documents);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    const message = 'Brackets are nested too deeply.';
    return { root: null, problems: [{ rule: 'yaml', at: { range: { from: 0, to: text.length } }, message }] };
  }
}

function assemble(text: string, tokens: CST.Token[], documents: readonly Document.Parsed[]): ParsedDocument {
  const marks = marksOf(text, tokens);
  const problems: Problem[] = [...marks.problems];
  const [first, second] = documents;
  if (first !== undefined) problems.push(...syntaxProblems(text, first, marks));
  if (second !== undefined) {
    const range = { from: marks.secondDocument ?? second.range[0], to: text.length };
    problems.push({ rule: 'yaml', at: { range }, message: sentenceFor('MULTIPLE_DOCS', '') ?? '' });
  }
  const contents = (first?.contents ?? null);
  const root = contents === null ? null : toNode(contents, text, problems, 0);
  return { root, problems: firstOnEachLine(text, problems) };
}

function syntaxProblems(text: string, document: Document.Parsed, marks: Marks): readonly Problem[] {
  const problems: Problem[] = [];
  let lost = false;
  for (const { code, message, pos } of document.errors) {
    const closing = /Missing closing|end with a|must be sufficiently indented/.test(message);
    if (closing && marks.unclosed) continue;
    const inStream = message.includes('in YAML stream');
    if (inStream && lost) continue;
    lost ||= inStream;
    const sentence = sentenceFor(code, message);
    if (sentence === null) continue;
    problems.push({ rule: 'yaml', at: { range: placeOf(code, pos, text) }, message: sentence });
  }
  return problems;
}

/** The parser gives a point; people see a stretch. */
function placeOf(code: string, [from, to]: [number, number], text: string): Range {
  if (code === 'TAB_AS_INDENT') {
    const lineStart = Math.max(text.lastIndexOf('\n', from - 1), text.lastIndexOf('\r', from - 1)) + 1;
    const tab = text.indexOf('\t', lineStart);
    return tab === -1 ? { from, to } : { from: tab, to: tab + 1 };
  }
  const rest = /^[^\s,\]}]+/.exec(text.slice(from, from + 200));
  return { from, to: Math.max(to, from + (rest?.[0].length ?? 1)) };
}

/** What follows on the same line is almost always the same mistake. */
function firstOnEachLine(text: string, problems: readonly Problem[]): readonly Problem[] {
  const kept = new Map<number, Problem>();
  const others: Problem[] = [];
  for (const problem of problems) {
    if (problem.rule !== 'yaml' || !('range' in problem.at)) {
      others.push(problem);
      continue;
    }
    const line = text.slice(0, problem.at.range.from).split(/\r\n|\n|\r/).length;
    if (!kept.has(line)) kept.set(line, problem);
  }
  return [...kept.values(), ...others];
}

function toNode(node: ParsedNode | null, text: string, problems: Problem[], depth: number): Node {
  if (node === null) return { kind: 'scalar', text: '', plain: true, range: { from: 0, to: 0 }, start: null };
  const range = { from: node.range[0], to: node.range[1] };
  if (depth > deepest) {
    problems.push({ rule: 'yaml', at: { range }, message: 'Brackets are nested too deeply.' });
    return { kind: 'unreadable', range };
  }
  if (isAlias(node)) return { kind: 'unreadable', range };
  if (isScalar(node)) return scalarNode(node, range, text);
  if (isMap(node)) {
    return { kind: 'map', entries: entriesOf(node, text, problems, depth), range };
  }
  if (isSeq(node)) {
    const items = node.items.map((item) => toNode(item, text, problems, depth + 1));
    return { kind: 'list', items, range };
  }
  return { kind: 'unreadable', range };
}

function scalarNode(node: Scalar.Parsed, range: Range, source: string): Node {
  const text = String(node.value);
  const quoted = node.type === Scalar.QUOTE_DOUBLE || node.type === Scalar.QUOTE_SINGLE;
  const start = range.from + (quoted ? 1 : 0);
  const asWritten = source.startsWith(text, start) && (quoted || node.type === Scalar.PLAIN);
  return { kind: 'scalar', text, plain: node.type === Scalar.PLAIN, range, start: asWritten ? start : null };
}

function entriesOf(map: YAMLMap.Parsed, text: string, problems: Problem[], depth: number): readonly Entry[] {
  const entries = new Map<string, Entry>();
  for (const pair of map.items) {
    const key = pair.key as ParsedNode | null;
    if (key === null || !isScalar(key)) {
      if (key !== null) {
        const at = { range: { from: key.range[0], to: key.range[1] } };
        problems.push({ rule: 'yaml', at, message: sentenceFor('NON_STRING_KEY', '') ?? '' });
      }
      continue;
    }
    const named = keyOf(key, text);
    if (named.key === '' && key.range[0] === key.range[1]) continue;
    const earlier = entries.get(named.key);
    if (earlier !== undefined) {
      problems.push({
        rule: 'yaml',
        at: { range: named.keyRange },
        message: `\`${named.key}\` stands here a second time. Remove one of the two.`,
        subject: named.key,
        related: [{ at: { range: earlier.keyRange }, message: 'The first one.' }],
      });
      continue;
    }
    const value = toNode(pair.value, text, problems, depth + 1);
    entries.set(named.key, { ...named, value });
  }
  return [...entries.values()];
}

/** A line without a colon runs together with the key below it: the key is what stands on the last line. */
function keyOf(key: Scalar.Parsed, text: string): { readonly key: string; readonly keyRange: Range } {
  const keyRange = { from: key.range[0], to: key.range[1] };
  const last = /[^\r\n]*$/.exec(text.slice(keyRange.from, keyRange.to))?.[0] ?? '';
  const own = last.trimStart();
  if (key.type !== Scalar.PLAIN || own.length === keyRange.to - keyRange.from)
    return { key: String(key.value), keyRange };
  return { key: own, keyRange: { from: keyRange.to - own.length, to: keyRange.to } };
}
