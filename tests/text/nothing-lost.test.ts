import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fileSchema } from '../../server/src/text/schema.ts';
import { readProcedure } from '../../server/src/text/read-procedure.ts';
import type { ReadFile } from '../../server/src/text/read-procedure.ts';
import { asYaml } from './as-yaml.ts';
import type { Word } from './as-yaml.ts';
import { corpus, findShared } from './corpus.ts';
import { mutantsOf } from './mutations.ts';

/*
 * Whatever the YAML library reads has an effect or a finding. A text without an error has nothing in it that the format
 * has no place for, and each word of it matters: with another word in its place the typed procedure or the findings
 * are others. Comments are no part of what the library reads.
 */

const read = (text: string): ReadFile => readProcedure({ id: 'file.procedure.yaml', text }, findShared);
const isRefused = ({ findings }: ReadFile): boolean => findings.some(({ severity }) => severity === 'error');

/** The keys of the format, from its published schema. */
const vocabulary: ReadonlySet<string> = new Set(keysIn(fileSchema));

function keysIn(schema: unknown): readonly string[] {
  if (typeof schema !== 'object' || schema === null) return [];
  return Object.entries(schema).flatMap(([word, below]) => [
    ...(word === 'properties' && typeof below === 'object' ? Object.keys(below as object) : []),
    ...keysIn(below),
  ]);
}

/** All that a reading came to, without the places: they move where a word has another length. */
function outcome({ procedure, findings, used }: ReadFile): string {
  const said = findings.map(({ rule, message }) => [rule, message]);
  return JSON.stringify([procedure, said, used.map(({ file }) => file.id)], (key, value: unknown) => {
    if (key === 'path' || key === 'place') return undefined;
    return value instanceof Map || value instanceof Set ? [...(value as Iterable<unknown>)] : value;
  });
}

/** The words of a text of which nothing is seen in what was read. */
function unread(text: string, words: readonly Word[]): readonly string[] {
  if (words.length === 0) return [];
  const whole = outcome(read(text));
  return words.flatMap(({ from, to, text: word, place }) => {
    const other = outcome(read(`${text.slice(0, from)}zq${text.slice(to)}`));
    return other === whole ? [`${place}: ${word}`] : [];
  });
}

const yamlOf = (text: string) => asYaml(text, vocabulary);

describe('the texts of the repository', () => {
  test('are read without an error, and have nothing that the format has no place for', () => {
    for (const text of corpus) {
      expect(isRefused(read(text)), text).toBe(false);
      expect(yamlOf(text).unfit, text).toEqual([]);
    }
  });

  test('have every key of the format', () => {
    const keys = corpus.flatMap((text) => yamlOf(text).words.map(({ place }) => place));
    const written = new Set(keys.flatMap((place) => /([^/]+): \d$/.exec(place)?.[1] ?? []));
    expect([...vocabulary].filter((key) => !written.has(key))).toEqual([]);
  });

  test('have no word that is not read', () => {
    const seen = new Set<string>();
    // Texts have most of their places in common: each is looked at in the shortest one.
    const shortest = [...corpus].sort((one, other) => one.length - other.length);
    const lost = shortest.flatMap((text) => {
      const words = yamlOf(text).words.filter(({ place }) => !seen.has(place) && seen.add(place).has(place));
      return unread(text, words);
    });
    expect(lost).toEqual([]);
  });
});

describe('with one slip in it', () => {
  const mutants = fc.sample(mutantsOf(corpus), {
    numRuns: Number(process.env.OHMWRIGHT_SEEDS ?? 1200),
    seed: 71_300,
  });
  const silent = mutants.filter(({ text }) => !isRefused(read(text)));

  test('a text is without an error often enough for what follows', () => {
    expect(silent.length).toBeGreaterThan(mutants.length / 10);
  });

  test('a text without an error has nothing that the format has no place for', () => {
    for (const { text } of silent) expect(yamlOf(text).unfit, text).toEqual([]);
  });

  test('a text without an error has no word around the slip that is not read', () => {
    for (const [at, { text, from, to }] of silent.entries()) {
      const near = yamlOf(text).words.filter((word) => word.from < to && word.to > from);
      // A fourth of them, another one in each text.
      const some = near.filter((_, index) => (index + at) % 4 === 0);
      expect(unread(text, some), text).toEqual([]);
    }
  });
});
