import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  operatingPoint,
  resistanceAt,
  voltageBetween,
  voltageWindow,
} from '../../server/src/circuit/circuit.ts';
import type {
  ConditionRanges,
  Drive,
  Edge,
  Element,
  Source,
  VoltageWindow,
} from '../../server/src/circuit/circuit.ts';
import type { Span } from '../../server/src/quantity/quantity.ts';
import { span } from './spans.ts';

function around(nominal: number, part: number): Span {
  return span(nominal * (1 - part), nominal, nominal * (1 + part));
}

function resistor(id: string, a: string, b: string, resistance: Span): Element {
  return { id, between: [a, b], part: { kind: 'stated', resistance } };
}

function battery(value: Span, plus = 'plus', minus = 'minus', id = 'battery'): Source {
  return { id, between: [plus, minus], kind: 'voltage', value };
}

const workshop: ConditionRanges = { ambient: span(10, 25, 40), entered: new Map() };

type Number = Extract<VoltageWindow, { kind: 'number' }>;

function windowOf(
  network: readonly Element[],
  sources: readonly Source[],
  [from, to]: readonly [string, string],
  ranges = workshop,
): Number {
  const window = voltageWindow(network, sources, from, to, ranges);
  if (window.kind !== 'number') throw new Error(window.kind);
  return window;
}

/** The voltage with one value for each element and source. */
function voltsAt(
  network: readonly Element[],
  sources: readonly Source[],
  [from, to]: readonly [string, string],
  ohms: readonly number[],
  values: readonly number[],
): number {
  const names = [...new Set([from, to, ...[...network, ...sources].flatMap(({ between }) => between)])];
  const numberOf = (name: string): number => names.indexOf(name);
  const edges = network.map(({ between: [a, b] }, index): Edge => ({
    a: numberOf(a),
    b: numberOf(b),
    ohms: ohms[index] ?? NaN,
  }));
  const drives = sources.map(({ between: [a, b], kind }, index): Drive => ({
    a: numberOf(a),
    b: numberOf(b),
    kind,
    value: values[index] ?? NaN,
  }));
  return voltageBetween(edges, drives, names.length, numberOf(from), numberOf(to));
}

/** Every choice of one end for each element and source. */
function cornerVolts(
  network: readonly Element[],
  sources: readonly Source[],
  probes: readonly [string, string],
  spanOf: (element: Element) => Span,
): number[] {
  const spans = [...network.map(spanOf), ...sources.map(({ value }) => value)];
  return Array.from({ length: 2 ** spans.length }, (_, corner) => {
    const values = spans.map(({ least, most }, index) => ((corner >> index) & 1 ? most : least));
    return voltsAt(network, sources, probes, values.slice(0, network.length), values.slice(network.length));
  });
}

describe('the window of a voltage', () => {
  test('of a divider has its ends at opposite corners', () => {
    const divider = [
      resistor('top', 'plus', 'middle', around(1000, 0.05)),
      resistor('bottom', 'middle', 'minus', around(1000, 0.05)),
    ];
    const { value, exact } = windowOf(divider, [battery(span(12))], ['middle', 'minus']);
    expect(exact).toBe(true);
    expect(value.least).toBeCloseTo((12 * 950) / 2000, 12);
    expect(value.nominal).toBeCloseTo(6, 12);
    expect(value.most).toBeCloseTo((12 * 1050) / 2000, 12);
  });

  test('takes the input of the meter as a part: 10 MΩ across a divider of 10 MΩ and 10 MΩ shows a third', () => {
    const loaded = [
      resistor('top', 'plus', 'middle', span(10e6)),
      resistor('bottom', 'middle', 'minus', span(10e6)),
      resistor('meter', 'middle', 'minus', span(10e6)),
    ];
    expect(windowOf(loaded, [battery(span(12))], ['middle', 'minus']).value.nominal).toBeCloseTo(4, 12);
  });

  test('of a source with a range follows it', () => {
    const load = [
      resistor('inside', 'cell', 'plus', span(0.1)),
      resistor('load', 'plus', 'minus', span(1, 2, 4)),
    ];
    const { value } = windowOf(load, [battery(span(11, 12.6, 14), 'cell')], ['plus', 'minus']);
    expect(value.least).toBeCloseTo(11 / 1.1, 12);
    expect(value.most).toBeCloseTo((14 * 4) / 4.1, 12);
  });

  test('says which sources are in conflict, and when nothing connects the nodes', () => {
    const load = [resistor('load', 'plus', 'minus', span(0, 2, 4))];
    expect(voltageWindow(load, [battery(span(12))], 'plus', 'minus', workshop)).toEqual({
      kind: 'conflict',
      sources: ['battery'],
    });
    const two = [battery(span(12)), battery(span(12), 'plus', 'minus', 'second')];
    expect(voltageWindow([], two, 'plus', 'minus', workshop)).toEqual({
      kind: 'conflict',
      sources: ['second'],
    });
    const lost: Source = { id: 'lost', between: ['plus', 'far'], kind: 'current', value: span(1) };
    expect(voltageWindow([], [battery(span(12)), lost], 'plus', 'minus', workshop)).toEqual({
      kind: 'conflict',
      sources: ['lost'],
    });
    expect(voltageWindow([], [battery(span(12))], 'plus', 'elsewhere', workshop)).toEqual({
      kind: 'floating',
    });
  });

  test('the signs at nominal are not enough in bridges of ± 5 %, and are not used', () => {
    const random = fc.sample(
      fc.tuple(...Array.from({ length: 5 }, () => fc.double({ min: 1, max: 10, noNaN: true }))),
      { numRuns: 300, seed: 46 },
    );
    let wrong = 0;
    for (const values of random) {
      const ends = [
        ['plus', 'a'],
        ['a', 'minus'],
        ['plus', 'b'],
        ['b', 'minus'],
        ['a', 'b'],
      ] as const;
      const bridge = ends.map(([a, b], index) =>
        resistor(`r${index}`, a, b, around(values[index] ?? 1, 0.05)),
      );
      const sources = [battery(span(1))];
      const spans = bridge.map(({ part }) => (part as { resistance: Span }).resistance);
      const nominal = spans.map((one) => one.nominal);
      const at = (ohms: readonly number[]): number => voltsAt(bridge, sources, ['a', 'b'], ohms, [1]);
      // Each resistor to the end that raises the voltage at nominal.
      const bySign = at(
        spans.map(({ least, most }, index) =>
          at(nominal.with(index, (nominal[index] ?? 1) * 1.0001)) > at(nominal) ? most : least,
        ),
      );
      const brute = Math.max(
        ...cornerVolts(bridge, sources, ['a', 'b'], ({ part }) => (part as { resistance: Span }).resistance),
      );
      const { value, exact } = windowOf(bridge, sources, ['a', 'b']);
      expect(exact).toBe(true);
      expect(Math.abs(value.most - brute)).toBeLessThanOrEqual(1e-12);
      if (bySign < brute - 1e-9) wrong += 1;
    }
    expect(wrong).toBeGreaterThan(10);
  });
});

const tolerance = fc.constantFrom(0, 0.01, 0.05, 0.2);
const resistance = fc
  .tuple(fc.double({ min: -1, max: 3, noNaN: true }), tolerance)
  .map(([power, part]) => around(10 ** power, part));
const nodeName = fc.constantFrom('plus', 'minus', 'a', 'b', 'c');
const resistors = fc
  .array(fc.tuple(nodeName, nodeName, resistance), { minLength: 4, maxLength: 9 })
  .map((rows) => rows.map(([a, b, value], index) => resistor(`r${index}`, a, b, value)));
const sourceLists: fc.Arbitrary<readonly Source[]> = fc
  .tuple(
    fc
      .tuple(fc.double({ min: 1, max: 24, noNaN: true }), tolerance)
      .map(([value, part]) => battery(around(value, part))),
    fc.option(
      fc
        .tuple(
          fc.double({ min: -5, max: 5, noNaN: true }),
          fc.constantFrom('voltage' as const, 'current' as const),
        )
        .map(([value, kind]): Source => ({
          id: 'second',
          between: ['a', 'b'],
          kind,
          value: span(Math.min(value, 1.1 * value), value, Math.max(value, 1.1 * value)),
        })),
    ),
  )
  .map(([first, second]) => (second === null ? [first] : [first, second]));
const probePairs = fc.constantFrom(['a', 'b'] as const, ['c', 'minus'] as const, ['plus', 'c'] as const);

test('brute force over all corners finds the same two ends, in networks and sources drawn at random', () => {
  fc.assert(
    fc.property(resistors, sourceLists, probePairs, (network, sources, probes) => {
      const window = voltageWindow(network, sources, probes[0], probes[1], workshop);
      fc.pre(window.kind === 'number');
      const corners = cornerVolts(
        network,
        sources,
        probes,
        ({ part }) => (part as { resistance: Span }).resistance,
      );
      // A source of 5 A through 1 kΩ is 5 kV.
      const scale = sources.reduce(
        (sum, { kind, value }) => sum + (kind === 'voltage' ? Math.abs(value.nominal) : 1000),
        0,
      );
      expect(window.exact).toBe(true);
      expect(Math.abs(window.value.least - Math.min(...corners))).toBeLessThanOrEqual(1e-12 * scale);
      expect(Math.abs(window.value.most - Math.max(...corners))).toBeLessThanOrEqual(1e-12 * scale);
    }),
    { numRuns: 300 },
  );
});

test('parts that share a temperature: a sweep never lies outside, and the exact windows are met by it', () => {
  const part = fc.oneof(
    fc.double({ min: 1, max: 100, noNaN: true }).map((ohms): Element['part'] => ({
      kind: 'copper-coil',
      resistance: around(ohms, 0.02),
      at: 20,
      temperature: 'ambient',
    })),
    fc
      .tuple(fc.double({ min: 1, max: 100, noNaN: true }), fc.double({ min: 200, max: 4000, noNaN: true }))
      .map(([r25, beta]): Element['part'] => ({
        kind: 'thermistor',
        curve: { r25: around(r25, 0.02), beta: span(beta) },
        tolerance: null,
        temperature: 'ambient',
      })),
    resistance.map((value): Element['part'] => ({ kind: 'stated', resistance: value })),
  );
  const networks = fc
    .array(fc.tuple(nodeName, nodeName, part), { minLength: 4, maxLength: 7 })
    .map((rows) =>
      rows.map(([a, b, model], index): Element => ({ id: `r${index}`, between: [a, b], part: model })),
    );
  let exactOnes = 0;
  fc.assert(
    fc.property(networks, probePairs, (network, probes) => {
      const sources = [battery(span(10))];
      const window = voltageWindow(network, sources, probes[0], probes[1], workshop);
      fc.pre(window.kind === 'number');
      const swept = Array.from({ length: 11 }, (_, step) => 10 + 3 * step).flatMap((ambient) =>
        cornerVolts(network, sources, probes, ({ part: model }) =>
          resistanceAt(model, { ambient, entered: new Map() }),
        ),
      );
      const { value, exact } = window;
      expect(Math.min(...swept)).toBeGreaterThanOrEqual(value.least - 1e-11);
      expect(Math.max(...swept)).toBeLessThanOrEqual(value.most + 1e-11);
      // What is told as exact lies at an end of the temperature, or where the search has closed in on it.
      if (exact) {
        exactOnes += 1;
        expect(value.most - Math.max(...swept)).toBeLessThanOrEqual(1e-2);
        expect(Math.min(...swept) - value.least).toBeLessThanOrEqual(1e-2);
      } else {
        expect(value.most - Math.max(...swept)).toBeLessThanOrEqual(0.2);
        expect(Math.min(...swept) - value.least).toBeLessThanOrEqual(0.2);
      }
    }),
    { numRuns: 60 },
  );
  expect(exactOnes).toBeGreaterThan(5);
});

test('with more than 12 undecided resistors the bound is an outer one and says so', () => {
  // A ladder of crossed rails, nearly balanced: no sign is certain.
  const rungs = 14;
  const network = Array.from({ length: rungs }, (_, index) => [
    resistor(`left-${index}`, `l${index}`, `l${index + 1}`, around(10, 0.3)),
    resistor(`right-${index}`, `r${index}`, `r${index + 1}`, around(10, 0.3)),
    resistor(`rung-${index}`, `l${index + 1}`, `r${index + 1}`, around(10, 0.3)),
  ]).flat();
  const ends = [
    resistor('to-left', 'plus', 'l0', span(1)),
    resistor('to-right', 'plus', 'r0', span(1)),
    resistor('from-left', `l${rungs}`, 'minus', span(1)),
    resistor('from-right', `r${rungs}`, 'minus', span(1)),
  ];
  const whole = [...ends, ...network];
  const { value, exact } = windowOf(whole, [battery(span(12))], ['l7', 'r7']);
  expect(exact).toBe(false);
  const draws = fc.sample(fc.array(fc.boolean(), { minLength: whole.length, maxLength: whole.length }), {
    numRuns: 2000,
    seed: 1,
  });
  for (const draw of draws) {
    const ohms = whole.map(
      ({ part }, index) => (part as { resistance: Span }).resistance[draw[index] === true ? 'most' : 'least'],
    );
    const volts = voltsAt(whole, [battery(span(12))], ['l7', 'r7'], ohms, [12]);
    expect(volts).toBeGreaterThanOrEqual(value.least);
    expect(volts).toBeLessThanOrEqual(value.most);
  }
  expect(value.most).toBeLessThanOrEqual(12);
});

describe('operating points', () => {
  test('Bird, Electrical Circuit Theory and Technology, problem 34.3: 52 V drive 4.0 A, C at 44 V and D at 50 V', () => {
    const bridge = [
      { a: 1, b: 2, ohms: 4 },
      { a: 1, b: 3, ohms: 1 },
      { a: 2, b: 3, ohms: 8 },
      { a: 2, b: 0, ohms: 16 },
      { a: 3, b: 0, ohms: 40 },
    ];
    const { volts, amperes, delivered } = operatingPoint(
      bridge,
      [{ a: 1, b: 0, kind: 'voltage', value: 52 }],
      4,
      0,
    );
    expect([...volts]).toEqual([0, 52, 44, 50].map((value) => expect.closeTo(value, 12) as number));
    expect(delivered[0]).toBeCloseTo(4, 12);
    expect(amperes[2]).toBeCloseTo(-0.75, 12);
  });

  test('pieces that hang in the air have no potential, and a source on them drives nothing', () => {
    const edges = [
      { a: 1, b: 0, ohms: 5 },
      { a: 2, b: 3, ohms: 5 },
    ];
    const drives = [
      { a: 1, b: 0, kind: 'voltage', value: 10 },
      { a: 3, b: 4, kind: 'voltage', value: 10 },
    ] as const;
    const { volts, amperes, delivered } = operatingPoint(edges, drives, 5, 0);
    expect([...volts]).toEqual([0, 10, NaN, NaN, NaN]);
    expect([...amperes]).toEqual([2, 0]);
    expect([...delivered]).toEqual([2, 0]);
  });

  test('batteries on one another without a way back lift what hangs on them', () => {
    const drives = [
      { a: 1, b: 0, kind: 'voltage', value: 12 },
      { a: 2, b: 1, kind: 'voltage', value: 1.5 },
    ] as const;
    const { volts } = operatingPoint([{ a: 2, b: 3, ohms: 7 }], drives, 4, 0);
    expect([...volts]).toEqual([0, 12, 13.5, 13.5]);
  });
});
