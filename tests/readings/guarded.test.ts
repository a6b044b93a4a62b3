import { describe, expect, test } from 'vitest';
import { roundInward } from '../../server/src/quantity/quantity.ts';
import { guardedInWords, guardedOf } from '../../server/src/readings/guarded.ts';
import { analysed } from './analysed.ts';

/** A loop of nothing but its monitor and a resistor, so that the sums can be done by hand. */
function readOf(resistor: string, monitor: string, expected = '') {
  const { readings } = analysed(`format: 1
title: Guarded
sources:
  battery: { kind: battery, voltage: 12.6 V, feeds: [unit], wait: 3 min }
instruments:
  unit: { kind: monitor, ${monitor} }
parts:
  end: { kind: resistor, resistance: ${resistor} }
loops:
  loop: { path: [unit, end] }
steps:
  - ignition: on
  - read: loop
${expected}`);
  const [reading] = readings.readings;
  const [bench] = reading?.good ?? [];
  if (reading === undefined || bench === undefined) throw new Error('the loop must be read once');
  return { words: guardedInWords(reading), guarded: guardedOf(reading, bench) };
}

const fine = 'range: 0..10 Ω, accuracy: 3 % + 0.1 Ω, resolution: 0.01 Ω';

describe('readings that prove a circuit good (JCGM 106, the whole error as guard band)', () => {
  test('lie within its limits by the error at each, on steps of the display', () => {
    // 1.7 · 1.03 + 0.1 = 1.851, up to 1.86; 2.3 · 0.97 - 0.1 = 2.131, down to 2.13.
    const { words, guarded } = readOf('1.7..2.3 Ω', fine);
    expect(guarded).toEqual({ least: 1.86, most: 2.13 });
    expect(words).toBe('1.86..2.13 Ω proves the circuit itself good');
  });

  test('lie within the stated window where there is one', () => {
    // 1.5 · 1.03 + 0.1 = 1.645; 3.0 · 0.97 - 0.1 = 2.81.
    expect(readOf('1.7..2.3 Ω', fine, '    expect: 1.5..3.0 Ω\n').guarded).toEqual({
      least: 1.65,
      most: 2.81,
    });
    // No lower limit: nothing to guard there.
    expect(readOf('1.7..2.3 Ω', fine, '    expect: below 3.0 Ω\n').guarded).toEqual({ least: 0, most: 2.81 });
  });

  test('there are none where the error or the display is too coarse', () => {
    expect(readOf('2.0 Ω', fine).guarded).toBe('empty');
    // 1.851..2.131 holds 2 on a display in steps of 0.5, 1.851..1.937 does not.
    expect(readOf('1.7..2.3 Ω', fine.replace('0.01 Ω', '0.5 Ω')).guarded).toEqual({ least: 2, most: 2 });
    expect(readOf('1.7..2.1 Ω', fine.replace('0.01 Ω', '0.5 Ω')).guarded).toBe('empty');
  });
});

test('rounding inward keeps a limit that lies on a step but for the noise of doubles', () => {
  expect(roundInward({ least: 0.1 + 0.2, most: 1.1 * 3 }, 0.1)).toEqual({ least: 0.3, most: 3.3 });
  expect(roundInward({ least: 0.31, most: 0.39 }, 0.1)).toBeNull();
});
