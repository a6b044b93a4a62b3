import type { CST } from 'yaml';
import type { Problem } from './problem.ts';

/** What only the tokens tell: what is refused, what a comment swallows, and what is not closed. */
export interface Marks {
  readonly problems: readonly Problem[];
  /** Where the first quote or bracket stands that is not closed. The parser's own errors behind it are left out. */
  readonly unclosed: number | null;
  /** Where the `---` of a second document stands. */
  readonly secondDocument: number | null;
}

/** More levels than anything that the format knows. The parser composes by recursion: deeper ones would exhaust the stack. */
const deepest = 32;

/** Where collections are nested too deeply to be composed, or null. Without recursion itself. */
export function tooDeep(tokens: readonly CST.Token[]): number | null {
  const waiting: { readonly token: unknown; readonly depth: number }[] = tokens.map((token) => ({
    token,
    depth: 0,
  }));
  while (waiting.length > 0) {
    const next = waiting.pop();
    if (next === undefined || typeof next.token !== 'object' || next.token === null) continue;
    const { type, offset } = next.token as Partial<Token>;
    const collects = type === 'flow-collection' || type === 'block-map' || type === 'block-seq';
    const depth = next.depth + (collects ? 1 : 0);
    if (depth > deepest) return offset ?? 0;
    for (const value of Object.values(next.token)) {
      if (typeof value === 'object') waiting.push({ token: value, depth });
    }
  }
  return null;
}

function startOf({ at }: Problem): number {
  return 'range' in at ? at.range.from : 0;
}

interface Token {
  readonly type: string;
  readonly offset: number;
  readonly source: string;
}

export function marksOf(text: string, tokens: readonly CST.Token[]): Marks {
  const found = flatten(tokens);
  const plainEnds = new Set(
    found.filter(({ type }) => type === 'scalar').map(({ offset, source }) => offset + source.length),
  );
  const unclosed = [...unclosedQuotes(found), ...unclosedBrackets(tokens)];
  const problems = found.flatMap((token) => refused(token) ?? swallowed(token, text, plainEnds) ?? []);
  return {
    problems: [...unclosed, ...problems],
    unclosed: unclosed.length === 0 ? null : Math.min(...unclosed.map(startOf)),
    secondDocument: secondDocument(tokens, found),
  };
}

/** All tokens of all levels, in the order of the file, without recursion: brackets may be nested without end. */
function flatten(tokens: readonly unknown[]): readonly Token[] {
  const found: Token[] = [];
  const waiting: unknown[] = [...tokens];
  while (waiting.length > 0) {
    const next = waiting.pop();
    if (typeof next !== 'object' || next === null) continue;
    if (Array.isArray(next)) {
      for (const one of next) waiting.push(one);
      continue;
    }
    const token = next as Partial<Token>;
    if (typeof token.source === 'string' && typeof token.offset === 'number') found.push(token as Token);
    for (const value of Object.values(next)) if (typeof value === 'object') waiting.push(value);
  }
  return found.sort((a, b) => a.offset - b.offset);
}

function refused({ type, offset, source }: Token): Problem | null {
  const at = { range: { from: offset, to: offset + source.trimEnd().length } };
  switch (type) {
    case 'anchor':
    case 'alias':
      return {
        rule: 'yaml',
        at,
        message: `\`${source}\` is an anchor or alias, and they are not used here. Write it out, or put text in quotes.`,
      };
    case 'tag':
      return {
        rule: 'yaml',
        at,
        message: `\`${source}\` is a tag, and they are not used here. Remove it, or put text in quotes.`,
      };
    case 'directive':
      return { rule: 'yaml', at, message: 'Lines that start with `%` are not used here. Remove it.' };
    default:
      return null;
  }
}

/**
 * A comment behind a value whose `#` is glued to what follows was probably meant as text: `title: Loop #2`. An ordinary
 * comment has a space behind its `#`.
 */
function swallowed(
  { type, offset, source }: Token,
  text: string,
  plainEnds: ReadonlySet<number>,
): Problem | null {
  if (type !== 'comment' || !/^#[^\s#!]/.test(source)) return null;
  const before = text.slice(0, offset).trimEnd().length;
  if (!plainEnds.has(before) || /[\r\n]/.test(text.slice(before, offset))) return null;
  return {
    rule: 'comment-swallows',
    at: { range: { from: offset, to: offset + source.length } },
    message:
      'Text after ` #` is a comment. Put the value in quotes if it belongs to it, or write a space after `#`.',
  };
}

function unclosedQuotes(tokens: readonly Token[]): readonly Problem[] {
  return tokens.flatMap(({ type, offset, source }): Problem[] => {
    const quote = type === 'double-quoted-scalar' ? '"' : type === 'single-quoted-scalar' ? "'" : null;
    if (quote === null || (source.length > 1 && closes(source, quote))) return [];
    const at = { range: { from: offset, to: offset + source.length } };
    return [
      { rule: 'yaml', at, misplaces: true, message: `The quote \`${quote}\` that opens here is not closed.` },
    ];
  });
}

function closes(source: string, quote: string): boolean {
  if (!source.endsWith(quote)) return false;
  const inside = source.slice(1, -1);
  return quote === "'" ? !inside.replaceAll("''", '').includes("'") : !/(?:^|[^\\])(?:\\\\)*\\$/.test(inside);
}

function unclosedBrackets(tokens: readonly unknown[]): readonly Problem[] {
  const problems: Problem[] = [];
  const waiting: unknown[] = [...tokens];
  while (waiting.length > 0) {
    const next = waiting.pop();
    if (typeof next !== 'object' || next === null) continue;
    const token = next as { type?: string; start?: Token; end?: readonly Token[] };
    if (token.type === 'flow-collection' && token.start !== undefined) {
      const { offset, source } = token.start;
      const closer = source === '{' ? 'flow-map-end' : 'flow-seq-end';
      if (!(token.end ?? []).some(({ type }) => type === closer)) {
        const at = { range: { from: offset, to: offset + 1 } };
        problems.push({
          rule: 'yaml',
          at,
          misplaces: true,
          message: `The bracket \`${source}\` that opens here is not closed.`,
        });
      }
    }
    for (const value of Object.values(next)) if (typeof value === 'object') waiting.push(value);
  }
  // The innermost first: it is the one that is kept where several open on one line.
  return problems.sort((a, b) =>
    'range' in a.at && 'range' in b.at ? b.at.range.from - a.at.range.from : 0,
  );
}

function secondDocument(tokens: readonly CST.Token[], found: readonly Token[]): number | null {
  const second = tokens.filter(({ type }) => type === 'document')[1];
  if (second === undefined || !('offset' in second)) return null;
  return (
    found.find(({ type, offset }) => type === 'doc-start' && offset >= second.offset)?.offset ?? second.offset
  );
}
