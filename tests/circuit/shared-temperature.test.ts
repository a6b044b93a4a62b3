import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  networkWindow,
  resistanceAt,
  resistanceBetween,
  resistanceWithin,
} from '../../server/src/circuit/circuit.ts';
import type { ConditionRanges, Element, PartModel } from '../../server/src/circuit/circuit.ts';
import type { Span } from '../../server/src/quantity/quantity.ts';
import { span } from './spans.ts';

const workshop: ConditionRanges = { ambient: span(10, 25, 40), entered: new Map() };

function coil(ohms: Span, temperature: 'ambient' | { readonly entry: string } = 'ambient'): PartModel {
  return { kind: 'copper-coil', resistance: ohms, at: 20, temperature };
}

function sensor(
  r25: Span,
  beta: Span,
  tolerance: { readonly kelvin: number } | { readonly fraction: number } | null = null,
  temperature: 'ambient' | { readonly entry: string } = 'ambient',
): PartModel {
  return { kind: 'thermistor', curve: { r25, beta }, tolerance, temperature };
}

function windowOf(network: readonly Element[], ranges = workshop): Span {
  const { value } = networkWindow(network, 'from', 'to', ranges);
  if (value === 'open') throw new Error('open');
  return value;
}

function beside(...parts: readonly PartModel[]): readonly Element[] {
  return parts.map((part, index) => ({ id: `part-${index}`, between: ['from', 'to'], part }));
}

/** The resistance at exact temperatures with every part at one end, by its own list of edges. */
function at(network: readonly Element[], ambient: number, entered: number, end: 'least' | 'most'): number {
  const names = ['from', 'to', ...new Set(network.flatMap(({ between }) => between))];
  const conditions = { ambient, entered: new Map([['coolant', entered]]) };
  const edges = network.map(({ between: [a, b], part }) => ({
    a: names.indexOf(a),
    b: names.indexOf(b),
    ohms: resistanceAt(part, conditions)[end],
  }));
  return resistanceBetween(edges, names.length, 0, 1);
}

describe('parts that share a temperature and go both ways with it', () => {
  test('copper beside an NTC, both 10 Ω at 25 °C: the most lies inside the range, where both slopes are one', () => {
    // By hand: 1/R = 1/c + 1/n is least where c'/c² = -n'/n². On a fine sweep of the two laws, written out here.
    const copper = (celsius: number): number => (10 * (234.5 + celsius)) / (234.5 + 20);
    const ntc = (celsius: number): number => 10 * Math.exp(350 * (1 / (celsius + 273.15) - 1 / 298.15));
    const both = Array.from({ length: 30_001 }, (_, step) => {
      const celsius = 10 + step / 1000;
      return (copper(celsius) * ntc(celsius)) / (copper(celsius) + ntc(celsius));
    });
    const { least, most } = windowOf(beside(coil(span(10)), sensor(span(10), span(350))));
    expect(most / Math.max(...both)).toBeCloseTo(1, 9);
    expect(least / Math.min(...both)).toBeCloseTo(1, 9);
    expect(both.indexOf(Math.max(...both))).toBeGreaterThan(100);
    expect(both.indexOf(Math.max(...both))).toBeLessThan(29_900);
  });

  test('are many times narrower together than each in its own box', () => {
    const network = beside(coil(span(10)), sensor(span(10), span(350)));
    const { least, most } = windowOf(network);
    const [low, high] = (['least', 'most'] as const).map((end) => {
      const [c = NaN, n = NaN] = network.map(({ part }) => resistanceWithin(part, workshop)[end]);
      return (c * n) / (c + n);
    });
    expect(((high ?? NaN) - (low ?? NaN)) / (most - least)).toBeGreaterThan(10);
  });

  test('in series are least inside the range', () => {
    const series: readonly Element[] = [
      { id: 'coil', between: ['from', 'a'], part: coil(span(100)) },
      { id: 'sensor', between: ['a', 'to'], part: sensor(span(30), span(1200)) },
    ];
    const sum = (celsius: number): number =>
      (100 * (234.5 + celsius)) / 254.5 + 30 * Math.exp(1200 * (1 / (celsius + 273.15) - 1 / 298.15));
    const swept = Array.from({ length: 30_001 }, (_, step) => sum(10 + step / 1000));
    const { least, most } = windowOf(series);
    expect(least / Math.min(...swept)).toBeCloseTo(1, 9);
    expect(most / Math.max(...swept)).toBeCloseTo(1, 9);
    expect(swept.indexOf(Math.min(...swept))).toBeGreaterThan(100);
    expect(swept.indexOf(Math.min(...swept))).toBeLessThan(29_900);
  });

  test('on different temperatures are what they are in their boxes', () => {
    const network = beside(coil(span(10)), sensor(span(10), span(300), null, { entry: 'coolant' }));
    const ranges = { ambient: span(10, 25, 40), entered: new Map([['coolant', span(15, 50, 90)]]) };
    const { least, most } = windowOf(network, ranges);
    const [low, high] = (['least', 'most'] as const).map((end) => {
      const [c = NaN, n = NaN] = network.map(({ part }) => resistanceWithin(part, ranges)[end]);
      return (c * n) / (c + n);
    });
    expect([least, most]).toEqual([expect.closeTo(low ?? NaN, 12), expect.closeTo(high ?? NaN, 12)]);
  });

  test('are an outer bound of the same window where the search ends early, and said to be one', () => {
    const network = beside(coil(span(10)), sensor(span(10), span(350)));
    const whole = windowOf(network);
    expect(networkWindow(network, 'from', 'to', workshop).exact).toBe(true);
    let earlier = Infinity;
    for (const halvings of [0, 2, 4]) {
      const { value, exact } = networkWindow(network, 'from', 'to', workshop, halvings);
      if (value === 'open') throw new Error('open');
      expect(exact).toBe(false);
      expect(value.least).toBeLessThanOrEqual(whole.least);
      expect(value.most).toBeGreaterThan(whole.most);
      expect(value.most).toBeLessThan(earlier);
      earlier = value.most;
    }
  });

  test('that have a bend of unknown shape and their extreme inside the range are not met by the search', () => {
    const steep: PartModel = {
      kind: 'thermistor',
      curve: { coefficients: [2.861e-3, 1e-6, 5e-6] },
      tolerance: null,
      temperature: 'ambient',
    };
    const series: readonly Element[] = [
      { id: 'coil', between: ['from', 'a'], part: coil(span(900)) },
      { id: 'sensor', between: ['a', 'to'], part: steep },
    ];
    expect(networkWindow(series, 'from', 'to', workshop).exact).toBe(false);
  });

  test('at one exact temperature need no search', () => {
    const ranges = { ambient: span(25), entered: new Map<string, Span>() };
    const { least, most } = windowOf(beside(coil(span(9, 10, 11)), sensor(span(10), span(350))), ranges);
    const copper = (254.5 + 5) / 254.5;
    expect(least).toBeCloseTo((9 * copper * 10) / (9 * copper + 10), 10);
    expect(most).toBeCloseTo((11 * copper * 10) / (11 * copper + 10), 10);
  });
});

const ohms = fc.double({ min: 1, max: 100, noNaN: true });
const spread = fc
  .tuple(ohms, fc.double({ min: 0, max: 0.1, noNaN: true }))
  .map(([r, p]) => span(r * (1 - p), r, r * (1 + p)));
const temperature = fc.constantFrom('ambient' as const, { entry: 'coolant' });
const part: fc.Arbitrary<PartModel> = fc.oneof(
  fc.tuple(spread, temperature).map(([resistance, where]) => coil(resistance, where)),
  fc
    .tuple(
      spread,
      fc.tuple(
        fc.double({ min: 100, max: 4000, noNaN: true }),
        fc.double({ min: 0, max: 0.05, noNaN: true }),
      ),
      fc.constantFrom(null, { kelvin: 1 }, { fraction: 0.02 }),
      temperature,
    )
    .map(([r25, [beta, p], tolerance, where]) =>
      sensor(r25, span(beta * (1 - p), beta, beta * (1 + p)), tolerance, where),
    ),
  fc
    .tuple(ohms, fc.constantFrom('AA' as const, 'A' as const, 'B' as const), temperature)
    .map(([r0, name, where]): PartModel => ({ kind: 'platinum', r0, class: name, temperature: where })),
  temperature.map((where): PartModel => ({
    kind: 'thermistor',
    // A curve with a strong cubic term; 100 Ω at about 25 °C.
    curve: { coefficients: [2.9e-3, 6e-5, 2e-6] },
    tolerance: { kelvin: 0.5 },
    temperature: where,
  })),
  spread.map((resistance): PartModel => ({ kind: 'stated', resistance })),
);
const networks = fc
  .array(fc.tuple(fc.constantFrom('from', 'a', 'b'), fc.constantFrom('a', 'b', 'to'), part), {
    minLength: 2,
    maxLength: 8,
  })
  .map((rows) =>
    rows.map(([a, b, model], index): Element => ({ id: `part-${index}`, between: [a, b], part: model })),
  )
  .filter(
    (network) =>
      networkWindow(network, 'from', 'to', {
        ambient: span(20),
        entered: new Map([['coolant', span(20)]]),
      }).value !== 'open',
  );
const temperatures = fc
  .tuple(fc.double({ min: -40, max: 60, noNaN: true }), fc.double({ min: 1, max: 60, noNaN: true }))
  .map(([least, width]) => span(least, least + width / 2, least + width));

test('a sweep of the shared temperatures never lies outside the window, and the window is no wider than the sweep', () => {
  fc.assert(
    fc.property(networks, temperatures, temperatures, (network, ambient, coolant) => {
      const { least, most } = windowOf(network, { ambient, entered: new Map([['coolant', coolant]]) });
      const steps = 40;
      const place = ({ least: low, most: high }: Span, step: number): number =>
        low + ((high - low) * step) / steps;
      let [low, high] = [Infinity, 0];
      let [lowAt, highAt] = [
        [0, 0],
        [0, 0],
      ];
      for (let i = 0; i <= steps; i += 1)
        for (let j = 0; j <= steps; j += 1) {
          const where = [place(ambient, i), place(coolant, j)] as const;
          const [one, other] = [at(network, ...where, 'least'), at(network, ...where, 'most')];
          if (one < low) [low, lowAt] = [one, [i, j]];
          if (other > high) [high, highAt] = [other, [i, j]];
        }
      // Around the best of the sweep a finer one, as wide as the neighbours.
      const finer = (around: readonly number[], end: 'least' | 'most'): number[] =>
        Array.from({ length: 21 * 21 }, (_, index) => {
          const [i, j] = [Math.floor(index / 21), index % 21].map((each) => (each - 10) / 10);
          const clip = (step: number): number => Math.min(Math.max(step, 0), steps);
          return at(
            network,
            place(ambient, clip((around[0] ?? 0) + (i ?? 0))),
            place(coolant, clip((around[1] ?? 0) + (j ?? 0))),
            end,
          );
        });
      low = Math.min(low, ...finer(lowAt, 'least'));
      high = Math.max(high, ...finer(highAt, 'most'));
      expect(low).toBeGreaterThanOrEqual(least * (1 - 1e-9));
      expect(high).toBeLessThanOrEqual(most * (1 + 1e-9));
      // The finest step is a four hundredth of the range: near a smooth extreme it misses this much at most.
      expect(least / low).toBeGreaterThan(1 - 1e-3);
      expect(most / high).toBeLessThan(1 + 1e-3);
    }),
    { numRuns: 60 },
  );
});
