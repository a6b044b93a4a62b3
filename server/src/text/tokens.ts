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
  /** The tokens of all levels, in the order of the file. */
  readonly tokens: readonly Token[];
  readonly brackets: readonly Brackets[];
  /** Where collections are nested too deeply to be composed, or null. */
  readonly tooDeep: number | null;
}

/** More levels than anything that the format knows. The parser composes by recursion: many would exhaust the stack. */
const deepest = 32;

interface Below {
  readonly type?: string;
  readonly offset?: number;
  readonly source?: unknown;
  readonly start?: unknown;
  readonly end?: unknown;
}

/** Walks all tokens without recursion: brackets may be nested without end. */
export function walk(roots: readonly CST.Token[]): Walked {
  const tokens: Token[] = [];
  const brackets: Brackets[] = [];
  let tooDeep: number | null = null;
  const waiting: object[] = [...roots].reverse();
  const depths: number[] = roots.map(() => 0);
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    let depth = depths.pop() ?? 0;
    if (!Array.isArray(next)) {
      const token = next as Below;
      if (typeof token.source === 'string' && typeof token.offset === 'number') tokens.push(next as Token);
      const { type } = token;
      if (type === 'flow-collection') brackets.push(bracketsOf(next as CST.FlowCollection));
      if (type === 'flow-collection' || type === 'block-map' || type === 'block-seq') depth += 1;
      if (depth > deepest) tooDeep ??= token.offset ?? 0;
    }
    for (const value of Object.values(next) as unknown[]) {
      if (typeof value !== 'object' || value === null) continue;
      waiting.push(value);
      depths.push(depth);
    }
  }
  tokens.sort((a, b) => a.offset - b.offset);
  return { tokens, brackets, tooDeep };
}

function bracketsOf({ start, end }: CST.FlowCollection): Brackets {
  const closer = start.source === '{' ? 'flow-map-end' : 'flow-seq-end';
  return { opens: start, closed: end.some(({ type }) => type === closer) };
}
