import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { Lexer } from 'yaml';
import { readProcedure } from '../../server/src/text/read-procedure.ts';
import { mostWords } from '../../server/src/text/tokens.ts';

/** As the parser counts them. */
function wordsIn(text: string): number {
  return [...new Lexer().lex(text)].length;
}

/** A list of just so many words. */
function listOf(words: number): string {
  const start = 'format: 1\nx: [';
  const end = ']\n';
  const rest = words - wordsIn(start + end);
  // An item is its mark, its text and its comma.
  const text = start + 'a,'.repeat(Math.floor(rest / 3)) + end + '\n'.repeat(rest % 3);
  expect(wordsIn(text)).toBe(words);
  return text;
}

function messages(text: string): readonly string[] {
  return readProcedure({ id: 'file', text }).findings.map(({ message }) => message);
}

test('as many words as are read: the rest of the file is checked', () => {
  const found = messages(listOf(mostWords));
  expect(found.length).toBeGreaterThan(0);
  expect(found.filter((one) => one.includes('words and signs'))).toEqual([]);
});

test('one word more: the limit is told, with what to do, and nothing else', () => {
  const found = messages(listOf(mostWords + 1));
  expect(found).toHaveLength(1);
  expect(found[0]).toContain(`more than ${mostWords} words`);
  expect(found[0]).toContain('make several procedures of it');
});

test('a file of thirty times the longest shipped procedure is read', () => {
  const shipped = readdirSync('procedures').map((name) =>
    wordsIn(readFileSync(`procedures/${name}`, 'utf8')),
  );
  expect(mostWords / Math.max(...shipped)).toBeGreaterThan(30);
});
