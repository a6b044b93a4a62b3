import { guessOf, noGuess } from './nearest.ts';
import type { Guess } from './nearest.ts';

/** Guesses at what was meant by a word of a file, among the words that are known there. */
export type Guesser = (word: string, known: () => readonly string[]) => Guess;

/**
 * So many words are looked at for one file. After that no guess is offered, and a finding says only that nothing is named
 * so: to compare all unknown words with all known ones takes a time that grows with the square of the file. A thousand
 * unknown names among a thousand known ones still have theirs.
 */
const mostLooks = 1_000_000;

export function guesser(): Guesser {
  let left = mostLooks;
  return (word, known) => {
    if (left <= 0) return noGuess;
    const words = known();
    left -= words.length + 1;
    return guessOf(word, words);
  };
}
