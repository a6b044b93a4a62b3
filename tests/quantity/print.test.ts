import { describe, expect, test } from 'vitest';
import {
  formatAccuracy,
  formatDigits,
  formatLimit,
  formatOnDisplay,
  formatQuantity,
  formatSpan,
  formatWait,
  formatWindow,
  formatWire,
  roundOutward,
} from '../../server/src/quantity/quantity.ts';

describe('a computed value with four digits', () => {
  test.each([
    [3, 'resistance', '3.000 Ω'],
    [1000, 'resistance', '1.000 kΩ'],
    [124.96, 'resistance', '125.0 Ω'],
    [999.96, 'resistance', '1.000 kΩ'],
    [0.30004, 'resistance', '0.3000 Ω'],
    [0.0123456, 'resistance', '12.35 mΩ'],
    [12345678, 'resistance', '12.35 MΩ'],
    [-0.02, 'voltage', '-20.00 mV'],
    [0, 'voltage', '0 V'],
  ] as const)('%d as %s is %s', (value, dimension, text) => {
    expect(formatDigits(value, 4, dimension)).toBe(text);
  });
});

describe('one number as a display shows it', () => {
  test.each([
    [3.1013, 0.01, 'resistance', '3.10 Ω'],
    [120.25, 1, 'resistance', '120 Ω'],
    [1000.2, 1, 'resistance', '1.000 kΩ'],
    [0.004, 0.01, 'voltage', '0.00 V'],
    [-0.018, 0.01, 'voltage', '-0.02 V'],
  ] as const)('%d at steps of %d as %s is %s', (value, step, dimension, text) => {
    expect(formatOnDisplay(value, step, dimension)).toBe(text);
  });
});

describe('one value in a sentence', () => {
  test.each([
    [180, 'time', '3 min'],
    [90, 'time', '1 min 30 s'],
    [45, 'time', '45 s'],
    [60, 'time', '1 min'],
    [3600, 'time', '1 h'],
    [3905.5, 'time', '1 h 5 min 5.5 s'],
    [119.99999999999999, 'time', '2 min'],
    [0.05, 'time', '50 ms'],
    [0, 'time', '0 s'],
    [12.6, 'voltage', '12.6 V'],
    [4700, 'resistance', '4.7 kΩ'],
    [10e6, 'resistance', '10 MΩ'],
    [0.015, 'resistance', '15 mΩ'],
    [0.3, 'resistance', '0.3 Ω'],
    [0.1 + 0.2, 'resistance', '0.3 Ω'],
    [999.9, 'resistance', '999.9 Ω'],
    [0, 'resistance', '0 Ω'],
    [0.04, 'current', '40 mA'],
    [0.4, 'current', '400 mA'],
    [0.0068, 'capacitance', '6.8 mF'],
    [1e-5, 'capacitance', '10 µF'],
    [1.2, 'length', '1.2 m'],
    [-40, 'temperature', '-40 °C'],
    [0.5, 'wire-size', '0.5 mm²'],
    [5, 'power', '5 W'],
  ] as const)('%d as %s is %s', (value, dimension, text) => {
    expect(formatQuantity(value, dimension)).toBe(text);
  });

  test('a wait is never rounded down', () => {
    expect(formatWait(161.2)).toBe('2 min 42 s');
    expect(formatWait(180)).toBe('3 min');
    expect(formatWait(180.0000000001)).toBe('3 min');
    expect(formatWait(180.001)).toBe('3 min 1 s');
  });
});

describe('what a file could say', () => {
  test('spans', () => {
    expect(formatSpan({ least: 2, nominal: 2, most: 2 }, 'resistance')).toBe('2 Ω');
    expect(formatSpan({ least: 1.7, nominal: 2, most: 2.3 }, 'resistance')).toBe('1.7..2.3 Ω');
    expect(formatSpan({ least: 1.7, nominal: 1.9, most: 2.3 }, 'resistance')).toBe('1.7..1.9..2.3 Ω');
    expect(formatSpan({ least: 0.002, nominal: 0.0085, most: 0.015 }, 'resistance')).toBe('2..15 mΩ');
    expect(formatSpan({ least: -40, nominal: 22.5, most: 85 }, 'temperature')).toBe('-40..85 °C');
  });

  test('limits, accuracies, wires', () => {
    expect(formatLimit({ below: 1 }, 'resistance')).toBe('below 1 Ω');
    expect(formatLimit({ above: 5000 }, 'resistance')).toBe('above 5 kΩ');
    expect(formatAccuracy({ fraction: 0.03, constant: 0.1, digits: 0 }, 'resistance')).toBe('3 % + 0.1 Ω');
    expect(formatAccuracy({ fraction: 0.008, constant: 0, digits: 3 }, 'resistance')).toBe(
      '0.8 % + 3 digits',
    );
    expect(formatAccuracy({ fraction: 0.02, constant: 0, digits: 1 }, 'resistance')).toBe('2 % + 1 digit');
    expect(formatAccuracy({ fraction: 0, constant: 0, digits: 0 }, 'resistance')).toBe('0 Ω');
    expect(formatWire({ awg: 20 })).toBe('AWG 20');
    expect(formatWire({ squareMillimetres: 0.5 })).toBe('0.5 mm²');
  });
});

describe('a window', () => {
  test.each([
    [1.96, 3.63, 0.01, '1.96..3.63 Ω'],
    [0, 1.2, 0.01, '0.00..1.20 Ω'],
    [9.32, null, 0.01, 'above 9.32 Ω'],
    [null, 1, 0.01, 'below 1.00 Ω'],
    [1.5, 2, 0.5, '1.5..2.0 Ω'],
    [null, null, 0.01, 'any value'],
    // More digits than the display has are printed rather than lost.
    [1.9637, 2, 0.01, '1.9637..2.00 Ω'],
    // A monitor with steps of 10 mΩ cannot show 50 mΩ to the milliohm, and its window does not look as if it could.
    [0, 0.05, 0.01, '0.00..0.05 Ω'],
    [0.002, 0.015, 0.001, '2..15 mΩ'],
    [0.0021, 0.0153, 0.0001, '2.1..15.3 mΩ'],
    [4700, 5100, 1, '4.700..5.100 kΩ'],
    [4700, 5100, 100, '4.7..5.1 kΩ'],
  ])('%d to %d by %d is %s', (least, most, resolution, text) => {
    expect(formatWindow({ least, most }, resolution, 'resistance')).toBe(text);
  });

  test('of an open circuit', () => {
    expect(formatWindow('open', 0.01, 'resistance')).toBe('open');
    expect(roundOutward('open', 0.01)).toBe('open');
  });

  test('is rounded outward to the steps of the display', () => {
    expect(roundOutward({ least: 1.967, most: 3.624 }, 0.01)).toEqual({ least: 1.96, most: 3.63 });
    expect(roundOutward({ least: 1.967, most: 3.624 }, 0.5)).toEqual({ least: 1.5, most: 4 });
    expect(roundOutward({ least: null, most: 0.101 }, 0.1)).toEqual({ least: null, most: 0.2 });
    expect(roundOutward({ least: -0.01, most: null }, 0.1)).toEqual({ least: -0.1, most: null });
  });

  test('stays where it is also after millions of steps, and at zero', () => {
    // 2558.0006 / 0.0001 is 25580005.999999996 in doubles.
    expect(roundOutward({ least: 2558.0006, most: 2558.0006 }, 0.0001)).toEqual({
      least: 2558.0006,
      most: 2558.0006,
    });
    expect(roundOutward({ least: 0, most: 0 }, 0.01)).toEqual({ least: 0, most: 0 });
    expect(roundOutward({ least: -0.25, most: -0.25 }, 0.1)).toEqual({ least: -0.3, most: -0.2 });
  });

  test('without steps is left as it is', () => {
    expect(roundOutward({ least: 1.234, most: Infinity }, 0)).toEqual({ least: 1.234, most: Infinity });
    expect(roundOutward({ least: 1.234, most: Infinity }, 0.01)).toEqual({ least: 1.23, most: Infinity });
  });

  test('stays where it is when it already lies on a step, also with the noise of doubles', () => {
    // 0.1 + 0.2 is 0.30000000000000004 and 1.1 * 3 is 3.3000000000000003 in doubles.
    expect(roundOutward({ least: 0.1 + 0.2, most: 1.1 * 3 }, 0.1)).toEqual({ least: 0.3, most: 3.3 });
    expect(roundOutward({ least: 1.96 - 5e-12, most: 3.63 + 5e-12 }, 0.01)).toEqual({
      least: 1.96,
      most: 3.63,
    });
    expect(roundOutward({ least: 1.96 - 5e-11, most: 3.63 + 5e-11 }, 0.01)).toEqual({
      least: 1.95,
      most: 3.64,
    });
  });
});
