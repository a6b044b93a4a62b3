import { readFileSync, readdirSync } from 'node:fs';
import { template } from '../../server/src/editor/template.ts';
import { rules } from '../../server/src/rules/rules.ts';
import { chanceFrom } from '../oracle/chance.ts';
import { randomText } from '../oracle/random-procedure.ts';
import { parts, using } from './everything.ts';

/* The texts that inputs are made from. Run from the root of the project. */

const read = (path: string): string => readFileSync(path, 'utf8');

export const shipped: readonly string[] = readdirSync('procedures')
  .filter((name) => name.endsWith('.procedure.yaml'))
  .map((name) => read(`procedures/${name}`));

const small: readonly string[] = [
  ...rules.flatMap(({ examples }) => [examples.triggers.text, examples.passes.text]),
  template,
  using,
  parts,

  ...Array.from({ length: 40 }, (_, seed) => randomText(seed)),
];

/** Small texts many times for a large one: most of what can go wrong needs few lines, and they are quick. */
export function corpusText(seed: number): string {
  const chance = chanceFrom(seed);
  if (chance.happens(0.4)) return randomText(chance.whole(0, 1_000_000));
  return chance.happens(0.15) ? chance.pick(shipped) : chance.pick(small);
}

/** The lines, words and quantities that the corpus is made of. */
const all = [...shipped, ...small];
export const lines: readonly string[] = [...new Set(all.flatMap((text) => text.split('\n')))];
export const words: readonly string[] = [
  ...new Set(all.flatMap((text) => text.match(/[A-Za-z][A-Za-z0-9-]*(?:\.[a-z]+(?:\.\d+)?)?/g) ?? [])),
];
