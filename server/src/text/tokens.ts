import { Lexer, Parser } from 'yaml';
import type { CST } from 'yaml';

export interface Token {
  readonly type: string;
  readonly offset: number;
  readonly source: string;
}

/** A list or map in brackets. */
export interface Brackets {
  readonly opens: Token;
  readonly closed: boolean;
}

export interface Walked {
  /** The tokens of all levels that say something, in the order of the file: blanks and line breaks are left out. */
  readonly tokens: readonly Token[];
  readonly brackets: readonly Brackets[];
  /** Where collections are nested too deeply to be composed, or null. */
  readonly tooDeep: number | null;
  /** What stands where nothing can stand: how often, and where first. */
  readonly errors: { readonly count: number; readonly first: number };
}

/** More levels than anything that the format knows. The parser composes by recursion: many would exhaust the stack. */
const deepest = 32;

/**
 * The longest shipped procedure has 2,500. Every answer about a file with so many takes about a second; one with more has
 * thousands of steps, and nobody works through them.
 */
export const mostWords = 100_000;

/** Nobody goes through more of them, and each takes longer than a line that can be read. */
export const mostErrors = 1000;

/** The tokens of a text; null: it has too many. */
export function tokensOf(text: string): readonly CST.Token[] | null {
  const parser = new Parser();
  const tokens: CST.Token[] = [];
  let words = 0;
  for (const word of new Lexer().lex(text)) {
    words += 1;
    if (words > mostWords) return null;
    for (const token of parser.next(word)) tokens.push(token);
  }
  for (const token of parser.end()) tokens.push(token);
  return tokens;
}

interface Below {
  readonly type?: string;
  readonly offset?: number;
  readonly source?: unknown;
  readonly start?: unknown;
  readonly items?: unknown;
  readonly props?: unknown;
  readonly key?: unknown;
  readonly sep?: unknown;
  readonly value?: unknown;
  readonly end?: unknown;
}

/** Between other tokens, in great number, and of no meaning here. */
const silent: ReadonlySet<string> = new Set(['space', 'newline', 'map-value-ind', 'seq-item-ind', 'comma']);

/** Walks all tokens without recursion: brackets may be nested without end. What waits is taken from the back. */
export function walk(roots: readonly CST.Token[]): Walked {
  const tokens: Token[] = [];
  const brackets: Brackets[] = [];
  let tooDeep: number | null = null;
  let inOrder = true;
  const errors = { count: 0, first: 0 };
  const waiting: object[] = [...roots].reverse();
  const depths: number[] = roots.map(() => 0);
  const wait = (below: unknown, depth: number): void => {
    if (typeof below !== 'object' || below === null || (Array.isArray(below) && below.length === 0)) return;
    waiting.push(below);
    depths.push(depth);
  };
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    let depth = depths.pop() ?? 0;
    if (Array.isArray(next)) {
      for (let at = next.length - 1; at >= 0; at--) wait((next as unknown[])[at], depth);
      continue;
    }
    const token = next as Below;
    const { type = '' } = token;
    if (silent.has(type)) continue;
    if (type === 'error') {
      if (errors.count === 0) errors.first = token.offset ?? 0;
      errors.count += 1;
    }
    if (typeof token.source === 'string' && typeof token.offset === 'number') {
      inOrder &&= token.offset >= (tokens.at(-1)?.offset ?? 0);
      tokens.push(next as Token);
    }
    if (type === 'flow-collection') brackets.push(bracketsOf(next as CST.FlowCollection));
    if (type === 'flow-collection' || type === 'block-map' || type === 'block-seq') depth += 1;
    if (depth > deepest) tooDeep ??= token.offset ?? 0;
    wait(token.end, depth);
    wait(token.value, depth);
    wait(token.sep, depth);
    wait(token.key, depth);
    wait(token.props, depth);
    wait(token.items, depth);
    wait(token.start, depth);
  }
  if (!inOrder) tokens.sort((a, b) => a.offset - b.offset);
  return { tokens, brackets, tooDeep, errors };
}

function bracketsOf({ start, end }: CST.FlowCollection): Brackets {
  const closer = start.source === '{' ? 'flow-map-end' : 'flow-seq-end';
  return { opens: start, closed: end.some(({ type }) => type === closer) };
}
