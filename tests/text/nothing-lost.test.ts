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
    expect([...vocabulary].filter((key) => !written.has(key) && !written.has(key))).toEqual([]);
  });

  test('have no word that is not read', () => {
    const seen = new Map<string, number>();
    const lost = corpus.flatMap((text) => {
      // Texts have most of their places in common: two of each are looked at.
      const words = yamlOf(text).words.filter(({ place }) => {
        seen.set(place, (seen.get(place) ?? 0) + 1);
        return (seen.get(place) ?? 0) <= 2;
      });
      return words.length === 0 ? [] : unread(text, words);
    });
    console.log(seen.size);
    expect(lost).toEqual([]);
  });
});

describe('with one slip in it', () => {
  const mutants = fc.sample(mutantsOf(corpus), { numRuns: 3000, seed: 71_300 });
  const silent = mutants.filter(({ text }) => !isRefused(read(text)));
  console.log(silent.length);

  test('a text without an error has nothing that the format has no place for', () => {
    const unfit = silent.flatMap(({ text }) => yamlOf(text).unfit);
    const count = new Map<string, number>();
    for (const u of unfit) count.set(u, (count.get(u) ?? 0) + 1);
    console.log(count);
    expect(unfit).toEqual([]);
  });

  test('a text without an error has no word around the slip that is not read', () => {
    const lost = silent.flatMap(({ text, from, to }, at) => {
      const near = yamlOf(text).words.filter((word) => word.from < to && word.to > from);
      const some = near.filter((_, index) => (index + at) % 4 === 0);
      return unread(text, some);
    });
    expect(lost).toEqual([]);
  });
});
