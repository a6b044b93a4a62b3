import { expect, test } from 'vitest';
import { didYouMean, distance, nearest } from '../../server/src/text/nearest.ts';

// Worked examples of Levenshtein, and of Damerau for swapped neighbours; textbook values, from memory.
test.each([
  ['kitten', 'sitting', 3],
  ['saturday', 'sunday', 3],
  ['', 'abc', 3],
  ['steps', 'steps', 0],
  ['stesp', 'steps', 1],
])('%s and %s are %d mistakes apart', (a, b, mistakes) => {
  expect(distance(a, b)).toBe(mistakes);
  expect(distance(b, a)).toBe(mistakes);
});

test('the nearest known word, in whatever case', () => {
  expect(nearest('Unplug', ['plug', 'unplug', 'unlock'])).toBe('unplug');
  expect(nearest('read_codes', ['read', 'read-codes', 'clear-codes'])).toBe('read-codes');
  expect(nearest('banana', ['read', 'plug'])).toBeNull();
  expect(nearest('x'.repeat(10_000), ['read'])).toBeNull();
});

test('of words that are equally near none is preferred', () => {
  expect(didYouMean('K31', ['K30', 'K21', 'K10'])).toBe(' Did you mean `K30` or `K21`?');
});
