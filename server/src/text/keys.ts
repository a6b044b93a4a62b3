import { isScalar, Scalar } from 'yaml';
import type { CST, Pair, ParsedNode } from 'yaml';
import type { Problem } from './problem.ts';
import { aboutKeys } from './problems/yaml-errors.ts';
import type { Range } from '../model/where.ts';

/** A key and its value, with the tokens that they were made of. */
export type WrittenPair = Pair<ParsedNode, ParsedNode | null>;

export interface NamedKey {
  readonly key: string;
  readonly keyRange: Range;
}

/**
 * The key of a pair in a map. null: it has none that is a word, so the value is not in the tree either. Whatever is left
 * out has been reported.
 */
export function keyOf(
  pair: WrittenPair,
  inBrackets: boolean,
  text: string,
  problems: Problem[],
): NamedKey | null {
  const { key } = pair;
  const keyRange = { from: key.range[0], to: key.range[1] };
  const lost = (range: Range, message: string): null => {
    problems.push({ rule: 'yaml', at: { range }, message, loses: true });
    return null;
  };
  if (!isScalar(key)) return lost(keyRange, aboutKeys.noWord);
  const mark = markOf(pair);
  if (keyRange.from === keyRange.to) {
    const from = mark?.offset ?? keyRange.from;
    return lost({ from, to: from + 1 }, mark?.source === '?' ? aboutKeys.behindMark : aboutKeys.beforeColon);
  }
  const lines = text.slice(keyRange.from, keyRange.to).split(/\r?\n/);
  const own = lines.at(-1)?.trimStart();
  if (key.type !== Scalar.PLAIN || lines.length === 1 || own === undefined)
    return { key: String(key.value), keyRange };
  // Lines without a colon run together with the key below them. Outside of brackets the parser says so itself.
  const first = { from: keyRange.from, to: keyRange.from + (lines[0]?.length ?? 0) };
  if (mark?.source === '?') lost(first, aboutKeys.overLines);
  else if (inBrackets) lost(first, aboutKeys.runTogether);
  return { key: own, keyRange: { from: keyRange.to - own.length, to: keyRange.to } };
}

/** What makes a key of what has no name: the `?` before it, or the `:` behind it. */
function markOf({ srcToken }: WrittenPair): CST.SourceToken | undefined {
  const isMark = ({ type }: CST.SourceToken): boolean =>
    type === 'explicit-key-ind' || type === 'map-value-ind';
  return srcToken?.start.find(isMark) ?? srcToken?.sep?.find(isMark);
}
