import { describe, expect, test } from 'vitest';
import { nearestPreferred, resistanceAt, usualTolerance } from '../../server/src/circuit/circuit.ts';
import type { PreferredSeries } from '../../server/src/circuit/preferred-values.ts';

/** The values of a decade as published, in order. */
const published: Readonly<Record<Exclude<PreferredSeries, 'E192'>, string>> = {
  E6: '10 15 22 33 47 68',
  E12: '10 12 15 18 22 27 33 39 47 56 68 82',
  E24: '10 11 12 13 15 16 18 20 22 24 27 30 33 36 39 43 47 51 56 62 68 75 82 91',
  E48: `100 105 110 115 121 127 133 140 147 154 162 169 178 187 196 205 215 226 237 249 261 274 287 301 316 332 348 365
    383 402 422 442 464 487 511 536 562 590 619 649 681 715 750 787 825 866 909 953`,
  E96: `100 102 105 107 110 113 115 118 121 124 127 130 133 137 140 143 147 150 154 158 162 165 169 174 178 182 187 191
    196 200 205 210 215 221 226 232 237 243 249 255 261 267 274 280 287 294 301 309 316 324 332 340 348 357 365 374 383
    392 402 412 422 432 442 453 464 475 487 499 511 523 536 549 562 576 590 604 619 634 649 665 681 698 715 732 750 768
    787 806 825 845 866 887 909 931 953 976`,
};

/** All whole numbers of so many digits that are their own nearest value. */
function members(series: PreferredSeries, digits: number): readonly number[] {
  const first = 10 ** (digits - 1);
  return Array.from({ length: 9 * first }, (_, index) => first + index).filter(
    (value) => nearestPreferred(value, series) === value,
  );
}

describe('IEC 60063, preferred values, as published by two pages', () => {
  test.each(Object.entries(published))('%s has these values and no others', (series, text) => {
    const values = text.split(/\s+/).map(Number);
    const digits = series === 'E48' || series === 'E96' ? 3 : 2;
    expect(members(series as PreferredSeries, digits)).toEqual(values);
  });

  test('E192 has 192 values; where its rule gives 919 it has 920 (from memory)', () => {
    const values = members('E192', 3);
    expect(values).toHaveLength(192);
    expect(values).toContain(920);
    expect(values).not.toContain(919);
  });

  test('a page lists 4.2 in E24: it is 4.3, and rounding the steps of E24 gives seven more slips of that sort', () => {
    const rounded = Array.from({ length: 24 }, (_, step) => Math.round(10 * 10 ** (step / 24)));
    const slips = rounded.filter((value) => nearestPreferred(value, 'E24') !== value);
    expect(slips).toEqual([26, 29, 32, 35, 38, 42, 46, 83]);
    expect(nearestPreferred(4.2, 'E24')).toBe(4.3);
  });

  test('in every decade, to the last digit', () => {
    for (const [ohms, series] of [
      [0.047, 'E6'],
      [0.33, 'E12'],
      [4.3, 'E24'],
      [9.53, 'E48'],
      [2200, 'E24'],
      [97.6e3, 'E96'],
      [1e6, 'E6'],
      [9.88e6, 'E192'],
    ] as const)
      expect(nearestPreferred(ohms, series)).toBe(ohms);
    // Nearest in ratio: 1.10 times to 2.2 kΩ, 1.11 times to 1.8 kΩ.
    expect(nearestPreferred(2000, 'E12')).toBe(2200);
    // From the end of one decade to the start of the next.
    expect(nearestPreferred(99, 'E24')).toBe(100);
    expect(nearestPreferred(99.9, 'E96')).toBe(100);
  });

  test.each([
    ['E6', 0.2],
    ['E12', 0.1],
    ['E24', 0.05],
    ['E48', 0.02],
    ['E96', 0.01],
    ['E192', 0.005],
  ] as const)('%s usually goes with a tolerance of %d', (series, tolerance) => {
    expect(usualTolerance(series)).toBe(tolerance);
    const bare = { least: 2200, nominal: 2200, most: 2200 };
    const { least, nominal, most } = resistanceAt(
      { kind: 'preferred', resistance: bare, series },
      { ambient: 20, entered: new Map() },
    );
    expect(nominal).toBe(2200);
    expect(most / nominal).toBeCloseTo(1 + tolerance, 12);
    expect(least / nominal).toBeCloseTo(1 - tolerance, 12);
  });

  test('since 2015 the pairing is advice: a tolerance that is stated stands', () => {
    const stated = { least: 2178, nominal: 2200, most: 2222 };
    expect(
      resistanceAt(
        { kind: 'preferred', resistance: stated, series: 'E24' },
        { ambient: 20, entered: new Map() },
      ),
    ).toEqual(stated);
  });
});
