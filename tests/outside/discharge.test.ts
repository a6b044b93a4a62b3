import { describe, expect, test } from 'vitest';
import { dischargeTime } from '../../server/src/bench/owed.ts';
import type { Reserve } from '../../server/src/text/procedure.ts';

const exactly = (value: number) => ({ least: value, nominal: value, most: value });

function reserve(ohms: number, farads: number, from: number, to: number): Reserve {
  return {
    bleed: exactly(ohms),
    capacitance: exactly(farads),
    chargedTo: exactly(from),
    safeBelow: exactly(to),
  };
}

describe('how long a reserve needs to run down, t = R C ln(V0/V)', () => {
  test.each([
    // Rows read in the named source, or in a page that reproduces it.
    [
      'OpenStax College Physics, problem 21.58: 250 kΩ, 80.0 µF, to 0.250 %, in 120 s',
      reserve(250e3, 80e-6, 100, 0.25),
      120,
      0.5,
    ],
    [
      'a published variant of it: 260 kΩ, 85.0 µF, to 0.350 %, in 125 s',
      reserve(260e3, 85e-6, 100, 0.35),
      125,
      0.5,
    ],
    [
      'a calculator page: 100 µF, 10 kΩ, 12 V to 1 V, in 2.485 s',
      reserve(10e3, 100e-6, 12, 1),
      2.485,
      0.0005,
    ],
    [
      'Bird, Electrical Circuit Theory and Technology, ch. 17: 50 kΩ, 16 µF, 100 V to 20 V, in 1.29 s',
      reserve(50e3, 16e-6, 100, 20),
      1.29,
      0.005,
    ],
    [
      'a 500 µF link at 400 V falls to 60 V in 5 s through 5271 Ω (computed from the formula)',
      reserve(5271, 500e-6, 400, 60),
      5,
      0.001,
    ],
  ])('%s', (_, charged, seconds, tolerance) => {
    expect(Math.abs(dischargeTime(charged) - seconds)).toBeLessThanOrEqual(tolerance);
  });

  test('one time constant leaves 36.8 %: 325 V is 119.6 V after it, and 60 V needs 1.69 of them (computed)', () => {
    expect(dischargeTime(reserve(1e6, 1e-6, 325, 119.6))).toBeCloseTo(1, 3);
    expect(dischargeTime(reserve(1e6, 1e-6, 325, 60))).toBeCloseTo(1.69, 2);
  });

  test('tolerances are taken to the slow side, and a reserve that starts below the safe voltage needs no time', () => {
    const wide: Reserve = {
      bleed: { least: 90, nominal: 100, most: 110 },
      capacitance: { least: 0.008, nominal: 0.01, most: 0.012 },
      chargedTo: { least: 20, nominal: 24, most: 25 },
      safeBelow: { least: 2, nominal: 2.5, most: 3 },
    };
    expect(dischargeTime(wide)).toBeCloseTo(110 * 0.012 * Math.log(25 / 2), 12);
    expect(dischargeTime(reserve(100, 0.01, 2, 2))).toBe(0);
  });
});
