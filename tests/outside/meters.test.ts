import { describe, expect, test } from 'vitest';
import { indicate } from '../../server/src/circuit/circuit.ts';
import type { Accuracy } from '../../server/src/quantity/quantity.ts';
import { formatWindow, parseAccuracy, roundOutward } from '../../server/src/quantity/quantity.ts';
import { expectPrinted } from './printed.ts';

// The arithmetic of percent of reading plus digits does not ask for the unit: volts are put in as ohms.

function accuracy(text: string): Accuracy {
  const read = parseAccuracy(text, 'resistance');
  if (!read.ok) throw new Error(read.message);
  return read.value;
}

function limits(reading: number, specification: string, resolution: number): readonly [number, number] {
  const range = { least: 0, nominal: 500, most: 1000 };
  const exact = { least: reading, nominal: reading, most: reading };
  const { value, canBeOpen } = indicate(exact, { range, accuracy: accuracy(specification), resolution });
  if (value === null || canBeOpen) throw new Error('beyond the range');
  return [value.least, value.most];
}

describe('worked examples of meter makers for ± (percent of reading + digits)', () => {
  test.each([
    [100, '2 % + 2 digits', 0.1, '97.8', '102.2'],
    [100, '1 % + 2 digits', 0.1, '98.8', '101.2'],
    [2, '0.08 % + 2 digits', 0.001, '1.9964', '2.0036'],
    [2, '0.5 % + 3 digits', 0.001, '1.987', '2.013'],
    [5.02, '2 % + 3 digits', 0.01, '4.8896', '5.1504'],
  ])('%d by %s, last digit %d: %s to %s', (reading, specification, resolution, least, most) => {
    const [low, high] = limits(reading, specification, resolution);
    expect(low).toBeCloseTo(Number(least), 12);
    expect(high).toBeCloseTo(Number(most), 12);
  });

  test('2.000 by 0.08 % + 2 digits is displayed as 1.996 to 2.004', () => {
    const [least, most] = limits(2, '0.08 % + 2 digits', 0.001);
    const shown = roundOutward({ least, most }, 0.001);
    expect(formatWindow(shown, 0.001, 'voltage')).toBe('1.996..2.004 V');
  });

  test('bench meter manual: 5 V by 0.0020 % of reading and 0.0005 % of a 10 V range is ± 150 µV', () => {
    const [least, most] = limits(5, '0.0020 % + 50 uΩ', 1e-6);
    expectPrinted((5 - least) * 1e6, '150');
    expectPrinted((most - 5) * 1e6, '150');
  });
});

describe('a kit meter, 200 Ω range by 0.1 Ω with 0.8 % + 2 digits (its manual; results computed)', () => {
  test.each([
    [2, '0.216'],
    [60, '0.68'],
  ])('at %d Ω it errs by up to %s Ω', (ohms, error) => {
    const [least, most] = limits(ohms, '0.8 % + 2 digits', 0.1);
    expectPrinted(ohms - least, error);
    expectPrinted(most - ohms, error);
  });
});

test('Helfrick and Cooper, example 1-12: 1 % of a 150 V range is 1.5 V at a reading of 83 V, 1.81 % of it', () => {
  const [least, most] = limits(83, '1.5 Ω', 0.1);
  expectPrinted(83 - least, '1.5');
  expectPrinted((100 * (most - 83)) / 83, '1.81');
});
