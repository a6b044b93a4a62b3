import type { Problem } from '../problem.ts';
import type { Range } from '../../model/where.ts';

/*
 * JSON is YAML, so one reader reads both. But a file that is named as JSON is read by other programs too, and they take
 * nothing that only YAML has.
 */

/** The first thing that JSON does not have in a text that can be read as YAML; null: it is JSON. */
export function notJson(text: string): Problem | null {
  if (isJsonText(text)) return null;
  const { message, range } = firstStranger(text);
  return { rule: 'file', at: { range }, message: `This file is named as JSON. ${message}` };
}

function isJsonText(text: string): boolean {
  try {
    JSON.parse(text.replace(/^\uFEFF/, ''));
    return true;
  } catch {
    return false;
  }
}

interface Stranger {
  readonly message: string;
  readonly range: Range;
}

/** A text in double quotes, a sign, or a word up to the next sign. */
const piece = /"[^"\\]*(?:\\[^][^"\\]*)*"|[{}[\],:]|[^\s{}[\],:"]+/g;

const value = /^(?:true|false|null|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][-+]?\d+)?)$/;

function firstStranger(text: string): Stranger {
  let comma: Range | null = null;
  for (const { 0: found, index } of text.matchAll(piece)) {
    const range = { from: index, to: index + found.length };
    if (comma !== null && /^[\]}]/.test(found))
      return { message: 'Remove the comma: the last item has none behind it.', range: comma };
    comma = found === ',' ? range : null;
    if (/^["{}[\],:]/.test(found) || value.test(found)) continue;
    if (index === 0 && found === '\uFEFF') continue;
    if (found.startsWith('#')) return { message: 'Remove the comment: JSON has none.', range };
    return { message: 'Put text in double quotes.', range };
  }
  const message = 'Put all of it in braces, with a comma between two entries.';
  return { message, range: { from: 0, to: Math.min(1, text.length) } };
}
