import { kindOf, shorterText } from './kind.ts';

/* Failures that are there on purpose, so that it is known that failures are seen. */

export const planted = kindOf<string>({
  name: 'planted',
  share: 1,
  count: 5,
  draw: (_, seed) => `one\ntwo\nseed ${seed}\nthree x\nfour`,
  check: (text) => {
    if (text.includes('seed 1')) throw new Error('planted');
    while (text.includes('seed 2'));
    if (text.includes('seed 3') && text.includes('x')) return ['a planted fault'];
    return [];
  },
  smaller: shorterText,
  print: (text) => text,
  size: (text) => text.length,
  patience: 1,
});
