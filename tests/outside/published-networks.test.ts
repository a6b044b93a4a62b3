import { describe, expect, test } from 'vitest';
import type { Edge } from '../../server/src/circuit/circuit.ts';
import { resistanceBetween } from '../../server/src/circuit/circuit.ts';
import { expectPrinted } from './printed.ts';

/** Resistance between two named nodes of a list such as `['A-C', 4]`. */
function between(from: string, to: string, ...resistors: readonly (readonly [string, number])[]): number {
  const names = [...new Set([from, to, ...resistors.flatMap(([ends]) => ends.split('-'))])];
  const edges = resistors.map(([ends, ohms]): Edge => {
    const [a = '', b = ''] = ends.split('-');
    return { a: names.indexOf(a), b: names.indexOf(b), ohms };
  });
  return resistanceBetween(edges, names.length, names.indexOf(from), names.indexOf(to));
}

function inSeries(...ohms: readonly number[]): number {
  return resistanceBetween(
    ohms.map((each, index) => ({ a: index, b: index + 1, ohms: each })),
    ohms.length + 1,
    0,
    ohms.length,
  );
}

function sideBySide(...ohms: readonly number[]): number {
  return resistanceBetween(
    ohms.map((each) => ({ a: 0, b: 1, ohms: each })),
    2,
    0,
    1,
  );
}

describe('bridges', () => {
  test('Bird, Electrical Circuit Theory and Technology, problem 34.3: 13.0 Ω', () => {
    const bridge = [
      ['A-C', 4],
      ['A-D', 1],
      ['C-D', 8],
      ['C-B', 16],
      ['D-B', 40],
    ] as const;
    expect(between('A', 'B', ...bridge)).toBeCloseTo(13, 12);
  });

  test('"Introduction to electric circuits", p. 58: a delta of 10, 15, 5 Ω is a star of 5/3, 5, 2.5 Ω', () => {
    // The star with these three legs has the same resistance between each two corners as the delta.
    // Legs: the product of the two sides at a corner over the sum of all three.
    const delta = [
      ['a-b', 10],
      ['b-c', 15],
      ['c-a', 5],
    ] as const;
    const star = [
      ['a-m', 5 / 3],
      ['b-m', 5],
      ['c-m', 2.5],
    ] as const;
    for (const [one, other, ohms] of [
      ['a', 'b', 20 / 3],
      ['b', 'c', 7.5],
      ['c', 'a', 25 / 6],
    ] as const) {
      expect(between(one, other, ...delta)).toBeCloseTo(ohms, 12);
      expect(between(one, other, ...star)).toBeCloseTo(ohms, 12);
    }
  });

  test.each([
    ['FOSSEE Scilab textbook companion 3830, example 6.2', [1000, 400, 100, 41], '314.79'],
    ['Bakshi, example 8.3', [7000, 2000, 4000, 20_000], '4888.9'],
    ['Electronic Instrumentation, example 7.5.2', [1500, 5000, 3000, 14_000], '3624.4'],
  ] as const)('%s: seen from the galvanometer, the source a short', (_source, [p, q, r, s], ohms) => {
    const seen = between(
      'G',
      'H',
      ['plus-G', p],
      ['G-minus', q],
      ['plus-H', r],
      ['H-minus', s],
      ['plus-minus', 0],
    );
    expectPrinted(seen, ohms);
  });

  test.each([
    ['textbook bridge AB 6, AD 3, BC 4, DC 2: no current across', [6, 4, 3, 2]],
    ['Hambley: 10 kΩ to 1 kΩ balances 7320 Ω to 732 Ω', [10_000, 1000, 7320, 732]],
    ['5 kΩ, 7 kΩ and 10 kΩ balance with 14 kΩ', [5000, 7000, 10_000, 14_000]],
  ] as const)('%s: what stands across a balanced bridge does not matter', (_source, [p, q, r, s]) => {
    const sides = (p + q) * ((r + s) / (p + q + r + s));
    for (const across of [0, 1, 1e6, Infinity]) {
      const whole = between('A', 'C', ['A-B', p], ['B-C', q], ['A-D', r], ['D-C', s], ['B-D', across]);
      expect(whole / sides).toBeCloseTo(1, 12);
    }
  });
});

describe('series and parallel, Bird, Electrical Circuit Theory and Technology, chapter 5', () => {
  test('13 V drive 4 A through 1.25 + 0.5 + 1.5 Ω', () => {
    expect(13 / inSeries(1.25, 0.5, 1.5)).toBeCloseTo(4, 12);
  });

  test('12 V drive 0.5 A through 4 + 9 + 11 Ω', () => {
    expect(12 / inSeries(4, 9, 11)).toBeCloseTo(0.5, 12);
  });

  test('12 V drive 6 A through 3 Ω beside 6 Ω, which are 2 Ω', () => {
    expect(sideBySide(3, 6)).toBeCloseTo(2, 12);
  });

  test('with 8 A in the 5 Ω, 5 Ω beside 40 Ω beside 20 Ω take 11 A at 40 V', () => {
    expect((8 * 5) / sideBySide(5, 40, 20)).toBeCloseTo(11, 12);
  });

  test('OpenStax, from memory: 1.00, 6.00, 13.0 Ω', () => {
    expectPrinted(inSeries(1, 6, 13), '20.0');
    expectPrinted(sideBySide(1, 6, 13), '0.804');
    expectPrinted(between('a', 'c', ['a-b', 1], ['b-c', 6], ['b-c', 13]), '5.11');
  });
});

describe('buses with terminators, CAN', () => {
  test('fieldbus manual: about 60 Ω with both terminators, about 120 Ω with one, below 50 Ω with three', () => {
    expect(sideBySide(120, 120)).toBeCloseTo(60, 12);
    expect(sideBySide(120)).toBe(120);
    expect(sideBySide(120, 120, 120)).toBeCloseTo(40, 12);
  });

  test('computed from bands of terminators that are quoted: 118..130, 108..132 and 120 Ω ± 1 %', () => {
    expect([sideBySide(118, 118), sideBySide(130, 130)]).toEqual([59, 65]);
    expect([sideBySide(108, 108), sideBySide(132, 132)]).toEqual([54, 66]);
    expectPrinted(sideBySide(118.8, 118.8), '59.4');
    expectPrinted(sideBySide(121.2, 121.2), '60.6');
  });

  test('computed: ten nodes of 30 kΩ beside both terminators', () => {
    const nodes = Array.from({ length: 10 }, () => 30_000);
    expectPrinted(sideBySide(120, 120, ...nodes), '58.82');
  });

  test('computed from 70 mΩ/m, the line resistance of CANopen manuals: at one end of 40 m', () => {
    const core = 40 * 0.07;
    expectPrinted(between('h', 'l', ['h-l', 120], ['h-H', core], ['H-L', 120], ['L-l', core]), '61.37');
  });
});
