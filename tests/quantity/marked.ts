import { expect } from 'vitest';
import type { Parsed } from '../../server/src/quantity/quantity.ts';

/** Takes the marks « » out of a text and says what stood between them, in UTF-16 units. */
export function unmark(marked: string): {
  readonly text: string;
  readonly from: number;
  readonly to: number;
} {
  const from = marked.indexOf('«');
  const to = marked.indexOf('»') - 1;
  return { text: marked.replace(/[«»]/g, ''), from, to };
}

/** Expects that the marked characters, and no others, are complained about, in a sentence that says this. */
export function expectComplaint(
  marked: string,
  says: RegExp,
  parse: (text: string) => Parsed<unknown>,
): void {
  const { text, from, to } = unmark(marked);
  const result = parse(text);
  if (result.ok) throw new Error(`${text} was read as ${JSON.stringify(result.value)}`);
  expect(text.slice(result.from, result.to)).toBe(text.slice(from, to));
  expect([result.from, result.to]).toEqual([from, to]);
  expect(result.message).toMatch(says);
  expect(result.message).toMatch(/^\S.*\.$/);
}
