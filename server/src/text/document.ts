import { Composer, isAlias, isMap, isScalar, isSeq, Scalar } from 'yaml';
import type { Document, ParsedNode, YAMLMap } from 'yaml';
import { indentedFurther, sentenceFor } from './problems/yaml-errors.ts';
import type { Problem } from './problem.ts';
import { isEmpty } from './tree.ts';
import type { Entry, Node } from './tree.ts';
import { keyOf } from './keys.ts';
import type { WrittenPair } from './keys.ts';
import { lineAt, linesOf } from './lines.ts';
import type { Lines } from './lines.ts';
import { marksOf } from './marks.ts';
import type { Marks } from './marks.ts';
import { mostErrors, mostWords, tokensOf, walk } from './tokens.ts';
import type { Range } from '../model/where.ts';

export interface ParsedDocument {
  readonly root: Node | null;
  readonly problems: readonly Problem[];
}

/** Reads YAML into a tree. Every scalar stays the text that was written: the schema decides what it is. */
export function parseDocument(text: string): ParsedDocument {
  const tokens = tokensOf(text);
  if (tokens === null) return refused(0, tooManyWords);
  const walked = walk(tokens);
  const { count, first } = walked.errors;
  if (count > mostErrors) return refused(first, tooManyErrors);
  const deep = walked.tooDeep;
  if (deep !== null) {
    const message = sentenceFor('RESOURCE_EXHAUSTION', '') ?? '';
    return { root: null, problems: [{ rule: 'yaml', at: { range: { from: deep, to: deep + 1 } }, message }] };
  }
  const composer = new Composer({
    schema: 'failsafe',
    prettyErrors: false,
    uniqueKeys: false,
    // A tag would make of a list or map what has other methods, or no place in the text.
    resolveKnownTags: false,
    // They say where the colon of a key is that is not there.
    keepSourceTokens: true,
  });
  const documents = withoutStacks(
    () => [...composer.compose(tokens, true, text.length)] as Document.Parsed[],
  );
  return assemble(text, marksOf(text, walked, tokens), documents);
}

/** The library makes an error object of each mistake, and most of the time of it goes into its stack, which nobody reads. */
function withoutStacks<T>(work: () => T): T {
  const { stackTraceLimit } = Error;
  Error.stackTraceLimit = 0;
  try {
    return work();
  } finally {
    Error.stackTraceLimit = stackTraceLimit;
  }
}

const tooManyWords =
  `This file has more than ${mostWords} words and signs, and no longer one is read. ` +
  'A procedure has a few thousand: make several procedures of it.';

const tooManyErrors =
  `This file has more than ${mostErrors} errors in its YAML, and is not read. ` +
  'Is it a procedure? If so, mend the first of them: others often follow from it.';

function refused(at: number, message: string): ParsedDocument {
  return { root: null, problems: [{ rule: 'yaml', at: { range: { from: at, to: at + 1 } }, message }] };
}

function assemble(text: string, marks: Marks, documents: readonly Document.Parsed[]): ParsedDocument {
  const lines = linesOf(text);
  const [first, second] = documents;
  const syntax = first === undefined ? [] : syntaxProblems(text, lines, first, marks);
  const problems: Problem[] = [...marks.problems, ...syntax];
  if (second !== undefined) {
    const range = { from: marks.secondDocument ?? second.range[0], to: text.length };
    problems.push({ rule: 'yaml', at: { range }, message: sentenceFor('MULTIPLE_DOCS', '') ?? '' });
  }
  const contents = first?.contents ?? null;
  const root = contents === null ? null : toNode(contents, text, problems);
  return { root, problems: firstOnEachLine(lines, problems) };
}

/** Errors that make the parser lose its place: others behind them are often the same mistake. */
const misplacing: ReadonlySet<string> = new Set([
  'BAD_INDENT',
  'BLOCK_AS_IMPLICIT_KEY',
  'MISSING_CHAR',
  'MULTILINE_IMPLICIT_KEY',
  'TAB_AS_INDENT',
  'UNEXPECTED_TOKEN',
]);

function syntaxProblems(
  text: string,
  lines: Lines,
  document: Document.Parsed,
  marks: Marks,
): readonly Problem[] {
  const problems: Problem[] = [];
  let lost = false;
  let lastLine = -Infinity;
  for (const [index, { code, message, pos }] of document.errors.entries()) {
    // Closing characters are missed at the end of the file, or where the indentation ends.
    if (marks.unclosed !== null && pos[0] >= marks.unclosed && misplacing.has(code)) continue;
    const inStream = message.includes('in YAML stream');
    if (inStream && lost) continue;
    lost ||= inStream;
    const line = lineAt(lines, pos[0]);
    const follows = code === 'BAD_INDENT' ? lastLine >= 0 : line <= lastLine + 1;
    if (misplacing.has(code)) {
      const known = follows;
      lastLine = line;
      if (known) continue;
    }
    const next = document.errors[index + 1];
    const overLines = code === 'BLOCK_AS_IMPLICIT_KEY' && next?.code === 'MULTILINE_IMPLICIT_KEY';
    const sentence = overLines ? indentedFurther : sentenceFor(code, message);
    if (sentence === null) continue;
    const range = (overLines ? lastKeyLine(pos[0], text) : null) ?? placeOf(code, pos, text);
    problems.push({ rule: 'yaml', at: { range }, message: sentence, misplaces: misplacing.has(code) });
  }
  return problems;
}

/** YAML has no longer key; a line in two keys' lengths has its colon here, or has none. */
const longestKey = 2048;

/** A key that is indented below a value runs together with it: what is wrong is the line with the colon. */
function lastKeyLine(from: number, text: string): Range | null {
  const colon = /:(?=\s|$)/.exec(text.slice(from, from + longestKey));
  if (colon === null) return null;
  const end = from + colon.index;
  const start = text.lastIndexOf('\n', end) + 1;
  const indent = /^[ \t]*/.exec(text.slice(start, end))?.[0].length ?? 0;
  return { from: start + indent, to: end };
}

/** The parser gives a point; people see a stretch. */
function placeOf(code: string, [from, to]: [number, number], text: string): Range {
  if (code === 'TAB_AS_INDENT') {
    const tab = text.indexOf('\t', text.lastIndexOf('\n', from - 1) + 1);
    return tab === -1 ? { from, to } : { from: tab, to: tab + 1 };
  }
  if (code === 'BLOCK_AS_IMPLICIT_KEY') {
    const colon = /^[^\r\n]*?:(?=[ \t])/.exec(text.slice(from));
    if (colon !== null) {
      const word = colon[0].split(/\s/).at(-1) ?? '';
      const end = from + colon[0].length;
      return { from: end - word.length, to: end };
    }
  }
  const blank = /^[ \t]*/.exec(text.slice(from, from + 200))?.[0].length ?? 0;
  const rest = /^[^\s,\]}]+/.exec(text.slice(from + blank, from + blank + 200));
  const start = rest === null ? from : from + blank;
  return { from: start, to: Math.max(to, start + (rest?.[0].length ?? 1)) };
}

/** What follows on the same line is almost always the same mistake. */
function firstOnEachLine(lines: Lines, problems: readonly Problem[]): readonly Problem[] {
  const kept = new Map<number, Problem>();
  const others: Problem[] = [];
  for (const problem of problems) {
    if (problem.rule !== 'yaml' || !('range' in problem.at)) {
      others.push(problem);
      continue;
    }
    const line = lineAt(lines, problem.at.range.from);
    if (!kept.has(line)) kept.set(line, problem);
  }
  return [...kept.values(), ...others];
}

function toNode(node: ParsedNode, text: string, problems: Problem[]): Node {
  const range = { from: node.range[0], to: node.range[1] };
  if (isAlias(node)) return { kind: 'unreadable', range };
  if (isScalar(node)) return scalarNode(node, range, text);
  if (isMap(node)) {
    const byKey = entriesOf(node, text, problems);
    return { kind: 'map', entries: [...byKey.values()], byKey, range };
  }
  const items = node.items.map((item) => toNode(item, text, problems));
  return { kind: 'list', items, range };
}

function scalarNode(node: Scalar.Parsed, range: Range, source: string): Node {
  const text = String(node.value);
  const quoted = node.type === Scalar.QUOTE_DOUBLE || node.type === Scalar.QUOTE_SINGLE;
  const start = range.from + (quoted ? 1 : 0);
  const asWritten = source.startsWith(text, start) && (quoted || node.type === Scalar.PLAIN);
  return { kind: 'scalar', text, plain: node.type === Scalar.PLAIN, range, start: asWritten ? start : null };
}

function entriesOf(map: YAMLMap.Parsed, text: string, problems: Problem[]): ReadonlyMap<string, Entry> {
  const entries = new Map<string, Entry>();
  for (const pair of map.items as readonly WrittenPair[]) {
    const named = keyOf(pair, map.flow === true, text, problems);
    if (named === null) continue;
    const earlier = entries.get(named.key);
    if (earlier !== undefined) {
      problems.push({
        rule: 'yaml',
        at: { range: named.keyRange },
        message: `\`${named.key}\` stands here a second time. Remove one of the two.`,
        subject: named.key,
        loses: isMap(pair.value) || isSeq(pair.value),
        related: [{ at: { range: earlier.keyRange }, message: 'The first one.' }],
      });
      continue;
    }
    const value = pair.value === null ? nothingBehind(named.keyRange) : toNode(pair.value, text, problems);
    const hidden =
      value.kind === 'scalar' &&
      isEmpty(value) &&
      /^[ \t]*:[ \t]+#/.test(text.slice(named.keyRange.to, named.keyRange.to + 100));
    entries.set(named.key, { ...named, value: hidden ? { ...value, hidden } : value });
  }
  return entries;
}

/** What stands behind a key without a colon: `{ leak, kind: monitor }`. */
function nothingBehind({ to }: Range): Node {
  return { kind: 'scalar', text: '', plain: true, range: { from: to, to }, start: null };
}
