import { describe, expect, test } from 'vitest';
import { coldResistance, hotResistance, resistanceAt } from '../../server/src/circuit/circuit.ts';
import { temperatureFactor } from '../../server/src/circuit/materials.ts';
import { expectPrinted } from './printed.ts';

describe('a cold filament, estimated from its rating', () => {
  test('Halliday and Resnick, table 26-1: 2.9 V and 0.30 A give 9.67 Ω hot; 1.1 Ω at 20 °C lies in the estimate', () => {
    const watts = 2.9 * 0.3;
    expectPrinted(hotResistance(2.9, watts), '9.67');
    // At 1751 °C by its coefficient, printed as 1.8e3.
    expectPrinted(1.1 * temperatureFactor(4.5e-3, 20, 1751), '9.67');
    const { least, most } = coldResistance(2.9, watts);
    expect(1.1).toBeGreaterThan(least);
    expect(1.1).toBeLessThan(most);
  });

  test('OpenStax College Physics: 0.350 Ω at 20 °C, 4.8 Ω hot, lies in the estimate', () => {
    const hot = 0.35 * temperatureFactor(4.5e-3, 20, 20 + 2830);
    expectPrinted(hot, '4.8');
    // A lamp with that hot resistance at 12 V.
    const { least, most } = coldResistance(12, 12 ** 2 / hot);
    expect(0.35).toBeGreaterThan(least);
    expect(0.35).toBeLessThan(most);
  });

  test('Jones and Langmuir (from memory): 2000 to 2500 K is 10.03 to 13.08 times 300 K, inside the estimate', () => {
    const { least, most } = coldResistance(10, 10);
    for (const ratio of [10.03, 13.08]) {
      expect(10 / ratio).toBeGreaterThan(least);
      expect(10 / ratio).toBeLessThan(most);
    }
  });

  test('is never taken from V²/P alone: 13.5 V 5 W is 36.45 Ω hot and at most an eighth of that cold', () => {
    expect(hotResistance(13.5, 5)).toBeCloseTo(36.45, 10);
    const cold = resistanceAt(
      { kind: 'lamp-rating', volts: 13.5, watts: 5 },
      { ambient: 20, entered: new Map() },
    );
    expect(cold.most).toBeCloseTo(36.45 / 8, 10);
    expect(cold.least).toBeCloseTo(36.45 / 15, 10);
    expect(cold.nominal ** 2).toBeCloseTo(cold.least * cold.most, 10);
  });
});
