import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readProcedure } from '../../server/src/text/read-procedure.ts';
import { asYaml } from './as-yaml.ts';
import { corpus, findShared } from './corpus.ts';
import { mutantsOf } from './mutations.ts';
import { everyKey } from './every-key.ts';
import { unreadIn } from './unread.ts';
import type { Unread } from './unread.ts';

/*
 * A value that could not be read is null in the typed procedure, and nothing is computed of it. Where no error said so,
 * what depends on it would be silent without a reason.
 */

const mutants = fc.sample(mutantsOf(corpus), {
  numRuns: Number(process.env.OHMWRIGHT_SEEDS ?? 1000),
  seed: 71_400,
});

/** What people write where a value of another form is wanted, and what is next to nothing. */
const odd = [
  '; ~; " "; []; {}; x; true; 0; 1; -1; 1e999; |; [1 Ω]; { a: 1 Ω }; "1 Ω"; 1 Ω #x',
  '0 Ω; -1 Ω; 1 V; 5..1 Ω; 1 Ω ± 200 %; 1 °C; 60 °C; AWG 99; 12 V; above 2 Ω; 1 % + 1 %',
  'coolant; K1; stage; lamp; thermistor; rtd; E24; K1.end.1',
].flatMap((line) => line.split('; '));

/** All parts, loads and what else has a resistance, by themselves. */
const definitions = `format: 1\n${everyKey.slice(everyKey.indexOf('sources:'), everyKey.indexOf('assemblies:'))}`;

const changed = (pattern: RegExp, values: readonly string[]): readonly string[] =>
  [...definitions.matchAll(pattern)].flatMap(({ 0: written, index }) =>
    values.map((value) => definitions.slice(0, index) + value + definitions.slice(index + written.length)),
  );

const withoutOne = changed(/[a-z0-9-]+: [^,{}[\]\n]+(?:, )?/g, ['']);
const withOddValue = changed(/(?<=: )[^,{}[\]\n]+(?=[,\n }])/g, odd);

const found = (texts: readonly string[], id: string) =>
  texts.map((text) => {
    const { procedure, findings } = readProcedure({ id, text }, findShared);
    const errors = findings.filter(({ severity }) => severity === 'error');
    return { text, unread: unreadIn(procedure, asYaml(text, new Set())), errors };
  });

type Found = ReturnType<typeof found>[number];

test('the texts of the repository are read whole', () => {
  for (const { text, unread } of found(corpus, 'file.procedure.yaml')) expect(unread, text).toEqual([]);
  expect(found([definitions], 'file.parts.yaml')).toEqual([{ text: definitions, unread: [], errors: [] }]);
});

describe.each([
  ['one slip', mutants.map(({ text }) => text), 'file.procedure.yaml'],
  ['one value less', withoutOne, 'file.parts.yaml'],
  // A third of all: of each value another third of the odd ones.
  ['an odd value', withOddValue.filter((_, index) => index % 3 === 0), 'file.parts.yaml'],
])('with %s in a text', (_, texts, id) => {
  const all = found(texts, id);

  test('whatever could not be read comes with an error', () => {
    const silent = all.filter(({ unread, errors }) => unread.length > 0 && errors.length === 0);
    expect(silent.map(({ text, unread }) => ({ text, unread }))).toEqual([]);
    expect(all.filter(({ unread }) => unread.length > 0).length).toBeGreaterThan(texts.length / 4);
  });

  test('a resistance that could not be read comes with an error of its own, of a temperature or of the text', () => {
    const nulls = all.flatMap((one) => one.unread.filter(isResistance).map((unread) => ({ ...one, unread })));
    const silent = nulls.filter((one) => !isSaid(one));
    expect(silent.map(({ text, unread }) => ({ text, unread }))).toEqual([]);
    expect(nulls.length).toBeGreaterThan(20);
  });
});

function isResistance({ value }: Unread): boolean {
  return /(?:^|\/)resistance$|^contact$/.test(value);
}

/** Its own entry is at fault, or one of `entries` that gives its temperature, or the text around it is broken. */
function isSaid({ unread: { owner }, errors }: { readonly unread: Unread } & Pick<Found, 'errors'>): boolean {
  return errors.some(
    ({ at: { path }, rule }) =>
      rule === 'yaml' || path[0] === 'entries' || (path[0] === owner[0] && path[1] === owner[1]),
  );
}
