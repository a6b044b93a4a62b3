import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  decimalFromNumber,
  decimalFromText,
  decimalPlaces,
  plainText,
  toNumber,
  wholeTimes,
} from '../../server/src/quantity/decimal.ts';

function times(left: number, right: number): bigint {
  return wholeTimes(decimalFromNumber(left), decimalFromNumber(right));
}

describe('decimals', () => {
  test('count whole steps downward, on both sides of zero', () => {
    expect(times(0.3, 0.1)).toBe(3n);
    expect(times(0.35, 0.1)).toBe(3n);
    expect(times(-0.3, 0.1)).toBe(-3n);
    expect(times(-0.35, 0.1)).toBe(-4n);
    expect(times(0, 0.1)).toBe(0n);
    expect(times(1e22, 0.001)).toBe(10n ** 25n);
  });

  test('hold any double and give it back', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
        expect(toNumber(decimalFromNumber(value))).toBe(value === 0 ? 0 : value);
      }),
    );
  });

  test('are written without an exponent, and lose nothing', () => {
    expect(plainText(decimalFromNumber(1e21))).toBe('1000000000000000000000');
    expect(plainText(decimalFromNumber(-1.5e-7))).toBe('-0.00000015');
    expect(plainText(decimalFromNumber(2), 2)).toBe('2.00');
    expect(plainText(decimalFromNumber(2.345), 2)).toBe('2.345');
    expect(plainText({ coefficient: 2500n, exponent: -3 })).toBe('2.5');
    expect(decimalPlaces({ coefficient: 2500n, exponent: -3 })).toBe(1);
  });

  test('are read from digits, a point and an exponent, and from nothing else', () => {
    expect(decimalFromText('-12.50e3')).toEqual({ coefficient: -1250n, exponent: 1 });
    for (const text of ['', '1.2.3', '0x10', '1,5', 'Infinity', ' 1'])
      expect(decimalFromText(text)).toBeUndefined();
  });
});
