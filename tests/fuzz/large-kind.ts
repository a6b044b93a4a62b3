import { Lexer } from 'yaml';
import { mostWords } from '../../server/src/text/tokens.ts';
import { chanceFrom } from '../oracle/chance.ts';
import { good } from './large-pieces.ts';
import type { LargeText } from './large-pieces.ts';
import { fullSize, largeTexts } from './large-texts.ts';
import { kindOf } from './kind.ts';
import { parsingOf } from './pace.ts';
import { quickAnswer } from './quick-answer.ts';

/** The order is mixed, so that a few of them are a fair sample. */
const chance = chanceFrom(1);
const mixed = largeTexts.map((one) => ({ one, at: chance.draw() })).sort((a, b) => a.at - b.at);

/** Every text as large as one is that is still read, and then as large as a file may be. */
function made(seed: number): { readonly name: string; readonly text: string } {
  const one = mixed[Math.floor(seed / 2) % mixed.length]?.one ?? good;
  return { name: one.name, text: seed % 2 === 0 ? asLargeAsRead(one) : one.make(fullSize) };
}

function asLargeAsRead({ make }: LargeText): string {
  const sample = make(fullSize / 32);
  let size = Math.min(fullSize, Math.floor((sample.length * mostWords) / Math.max(1, wordsIn(sample))));
  for (;;) {
    const text = make(size);
    const words = wordsIn(text);
    if (words <= mostWords) return text;
    size = Math.floor((size * mostWords * 0.999) / words);
  }
}

function wordsIn(text: string): number {
  let words = 0;
  const lexer = new Lexer().lex(text);
  while (lexer.next().done !== true) words += 1;
  return words;
}

/**
 * So many times what it takes to parse the largest good text that is read: 0.17 s of a quiet machine, on which what takes
 * longest of all takes ten times that. Where all processors are busy the parts of a text are slowed unevenly.
 */
const patience = 14;

const largestGood = once(() => asLargeAsRead(good));
const parsing = once(() => parsingOf(largestGood(), 3));

export const large = kindOf<{ readonly name: string; readonly text: string }>({
  name: 'large',
  share: 0.2,
  count: 2 * mixed.length,
  draw: (_, seed) => made(seed),
  check: ({ text }, draws) => quickAnswer(text, draws, patience, parsing()),
  smaller: () => [],
  print: ({ name, text }) => `${name}, ${text.length} characters\n=== begins\n${text.slice(0, 1000)}`,
  size: () => largestGood().length,
  // Of all answers together.
  patience: 30,
});

function once<T>(compute: () => T): () => T {
  let value: { readonly of: T } | null = null;
  return () => (value ??= { of: compute() }).of;
}
