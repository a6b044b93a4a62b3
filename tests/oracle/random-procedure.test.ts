import { expect, test } from 'vitest';
import { verbs } from '../../server/src/format/words.ts';
import { readProcedure } from '../../server/src/text/read-procedure.ts';
import { ORACLE_RULES, WINDOW_RULES } from './coverage.ts';
import { oracle } from './oracle.ts';
import { typedProcedure } from './plain-procedure.ts';
import { windowRules } from './windows.ts';
import { randomProcedure, randomText } from './random-procedure.ts';

/* Random procedures are only worth something when each rule is both broken and kept by many of them. */

const seeds = Array.from({ length: 600 }, (_, at) => at + 1);

test('the same seed gives the same procedure, another seed another one', () => {
  expect(randomText(7)).toBe(randomText(7));
  expect(new Set(seeds.map(randomText)).size).toBe(seeds.length);
});

test('each rule is broken by some and kept by others, and some procedures are clean', () => {
  const broken = seeds.map(
    (seed) => new Set(oracle(typedProcedure(randomProcedure(seed))).map(({ rule }) => rule)),
  );
  // Nodes and measurements stand in the procedures with networks.
  const ofMeasuring = [
    'meter-across-live',
    'powered-measurement',
    'insulation-on-electronics',
    'monitor-in-the-way',
    'bar-in-the-way',
    'dangling-node',
  ];
  for (const rule of ORACLE_RULES.filter((one) => !ofMeasuring.includes(one))) {
    const count = broken.filter((rules) => rules.has(rule)).length;
    expect(count, rule).toBeGreaterThan(0);
    expect(count, rule).toBeLessThan(seeds.length * 0.75);
  }
  expect(broken.filter((rules) => rules.size === 0).length).toBeGreaterThan(seeds.length / 30);
});

test('each verb is written by some', () => {
  // These stand in the procedures with networks, and in those with routines.
  const elsewhere = ['measure', 'run'];
  const written = new Set(
    seeds.flatMap((seed) => typedProcedure(randomProcedure(seed)).steps.map(({ verb }) => verb)),
  );
  expect([...written].sort()).toEqual(verbs.filter((verb) => !elsewhere.includes(verb)).sort());
});

test('each rule of windows is broken by some', () => {
  const broken = seeds.flatMap((seed) =>
    windowRules(typedProcedure(randomProcedure(seed))).map(({ rule }) => rule),
  );
  // Sources stand in networks alone.
  const ofSources: readonly string[] = ['nothing-flows', 'window-needs-value'];
  for (const rule of WINDOW_RULES.filter((one) => !ofSources.includes(one)))
    expect(broken, rule).toContain(rule);
});

test('every target is a step of the file, and every id is defined', () => {
  for (const seed of seeds) {
    const procedure = typedProcedure(randomProcedure(seed));
    for (const step of procedure.steps) {
      expect(step.verb).not.toBe('broken');
      if (step.verb === 'go') expect(step.to).not.toBeNull();
      if (step.verb === 'read' || step.verb === 'inspect' || step.verb === 'read-codes')
        for (const outcome of step.outcomes ?? []) expect(outcome.target).not.toBeNull();
      if (step.verb === 'fit') expect(step.at.loop !== null || step.at.connector === 'K9').toBe(true);
    }
  }
});

/** Without places in the file, keys in one order, numbers to nine digits. */
function plainly(value: unknown): unknown {
  if (value instanceof Map) return [...(value as Map<unknown, unknown>)].map(plainly);
  if (Array.isArray(value)) return value.map(plainly);
  if (typeof value === 'number') return Number(value.toPrecision(9));
  if (typeof value !== 'object' || value === null) return value;
  const kept = Object.entries(value).filter(([key]) => key !== 'path' && key !== 'section');
  return Object.fromEntries(
    kept.sort(([a], [b]) => (a < b ? -1 : 1)).map(([key, each]) => [key, plainly(each)]),
  );
}

test('the text of each is read without a finding, as two readers that share nothing understand it', () => {
  for (const seed of seeds.slice(0, 200)) {
    const read = readProcedure({ id: 'random.procedure.yaml', text: randomText(seed) });
    expect(read.findings).toEqual([]);
    expect(plainly(read.procedure)).toEqual(plainly(typedProcedure(randomProcedure(seed))));
  }
});
