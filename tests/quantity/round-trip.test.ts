import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Dimension } from '../../server/src/quantity/quantity.ts';
import {
  formatAccuracy,
  formatLimit,
  formatQuantity,
  formatSpan,
  formatWindow,
  formatWire,
  parseAccuracy,
  parseExact,
  parseLimit,
  parseSpan,
  parseWire,
  roundOutward,
} from '../../server/src/quantity/quantity.ts';

const dimension = fc.constantFrom<Dimension>(
  'resistance',
  'voltage',
  'current',
  'capacitance',
  'time',
  'length',
  'temperature',
  'wire-size',
  'power',
  'place',
);
const resolution = fc.constantFrom(0.0001, 0.001, 0.01, 0.02, 0.05, 0.1, 0.25, 0.5, 1, 10, 100);
/** Any double of a size that occurs, not only tidy ones. */
const size = fc.oneof(
  fc.constant(0),
  fc.double({ min: 1e-9, max: 1e9, noNaN: true }),
  fc
    .tuple(fc.integer({ min: 1, max: 9999 }), fc.integer({ min: -6, max: 5 }))
    .map(([digits, power]) => Number(`${digits}e${power}`)),
);
const ascending = fc
  .tuple(size, size, size)
  .map((values) => [...values].sort((a, b) => a - b) as [number, number, number]);

describe('what is printed reads back as the same numbers', () => {
  test('windows', () => {
    fc.assert(
      fc.property(ascending, resolution, dimension, ([least, , most], step, of) => {
        const read = parseSpan(formatWindow({ least, most }, step, of), of);
        expect(read).toMatchObject({ ok: true, value: { least, most } });
        expect(parseLimit(formatWindow({ least: null, most }, step, of), of)).toEqual({
          ok: true,
          value: { below: most },
        });
        expect(parseLimit(formatWindow({ least, most: null }, step, of), of)).toEqual({
          ok: true,
          value: { above: least },
        });
      }),
    );
  });

  test('spans', () => {
    fc.assert(
      fc.property(ascending, dimension, ([least, nominal, most], of) => {
        const span = { least, nominal, most };
        expect(parseSpan(formatSpan(span, of), of)).toEqual({ ok: true, value: span });
      }),
    );
  });

  test('temperatures on both sides of zero', () => {
    fc.assert(
      fc.property(fc.integer({ min: -999, max: 999 }), fc.nat(999), (tenths, width) => {
        const span = { least: tenths / 10, nominal: (tenths + width) / 10, most: (tenths + 3 * width) / 10 };
        expect(parseSpan(formatSpan(span, 'temperature'), 'temperature')).toEqual({ ok: true, value: span });
      }),
    );
  });

  test('limits, accuracies and wires', () => {
    fc.assert(
      fc.property(size, fc.nat(99), fc.nat(9), dimension, (value, hundredths, digits, of) => {
        expect(parseLimit(formatLimit({ below: value }, of), of)).toEqual({
          ok: true,
          value: { below: value },
        });
        // The percent of a place are its unit.
        if (of !== 'temperature' && of !== 'place') {
          const accuracy = { fraction: hundredths / 100, constant: value, digits };
          expect(parseAccuracy(formatAccuracy(accuracy, of), of)).toEqual({ ok: true, value: accuracy });
        }
        if (value > 0) {
          expect(parseWire(formatWire({ squareMillimetres: value }))).toEqual({
            ok: true,
            value: { squareMillimetres: value },
          });
        }
      }),
    );
  });

  test('single values, to the 12 digits that sentences carry', () => {
    fc.assert(
      fc.property(size, dimension, (value, of) => {
        const read = parseExact(formatQuantity(value, of), of);
        expect(read.ok).toBe(true);
        if (read.ok) expect(Math.abs(read.value - value)).toBeLessThanOrEqual(1e-11 * value);
      }),
    );
  });
});

describe('rounding outward', () => {
  test('holds the window, and exceeds it by less than a step', () => {
    fc.assert(
      fc.property(ascending, resolution, ([least, , most], step) => {
        const rounded = roundOutward({ least, most }, step);
        if (rounded === 'open' || rounded.least === null || rounded.most === null)
          throw new Error('limits were lost');
        const slack = 2e-9 * step + 4e-16 * most;
        expect(rounded.least).toBeLessThanOrEqual(least + slack);
        expect(rounded.least).toBeGreaterThan(least - step - slack);
        expect(rounded.most).toBeGreaterThanOrEqual(most - slack);
        expect(rounded.most).toBeLessThan(most + step + slack);
      }),
    );
  });

  test('done twice changes nothing, and gives numbers of at most 12 digits', () => {
    const moderate = fc.integer({ min: 0, max: 10_000_000 }).map((count) => count / 3000);
    fc.assert(
      fc.property(moderate, moderate, resolution, (one, other, step) => {
        const once = roundOutward({ least: Math.min(one, other), most: Math.max(one, other) }, step);
        expect(roundOutward(once, step)).toEqual(once);
        if (once === 'open') throw new Error('it became open');
        for (const value of [once.least ?? -1, once.most ?? -1])
          expect(Number(value.toPrecision(12))).toBe(value);
      }),
    );
  });
});

describe('any text at all', () => {
  const pieces = [
    '2',
    '.',
    '..',
    ',',
    ' ',
    'Ω',
    'ohm',
    '±',
    '+',
    '-',
    '/',
    '%',
    'mm²',
    '…',
    '–',
    'e',
    '9',
    '0',
    'below',
    'AWG',
    '😀',
    'min',
    's',
    '\u00a0',
  ];
  const text = fc.oneof(
    fc.string({ unit: 'binary' }),
    fc.array(fc.constantFrom(...pieces), { maxLength: 12 }).map((parts) => parts.join('')),
  );

  test('is read or complained about inside the text, and never throws', () => {
    fc.assert(
      fc.property(text, dimension, (written, of) => {
        const results = [
          parseSpan(written, of),
          parseExact(written, of),
          parseLimit(written, of),
          parseAccuracy(written, of),
          parseWire(written),
        ];
        for (const result of results) {
          if (result.ok) continue;
          expect(result.from).toBeGreaterThanOrEqual(0);
          expect(result.to).toBeLessThanOrEqual(written.length);
          if (written !== '') expect(result.from).toBeLessThan(result.to);
        }
      }),
      { numRuns: 2000 },
    );
  });

  test('that is read gives finite numbers in order', () => {
    fc.assert(
      fc.property(text, dimension, (written, of) => {
        const result = parseSpan(written, of);
        if (!result.ok) return;
        const { least, nominal, most } = result.value;
        expect([least, nominal, most].every(Number.isFinite)).toBe(true);
        expect(least).toBeLessThanOrEqual(nominal);
        expect(nominal).toBeLessThanOrEqual(most);
        if (of !== 'temperature') expect(least).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 2000 },
    );
  });
});
