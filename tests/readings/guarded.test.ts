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
  return {
    words: guardedInWords(reading),
    guarded: guardedOf(reading, bench),
    ifOuter: guardedOf(reading, { ...bench, exact: false }),
  };
}

const fine = 'range: 0..10 Ω, accuracy: 3 % + 0.1 Ω, resolution: 0.01 Ω';

describe('readings that prove a circuit good (JCGM 106, the whole error as guard band)', () => {
  test('lie within its limits by the error at each, on steps of the display', () => {
    // 1.7 · 1.03 + 0.1 = 1.851, up to 1.86; 2.3 · 0.97 - 0.1 = 2.131, down to 2.13.
    const { words, guarded } = readOf('1.7..2.3 Ω', fine);
    expect(guarded).toEqual({ least: 1.86, most: 2.13 });
    expect(words).toBe(
      'a reading of 1.86..2.13 Ω shows that the circuit is good, even at the largest error of the instrument',
    );
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

  test('are not known within an outer bound, unless all of it has none: what lies inside has none either', () => {
    expect(readOf('1.7..2.3 Ω', fine).ifOuter).toBeNull();
    expect(readOf('2.0 Ω', fine).ifOuter).toBe('empty');
  });
});

/**
 * A battery with a divider of twice 1 kΩ, read by a meter of 1 kΩ: under it the lower half is 500 Ω, and the middle has a
 * third of the battery.
 */
function voltageOf(battery: string, across: string, steps: { before?: string; expect?: string } = {}) {
  const { readings, findings } = analysed(`format: 1
title: Guarded voltages
sources:
  battery: { kind: battery, voltage: ${battery}, feeds: [upper] }
instruments:
  hand-meter:
    kind: multimeter
    voltage: { range: 0..20 V, accuracy: 0.5 % + 2 digits, resolution: 0.01 V, input: 1 kΩ }
parts:
  upper: { kind: resistor, resistance: 1 kΩ }
  lower: { kind: resistor, resistance: 1 kΩ }
  loose: { kind: resistor, resistance: 1 kΩ }
network:
  - { source: battery, between: [plus, ground] }
  - { part: upper, between: [plus, middle] }
  - { part: lower, between: [middle, ground] }
  - { part: loose, between: [apart, far] }
steps:
${steps.before ?? ''}  - measure: voltage
    across: [${across}]
    with: hand-meter
${steps.expect ?? ''}`);
  const [reading] = readings.readings;
  const [bench] = reading?.good ?? [];
  if (reading === undefined || bench === undefined) throw new Error('the voltage must be measured once');
  const coarse = findings.filter(({ rule }) => rule === 'meter-too-coarse').map(({ message }) => message);
  const guarded = guardedOf(reading, bench);
  return {
    words: guardedInWords(reading),
    guarded,
    coarse,
    ifOuter: guardedOf(reading, { ...bench, exact: false }),
  };
}

describe('voltages that prove a circuit good', () => {
  test('lie within what a sound one has under the load of the meter, by the error at each end', () => {
    // 3.9 to 4.1 V: 3.9 · 1.005 + 0.02 = 3.9395, up to 3.94; 4.1 · 0.995 - 0.02 = 4.0595, down to 4.05.
    const { words, guarded, coarse } = voltageOf('11.7..12.3 V', 'middle, ground');
    expect(guarded).toEqual({ least: 3.94, most: 4.05 });
    expect(words).toBe(
      'a reading of 3.94..4.05 V shows that the circuit is good, even at the largest error of the instrument',
    );
    expect(coarse).toEqual([]);
  });

  test('within an outer bound prove nothing, since no sound circuit may have all of it; within stated limits they do', () => {
    expect(voltageOf('11.7..12.3 V', 'middle, ground').ifOuter).toBeNull();
    const stated = voltageOf('11.7..12.3 V', 'middle, ground', { expect: '    expect: 3.5..4.5 V\n' });
    expect(stated.ifOuter).toEqual(stated.guarded);
  });

  test('are the same below zero with the probes exchanged', () => {
    expect(voltageOf('11.7..12.3 V', 'ground, middle').guarded).toEqual({ least: -4.05, most: -3.94 });
  });

  test('lie within the stated window where there is one, which may have one limit', () => {
    // 3.5 · 1.005 + 0.02 = 3.5375; 4.5 · 0.995 - 0.02 = 4.4575.
    const both = voltageOf('11.7..12.3 V', 'middle, ground', { expect: '    expect: 3.5..4.5 V\n' });
    expect(both.guarded).toEqual({ least: 3.54, most: 4.45 });
    const one = voltageOf('11.7..12.3 V', 'middle, ground', { expect: '    expect: below 4.5 V\n' });
    expect(one.words).toBe(
      'a reading of below 4.45 V shows that the circuit is good, even at the largest error of the instrument',
    );
    const other = voltageOf('11.7..12.3 V', 'middle, ground', { expect: '    expect: above 3.5 V\n' });
    expect(other.words).toBe(
      'a reading of above 3.54 V shows that the circuit is good, even at the largest error of the instrument',
    );
  });

  test('there are none where the error is wider than the limits, which is told', () => {
    // 3.99 to 4.01 V, and the error is 0.04 V.
    const { words, guarded, coarse } = voltageOf('11.97..12.03 V', 'middle, ground');
    expect(guarded).toBe('empty');
    expect(words).toBe('no reading shows that the circuit is good: the error of the instrument is too large');
    expect(coarse).toHaveLength(1);
  });

  test('nothing is said where no source is on, or where the instrument alone connects the probes', () => {
    const off = voltageOf('11.7..12.3 V', 'middle, ground', { before: '  - disconnect: battery\n' });
    expect([off.guarded, off.words, off.coarse]).toEqual([null, null, []]);
    const floating = voltageOf('11.7..12.3 V', 'apart, ground', { expect: '    expect: below 1 V\n' });
    expect([floating.guarded, floating.words]).toEqual([null, null]);
  });

  test('a stated limit is guarded where no source is on, too', () => {
    // 0.5 · 0.995 - 0.02 = 0.4775.
    const { words } = voltageOf('11.7..12.3 V', 'middle, ground', {
      before: '  - disconnect: battery\n',
      expect: '    expect: below 0.5 V\n',
    });
    expect(words).toBe(
      'a reading of below 0.47 V shows that the circuit is good, even at the largest error of the instrument',
    );
  });
});

test('rounding inward keeps a limit that lies on a step but for the noise of doubles', () => {
  expect(roundInward({ least: 0.1 + 0.2, most: 1.1 * 3 }, 0.1)).toEqual({ least: 0.3, most: 3.3 });
  expect(roundInward({ least: 0.31, most: 0.39 }, 0.1)).toBeNull();
});
