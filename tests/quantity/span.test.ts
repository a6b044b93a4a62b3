import { describe, expect, test } from 'vitest';
import type { Dimension } from '../../server/src/quantity/quantity.ts';
import { parseExact, parseSpan } from '../../server/src/quantity/quantity.ts';

type Row = readonly [text: string, dimension: Dimension, least: number, nominal: number, most: number];

const examples: readonly Row[] = [
  ['2.0 Ω', 'resistance', 2, 2, 2],
  ['2.0 Ω ± 0.3 Ω', 'resistance', 1.7, 2, 2.3],
  ['2.0 ± 0.3 Ω', 'resistance', 1.7, 2, 2.3],
  ['2.0 Ω ± 300 mΩ', 'resistance', 1.7, 2, 2.3],
  ['2.2 kΩ ± 1 %', 'resistance', 2178, 2200, 2222],
  ['1.7..2.3 Ω', 'resistance', 1.7, 2, 2.3],
  ['1.7..1.9..2.3 Ω', 'resistance', 1.7, 1.9, 2.3],
  ['1.7 Ω..2.3 Ω', 'resistance', 1.7, 2, 2.3],
  ['900 mΩ..1.1 Ω', 'resistance', 0.9, 1, 1.1],
  ['2..15 mΩ', 'resistance', 0.002, 0.0085, 0.015],
  ['0.05..0.15 Ω', 'resistance', 0.05, 0.1, 0.15],
  ['0..10 Ω', 'resistance', 0, 5, 10],
  ['2 Ω ± 0 %', 'resistance', 2, 2, 2],
  ['2 Ω ± 100 %', 'resistance', 0, 2, 4],
  ['10 MΩ', 'resistance', 1e7, 1e7, 1e7],
  ['6.8 mF ± 20 %', 'capacitance', 0.00544, 0.0068, 0.00816],
  ['10 uF', 'capacitance', 1e-5, 1e-5, 1e-5],
  ['12.6 V', 'voltage', 12.6, 12.6, 12.6],
  ['40 mA', 'current', 0.04, 0.04, 0.04],
  ['400 mA', 'current', 0.4, 0.4, 0.4],
  ['3 min', 'time', 180, 180, 180],
  ['1 min 30 s', 'time', 90, 90, 90],
  ['1..3 min', 'time', 60, 120, 180],
  ['120 ms', 'time', 0.12, 0.12, 0.12],
  ['1.2 m', 'length', 1.2, 1.2, 1.2],
  ['120 cm', 'length', 1.2, 1.2, 1.2],
  ['1200 mm', 'length', 1.2, 1.2, 1.2],
  ['10..35 °C', 'temperature', 10, 22.5, 35],
  ['-40..+85 °C', 'temperature', -40, 22.5, 85],
  ['20 °C ± 5 °C', 'temperature', 15, 20, 25],
  ['-5 ± 10 °C', 'temperature', -15, -5, 5],
  ['5 W ± 10 %', 'power', 4.5, 5, 5.5],
  ['0.5 mm² ± 10 %', 'wire-size', 0.45, 0.5, 0.55],
  ['1e3 Ω', 'resistance', 1000, 1000, 1000],
];

describe('a value with its spread', () => {
  test.each(examples)('%s (%s) is %d, %d, %d', (text, dimension, least, nominal, most) => {
    expect(parseSpan(text, dimension)).toEqual({ ok: true, value: { least, nominal, most } });
  });

  test('is the double nearest to the decimal result, not the end of a chain of roundings', () => {
    // In doubles 4.7 * 0.05 * 1000 is 235.00000000000003, and (0.1 + 0.7) / 2 is 0.39999999999999997.
    expect(parseSpan('4.7 kΩ ± 5 %', 'resistance')).toEqual({
      ok: true,
      value: { least: 4465, nominal: 4700, most: 4935 },
    });
    expect(parseSpan('0.1..0.7 Ω', 'resistance')).toEqual({
      ok: true,
      value: { least: 0.1, nominal: 0.4, most: 0.7 },
    });
    expect(parseExact('1.1 mΩ', 'resistance')).toEqual({ ok: true, value: 0.0011 });
    expect(parseExact('0.3 kΩ', 'resistance')).toEqual({ ok: true, value: 300 });
  });

  const spellings: readonly (readonly [string, Dimension, string])[] = [
    ['2.2 kohm +/- 1 %', 'resistance', '2.2 kΩ ± 1 %'],
    ['2.2kohm+-1%', 'resistance', '2.2 kΩ ± 1 %'],
    ['2.2 k\u2126 ± 1 %', 'resistance', '2.2 kΩ ± 1 %'],
    ['5 mohm', 'resistance', '5 mΩ'],
    ['5 Mohm', 'resistance', '5 MΩ'],
    ['5 ohm', 'resistance', '5 Ω'],
    ['5 uΩ', 'resistance', '5 \u00b5Ω'],
    ['5 \u03bcΩ', 'resistance', '5 \u00b5Ω'],
    ['1.7…2.3 Ω', 'resistance', '1.7..2.3 Ω'],
    ['1.7–2.3 Ω', 'resistance', '1.7..2.3 Ω'],
    ['1.7 .. 2.3 Ω', 'resistance', '1.7..2.3 Ω'],
    ['2.0\u00a0Ω\u202f±\u20090.3\u00a0Ω', 'resistance', '2.0 Ω ± 0.3 Ω'],
    ['  2.0 Ω\n', 'resistance', '2.0 Ω'],
    ['\u221210 degC', 'temperature', '-10 °C'],
    ['-20–\u221210 °C', 'temperature', '-20..-10 °C'],
    ['20 +\u2212 5 °C', 'temperature', '20 °C ± 5 °C'],
    ['1.5 mm2', 'wire-size', '1.5 mm²'],
    ['1 mm2..1.5 mm2', 'wire-size', '1..1.5 mm²'],
    ['10 \u03bcF', 'capacitance', '10 uF'],
  ];
  test.each(spellings)('%s (%s) is read as %s', (one, dimension, other) => {
    const read = parseSpan(one, dimension);
    expect(read.ok).toBe(true);
    expect(read).toEqual(parseSpan(other, dimension));
  });

  test('keeps milli and mega apart by case alone', () => {
    expect(parseExact('1 mΩ', 'resistance')).toEqual({ ok: true, value: 1e-3 });
    expect(parseExact('1 MΩ', 'resistance')).toEqual({ ok: true, value: 1e6 });
  });
});

describe('one value', () => {
  test.each([
    ['0.01 Ω', 'resistance', 0.01],
    ['3 min', 'time', 180],
    ['1 h 5 min 10 s', 'time', 3910],
    ['-0 Ω', 'resistance', 0],
    ['0e999 Ω', 'resistance', 0],
    ['-40 °C', 'temperature', -40],
  ] as const)('%s (%s) is %d', (text, dimension, value) => {
    expect(parseExact(text, dimension)).toEqual({ ok: true, value });
  });
});
