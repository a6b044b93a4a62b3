import { describe, expect, test } from 'vitest';
import { currentWindow, networkWindow, voltageWindow } from '../../server/src/circuit/circuit.ts';
import type { Element, Network, Source } from '../../server/src/circuit/circuit.ts';
import type { Span } from '../../server/src/quantity/quantity.ts';
import { seededRandom } from '../../server/src/circuit/random.ts';
import { exact, resistor, room, source } from './elements.ts';

/*
 * A potentiometer is two resistors, xR and (1-x)R, with one R and one x. What is expected here is worked out by hand from
 * that: the divider by Thévenin (source x'U, inside of it x(1-x)R), the rest by Ohm and Kirchhoff.
 */

function spanOf(least: number, most: number): Span {
  return { least, nominal: (least + most) / 2, most };
}

function track(id: string, nodes: readonly [string, string, string], ohms: Span, place: Span): Network {
  const [first, wiper, second] = nodes;
  const side = { kind: 'track', track: ohms, wiper: { id, place } } as const;
  return [
    { id: `${id}.1`, between: [first, wiper], part: { ...side, end: 'first' } },
    { id: `${id}.2`, between: [wiper, second], part: { ...side, end: 'second' } },
  ];
}

const usual = track('pedal', ['plus', 'wiper', 'minus'], spanOf(800, 1200), spanOf(0.1, 0.9));

function ohms(network: Network, from: string, to: string): Span {
  const { value, exact: isExact } = networkWindow(network, from, to, room);
  if (value === 'open') throw new Error(value);
  expect(isExact).toBe(true);
  return value;
}

function volts(network: Network, supply: readonly Source[], from: string, to: string): Span {
  const window = voltageWindow(network, supply, from, to, room);
  if (window.kind !== 'number') throw new Error(window.kind);
  expect(window.exact).toBe(true);
  return window.value;
}

function expectSpan(found: Span, least: number, most: number): void {
  expect(found.least).toBeCloseTo(least, 8);
  expect(found.most).toBeCloseTo(most, 8);
}

describe('the resistance of a potentiometer of 0.8 to 1.2 kΩ, its wiper at 10 to 90 %', () => {
  test('is that of the track from end to end, wherever the wiper stands', () => {
    expectSpan(ohms(usual, 'plus', 'minus'), 800, 1200);
  });

  test('is a part of the track from an end to the wiper', () => {
    expectSpan(ohms(usual, 'plus', 'wiper'), 80, 1080);
    expectSpan(ohms(usual, 'wiper', 'minus'), 80, 1080);
  });

  test('is greatest in the middle of the track where both ends are joined: x(1-x)R', () => {
    const joined = [...usual, resistor('bridge', 'plus', 'minus', 0)];
    expectSpan(ohms(joined, 'plus', 'wiper'), 0.09 * 800, 0.25 * 1200);
  });

  test('with the wiper at an end is nothing to that end', () => {
    const whole = track('pedal', ['plus', 'wiper', 'minus'], exact(1000), spanOf(0, 1));
    expectSpan(ohms(whole, 'plus', 'wiper'), 0, 1000);
  });
});

describe('the voltage at its wiper, 5 V across the track', () => {
  test('is the same part of 5 V whatever the track has', () => {
    expectSpan(volts(usual, [source(5)], 'wiper', 'minus'), 0.5, 4.5);
    expectSpan(volts(usual, [source(5)], 'plus', 'wiper'), 0.5, 4.5);
  });

  test('is less by what the meter takes: x(1-x)R in series with 10 MΩ', () => {
    const metered = [...usual, resistor('meter', 'wiper', 'minus', 10e6)];
    const at = (x: number, r: number): number => (5 * (1 - x) * 10e6) / (10e6 + x * (1 - x) * r);
    expectSpan(volts(metered, [source(5)], 'wiper', 'minus'), at(0.9, 1200), at(0.1, 800));
  });

  test('is less by far under a load of 1 kΩ', () => {
    const loaded = [...usual, resistor('load', 'wiper', 'minus', 1000)];
    const at = (x: number, r: number): number => (5 * (1 - x) * 1000) / (1000 + x * (1 - x) * r);
    expectSpan(volts(loaded, [source(5)], 'wiper', 'minus'), at(0.9, 1200), at(0.1, 800));
  });

  test('is least in the middle of the track where both ends are at the plus and the wiper is loaded', () => {
    const network = [
      ...track('pedal', ['plus', 'wiper', 'plus-too'], spanOf(800, 1200), spanOf(0.1, 0.9)),
      resistor('join', 'plus', 'plus-too', 0),
      resistor('load', 'wiper', 'minus', 1000),
    ];
    const at = (x: number, r: number): number => (5 * 1000) / (1000 + x * (1 - x) * r);
    expectSpan(volts(network, [source(5)], 'wiper', 'minus'), at(0.5, 1200), at(0.1, 800));
  });

  test('from end to end of the track, where its wiper may stand at either', () => {
    const whole = track('pedal', ['plus', 'wiper', 'minus'], spanOf(800, 1200), spanOf(0, 1));
    expectSpan(volts(whole, [source(5)], 'wiper', 'minus'), 0, 5);
  });

  test('with 10 to 20 mΩ in the feed: at the ends of x, with R where it is worst', () => {
    const fed = [
      ...track('pedal', ['fed', 'wiper', 'minus'], spanOf(800, 1200), spanOf(0.1, 0.9)),
      resistor('contact', 'plus', 'fed', spanOf(0.01, 0.02)),
    ];
    const at = (x: number, r: number, contact: number): number => (5 * (1 - x) * r) / (r + contact);
    expectSpan(volts(fed, [source(5)], 'wiper', 'minus'), at(0.9, 800, 0.02), at(0.1, 1200, 0.01));
  });
});

describe('the current through its track', () => {
  test('is that of the track alone while nothing is at the wiper', () => {
    const fed = track('pedal', ['fed', 'wiper', 'minus'], spanOf(800, 1200), spanOf(0.1, 0.9));
    const network = [...fed, resistor('wire', 'plus', 'fed', 0)];
    const window = currentWindow(network, [source(5)], { kind: 'around', element: 'wire' }, room);
    if (window.kind !== 'number') throw new Error(window.kind);
    expect(window.exact).toBe(true);
    expectSpan(window.value, 5 / 1200, 5 / 800);
  });
});

/*
 * Random circuits against the nodal equations, solved by Gauss and Jordan: two potentiometers on one supply, with wires,
 * loads from a wiper to ground and from one wiper to the other.
 */
describe('60 circuits of two potentiometers drawn at random', () => {
  const names = ['plus', 'a', 'b', 'wa', 'wb', 'minus'] as const;

  /** Volts of each node above minus, the plus at `supply`. */
  function nodal(
    branches: readonly (readonly [string, string, number])[],
    supply: number,
  ): Map<string, number> {
    const free = names.filter((name) => name !== 'plus' && name !== 'minus');
    const known = new Map([
      ['plus', supply],
      ['minus', 0],
    ]);
    const rows = free.map((name) => {
      const row = new Array<number>(free.length + 1).fill(0);
      for (const [from, to, r] of branches)
        for (const [here, there] of [
          [from, to],
          [to, from],
        ]) {
          if (here !== name || there === undefined) continue;
          const own = free.indexOf(name);
          row[own] = (row[own] ?? 0) + 1 / r;
          const volt = known.get(there);
          const at = volt === undefined ? free.findIndex((one) => one === there) : free.length;
          row[at] = (row[at] ?? 0) + (volt ?? -1) / r;
        }
      return row;
    });
    for (const [at, pivotRow] of rows.entries()) {
      const pivot = pivotRow[at] ?? NaN;
      for (const [other, row] of rows.entries()) {
        if (other === at) continue;
        const factor = (row[at] ?? 0) / pivot;
        for (const column of row.keys()) row[column] = (row[column] ?? 0) - factor * (pivotRow[column] ?? 0);
      }
    }
    return new Map(
      free.map((name, at) => [name, (rows[at]?.[free.length] ?? NaN) / (rows[at]?.[at] ?? NaN)]),
    );
  }

  test('no circuit within the limits reads outside of the window, and an exact end is nearly reached', () => {
    const random = seededRandom(7);
    const between = (low: number, high: number): number => low + (high - low) * random();
    const spread = (low: number, high: number): Span => {
      const middle = between(low, high);
      const off = between(0, 0.3);
      return { least: middle * (1 - off), nominal: middle, most: middle * (1 + off) };
    };
    let exactOnes = 0;
    for (let circuit = 0; circuit < 60; circuit += 1) {
      const tracks = [spread(500, 5000), spread(500, 5000)] as const;
      const places = [0, 1].map(() => spanOf(between(0, 0.45), between(0.55, 1)));
      const wires: readonly (readonly [string, string, Span])[] = [
        ['plus', 'a', spread(0.005, 5)],
        ['plus', 'b', spread(0.005, 500)],
        ['wa', 'minus', spread(1e3, 1e7)],
        ['wb', 'minus', spread(1e3, 1e7)],
        ['wa', 'wb', spread(1e3, 1e6)],
      ];
      const network: Element[] = [
        ...track('a', ['a', 'wa', 'minus'], tracks[0], places[0] ?? exact(0.5)),
        ...track('b', ['b', 'wb', 'minus'], tracks[1], places[1] ?? exact(0.5)),
        ...wires.map(([from, to, span], at) => resistor(`wire ${at}`, from, to, span)),
      ];
      const window = voltageWindow(network, [source(5)], 'wa', 'minus', room);
      if (window.kind !== 'number') throw new Error(window.kind);
      const { least, most } = window.value;
      let [low, high] = [Infinity, -Infinity];
      for (let draw = 0; draw < 400; draw += 1) {
        // Mostly at ends, where extremes are.
        const pick = (span: Span): number => {
          const kind = random();
          return kind < 0.45 ? span.least : kind < 0.9 ? span.most : between(span.least, span.most);
        };
        const [ra, rb, xa, xb] = [tracks[0], tracks[1], places[0] ?? exact(0.5), places[1] ?? exact(0.5)].map(
          pick,
        ) as [number, number, number, number];
        const tiny = (ohm: number): number => Math.max(ohm, 1e-9);
        const found = nodal(
          [
            ['a', 'wa', tiny(ra * xa)],
            ['wa', 'minus', tiny(ra * (1 - xa))],
            ['b', 'wb', tiny(rb * xb)],
            ['wb', 'minus', tiny(rb * (1 - xb))],
            ...wires.map(([from, to, span]) => [from, to, pick(span)] as const),
          ],
          5,
        ).get('wa');
        low = Math.min(low, found ?? NaN);
        high = Math.max(high, found ?? NaN);
      }
      expect(low).toBeGreaterThanOrEqual(least - 1e-7);
      expect(high).toBeLessThanOrEqual(most + 1e-7);
      if (!window.exact) continue;
      exactOnes += 1;
      expect(low - least).toBeLessThan(0.1);
      expect(most - high).toBeLessThan(0.1);
    }
    expect(exactOnes).toBeGreaterThan(40);
  });
});
