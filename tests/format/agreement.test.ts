import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { definitions } from '../../server/src/format/definitions.ts';
import type { DefinitionName } from '../../server/src/format/definitions.ts';
import { procedure } from '../../server/src/format/procedure.ts';
import { validators } from '../../server/src/text/generated/validators.js';
import { good } from '../text/good.ts';

/*
 * One definition, three readers: zod, the published JSON Schema under ajv, and the validators compiled ahead. They must
 * accept the same files, or an editor with the schema would say otherwise than the command line.
 */

const file = new URL('../../schemas/procedure.schema.json', import.meta.url);
const schema = JSON.parse(readFileSync(file, 'utf8')) as object;
const accepts = new Ajv2020({ strict: false }).compile(schema);

const wide = `
format: 1
title: All of it
purpose: Every key once
requires: { information: [handbook] }
sources:
  b: { kind: battery, voltage: 12 V, resistance: 5..20 mΩ, feeds: m }
  hv: { kind: high-voltage, voltage: 400 V, resistance: 0.1 Ω, feeds: [hs], isolated-by: S1, wait: 5 min, safe-below: 50 V, reserve: { capacitance: 1 mF, charged-to: 400 V, bleed: 100 kΩ } }
  sv: { kind: regulated, voltage: 5 V ± 2 %, resistance: 0 Ω, from: b, needs: ignition-on }
entries: { t: { ask: There, range: 15..90 °C, accuracy: 1 °C } }
instruments:
  m: { kind: monitor, range: 0..10 Ω, accuracy: 1 %, resolution: 0.1 Ω }
  h1: { kind: multimeter, leads: 0.1 Ω, resistance: { range: 0..400 Ω, accuracy: 1 %, resolution: 0.1 Ω, test-current: 1 mA, further: [{ range: 0..4 kΩ, accuracy: 1 %, resolution: 1 Ω }] } }
  h3: { kind: multimeter, insulation: { range: 0..2 GΩ, accuracy: 3 %, resolution: 10 kΩ, discharge: 10 s }, current: { range: 0..10 A, accuracy: 1 %, resolution: 1 mA, burden: 20 mΩ }, clamp: { range: 0..60 A, accuracy: 2 %, resolution: 10 mA } }
  h2: { kind: multimeter, zeroed: true, voltage: { range: 0..600 V, accuracy: 1 %, resolution: 1 V, input: 10 MΩ } }
loads: { r: { kind: resistor, resistance: 2 Ω, opens-shorting-bar: true }, l: { kind: lamp, resistance: 3 Ω }, b: { kind: lamp, rated: 13.5 V 5 W } }
parts:
  c: { kind: cable, resistance: 50 mΩ }
  s: { kind: series, resistance: 50 mΩ }
  e: { kind: resistor, resistance: 2 Ω }
  f: { kind: lamp, resistance: 2 Ω, hot: 20 Ω }
  g: { kind: lamp, rated: 12 V 21 W }
  fr: { kind: fuse, resistance: 8 mΩ }
  ft: { kind: fuse, rated: 10 A }
  h: { kind: heater, resistance: 4 Ω, hot: same }
  h2: { kind: heater, rated: 12 V 120 W }
  st: { kind: consumer, draws: 7 mA ± 1 mA, always: true }
  pt: { kind: potentiometer, track: 1 kΩ ± 20 %, wiper: 10..90 %, withstands: 500 V }
  i: { kind: switch, resistance: 20 mΩ, withstands: 500 V }
  j: { kind: coil, resistance: 12 Ω, at: 23 °C, temperature: t }
  k: { kind: thermistor, r25: 10 kΩ, beta: 3380 K, tolerance: 3 %, temperature: 15..20 °C }
  n: { kind: thermistor, coefficients: [1.129148e-3, 2.34125e-4, 8.76741e-8], tolerance: 1 °C }
  o: { kind: rtd, r0: 100 Ω, class: AA }
  p: { kind: resistor, resistance: 2.2 kΩ, series: E24 }
  q: { kind: cable, wire: AWG 20, length: 1 m, temperature: t }
  hs: { kind: hv-section, voltage: 400 V, resistance: 100 kΩ, live: true }
connectors:
  K1: { contact: 5 mΩ, carries: hv, shorting-bar: { side: monitor, closes: unplugged, resistance: 0.3 Ω, pins: [1, A2] } }
  S1: { contact: 5 mΩ, carries: [hv] }
  K2: { contact: 5 mΩ, sides: [a, b] }
network: [{ part: pt, between: [na, nb, ground] }, { part: k, between: [na, K2.a.1] }, { connector: K2, pin: 1, between: [nb, nc] }, { source: sv, between: [na, ground] }]
loops: { x: { path: [m, K1, c, s, e], pins: { K1: ["01", 2] } } }
assemblies: { a: [e, K1], b: e }
waivers: [{ rule: repeats, reason: why }, { rule: repeats, step: a, routine: r, reason: why }]
routines:
  r: { steps: [{ go: next-one }] }
  q: { needs: { w: side, l: load }, steps: [{ fit: l, at: w }] }
uses: [x.parts.yaml]
steps:
  - section: All verbs
  - run: q
    given: { w: K1.end, l: r }
  - ignition: cycle
    see: there
  - unlock: K1
    notice: o
    caution: c
    danger: d
    why: w
  - plug: K1
  - measure: voltage
    across: [na, ground]
    with: h2
    expect: below 3 V
    windows: { other: 4..5 V }
    outcomes: { within: next, other: next-one, else: next }
  - measure: insulation
    across: [na, ground]
    at-voltage: 500 V
    with: h3
    discharged: true
    expect: above 1 MΩ
  - measure: current
    around: k
    with: h3
    drawing: [st]
    expect: below 1 A
  - measure: current
    in: [K2.a.1, K2.b.1]
    with: h3
    windows: { other: 4..5 A }
    outcomes: { within: next, other: next-one, else: next }
  - wiggle: [k, K1.end]
    watch: l
    for: 30 s
    expect: below 3 Ω
    windows: { other: 4..5 Ω }
    outcomes: { within: next, other: next-one, leak: next, open: next, below: next, above: next }
  - wiggle: K1
    for: 2 min
    quantity: voltage
    across: [na, ground]
    with: h2
    drawing: st
    expect: below 3 V
    windows: { other: 4..5 V }
    outcomes: { outside: next, other: next-one, else: next }
  - prove-dead: hv
    at: K1.end
    with: h2
    known: b
  - prove-dead: hv
    at: [K1.end.1, S1.monitor.2]
    with: h2
    known: b
    outcomes: { dead: next, live: a }
  - fit: r
    at: K1.end
    loop: x
  - move: r
    to: K1.monitor
  - remove: r
  - read: [x]
    outcomes: { x: { leak: next, outside: a }, else: next }
  - read: x
    id: a
    expect: open
    outcomes: { above: next, open: a }
  - read-codes: m
    outcomes: { none: next, stored: a, present: a }
  - clear-codes: m
  - inspect: look
    at: K1.end.1
    of: [K1.end, b]
  - inspect: look
    at: nothing
    of: e
  - do: something
    at: [K1, e, K1.end]
  - replace: [e, K1]
  - conclude: none
  - conclude: [e, K1]
  - go: a
  - stop: done
    leaves: codes
`;

/** A parts file: the same without steps. */
function partsOf(text: string): unknown {
  const { format, uses, sources, parts, routines } = parse(text) as Record<string, unknown>;
  return { format, uses, sources, parts, routines };
}

const corpus: readonly unknown[] = [parse(good), parse(wide)];

test('the corpus is accepted by all', () => {
  for (const one of corpus) {
    expect(accepts(one), JSON.stringify(accepts.errors)).toBe(true);
    expect(procedure.safeParse(one).success).toBe(true);
  }
});

type Path = readonly (string | number)[];

function pathsIn(value: unknown, path: Path = []): readonly Path[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, below]) => {
    const at = [...path, Array.isArray(value) ? Number(key) : key];
    return [at, ...pathsIn(below, at)];
  });
}

const value = fc.oneof(
  fc.constantFrom<unknown>(
    ...[
      '',
      ' ',
      'x',
      'open',
      'none',
      'next',
      'codes',
      'K1.end',
      'K1.end.1',
      'K1.mid',
      '1K',
      'on',
      'end',
      'lamp',
      'cable',
    ],
    ...[
      0,
      1,
      -1,
      1.5,
      2,
      true,
      false,
      null,
      [],
      {},
      ['x'],
      ['x', 'y'],
      [1, 2],
      [1.5, 'a'],
      ['a', 'b', 'c'],
      ['x', 'x'],
      ['K1', 'K1'],
      [null],
    ],
    ...[{ x: 'next' }, { within: 'next' }, { x: { within: 'next' } }, { kind: 'lamp', resistance: '2 Ω' }],
  ),
  fc.jsonValue({ maxDepth: 2 }),
);
const key = fc.oneof(
  fc.constantFrom('id', 'note', 'kind', 'open', 'else', 'resistance', 'length', 'at', 'plug'),
  fc.string(),
);

interface Change {
  readonly at: number;
  readonly how: 'replace' | 'delete' | 'rename' | 'add';
  readonly key: string;
  readonly value: unknown;
}

const change: fc.Arbitrary<Change> = fc.record({
  at: fc.nat(),
  how: fc.constantFrom('replace', 'delete', 'rename', 'add'),
  key: key.filter((word) => word !== '__proto__'),
  value,
});

function apply(root: unknown, { at, how, key: word, value: other }: Change): unknown {
  const copy = structuredClone(root);
  const paths = pathsIn(copy);
  const path = paths[at % Math.max(1, paths.length)];
  if (path === undefined) return copy;
  let parent = copy as Record<string | number, unknown>;
  for (const step of path.slice(0, -1)) parent = parent[step] as Record<string | number, unknown>;
  const last = path.at(-1) ?? '';
  const own = parent[last];
  if (how === 'replace') parent[last] = structuredClone(other);
  else if (how === 'add') parent[Array.isArray(parent) ? parent.length : word] = structuredClone(other);
  else if (Array.isArray(parent)) parent.splice(Number(last), 1);
  else {
    Reflect.deleteProperty(parent, last);
    if (how === 'rename') parent[word] = own;
  }
  return copy;
}

test('the published schema accepts exactly the files that the definitions accept', () => {
  let refused = 0;
  let accepted = 0;
  fc.assert(
    fc.property(
      fc.constantFrom(...corpus),
      fc.array(change, { minLength: 1, maxLength: 3 }),
      (start, changes) => {
        const mutant = changes.reduce(apply, start);
        const byZod = procedure.safeParse(mutant).success;
        if (byZod) accepted += 1;
        else refused += 1;
        expect(accepts(mutant), JSON.stringify(accepts.errors)).toBe(byZod);
      },
    ),
    { numRuns: 4000, seed: 71_003 },
  );
  // Both kinds of file have been seen, or the property would hold for nothing.
  expect(refused).toBeGreaterThan(500);
  expect(accepted).toBeGreaterThan(100);
});

test('each compiled validator accepts exactly what its definition accepts', () => {
  const entries = [...corpus, partsOf(wide)].flatMap((one) => {
    const found = one as Record<string, Record<string, unknown> | unknown[]>;
    return [
      found,
      ...Object.values(found).flatMap((section) =>
        typeof section === 'object' ? Object.values(section) : [],
      ),
    ];
  });
  const names = Object.keys(definitions) as DefinitionName[];
  const seen = new Set<DefinitionName>();
  fc.assert(
    fc.property(fc.constantFrom(...entries), fc.array(change, { maxLength: 2 }), (start, changes) => {
      const mutant = changes.reduce<unknown>(apply, start);
      for (const name of names) {
        const byZod = definitions[name].safeParse(mutant).success;
        if (byZod) seen.add(name);
        expect(validators[name](mutant), name).toBe(byZod);
      }
    }),
    { numRuns: 3000, seed: 71_004 },
  );
  expect([...seen].sort()).toEqual([...names].sort());
});
