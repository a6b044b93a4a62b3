import { describe, expect, test } from 'vitest';
import { analysed } from '../readings/analysed.ts';

/* Stated windows are held against what stands on the display, of which nobody knows whether it rounds up or down. */

function told(resistor: string, expected: string): readonly string[] {
  const { findings } = analysed(`format: 1
title: Displayed
sources:
  battery: { kind: battery, voltage: 12.6 V, feeds: [unit], wait: 3 min }
instruments:
  unit: { kind: monitor, range: 0..10 Ω, accuracy: 3 % + 0.1 Ω, resolution: 0.1 Ω }
parts:
  end: { kind: resistor, resistance: ${resistor} }
loops:
  loop: { path: [unit, end] }
steps:
  - ignition: on
  - read-codes: unit
  - clear-codes: unit
  - read: loop
${expected}`);
  // An open loop also sets a code, which is not the matter here.
  return findings.map(({ rule }) => rule).filter((rule) => rule !== 'codes-not-cleared');
}

describe('a stated window', () => {
  test('has to hold all that the display can show', () => {
    const excluding = (expected: string) => told('2.2..2.5..2.8 Ω', `    expect: ${expected}\n`);
    // 2.2 · 0.97 - 0.1 = 2.034, 2.8 · 1.03 + 0.1 = 2.984.
    expect(excluding('2.0..3.0 Ω')).toEqual([]);
    expect(excluding('2.03..3.0 Ω')).toEqual(['expect-excludes-good']);
    expect(excluding('2.0..2.99 Ω')).toEqual(['expect-excludes-good']);
  });
});

describe('a circuit beyond the range', () => {
  test('reads open like a broken one, and nothing proves it good', () => {
    expect(told('220 Ω ± 1 %', '')).toEqual(['meter-too-coarse']);
    expect(told('220 Ω ± 1 %', '    expect: open\n')).toEqual([]);
    expect(told('2.0..2.6 Ω', '')).toEqual([]);
  });
});
