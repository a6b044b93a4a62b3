import { describe, expect, test } from 'vitest';
import { dischargeTime } from '../../server/src/bench/owed.ts';
import type { Reserve } from '../../server/src/model/procedure.ts';
import { expectPrinted, halfDigit } from './printed.ts';

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
  ])('%s', (_, charged, seconds, tolerance) => {
    expect(Math.abs(dischargeTime(charged) - seconds)).toBeLessThanOrEqual(tolerance);
  });

  test.each([
    [1, 1054],
    [2, 2108],
    [5, 5271],
    [60, 63_254],
    [120, 126_508],
  ])(
    'a 500 µF link at 400 V falls to 60 V in %i s through %i Ω (computed from the formula)',
    (seconds, ohms) => {
      expect(dischargeTime(reserve(ohms - 0.5, 500e-6, 400, 60))).toBeLessThan(seconds);
      expect(dischargeTime(reserve(ohms + 0.5, 500e-6, 400, 60))).toBeGreaterThan(seconds);
    },
  );

  test('a reference design of a DC link: 600 µF from 450 V to 60 V in less than 2 s, for which 1654 Ω is the most (computed)', () => {
    expect(dischargeTime(reserve(1654, 600e-6, 450, 60))).toBeLessThan(2);
    expect(dischargeTime(reserve(1655, 600e-6, 450, 60))).toBeGreaterThan(2);
  });

  test('insulation by loss of charge: 300 pF from 300 V to 100 V in 120 s is 0.364 TΩ, not the 0.364 MΩ printed', () => {
    expectPrinted(dischargeTime(reserve(0.364e12, 300e-12, 300, 100)), '120');
    expect(dischargeTime(reserve(0.364e6, 300e-12, 300, 100))).toBeLessThan(0.001);
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

/** Expects a fall to a voltage that is printed with its last digit rounded to take the seconds that stand with it. */
function expectFall(ohms: number, farads: number, from: number, printed: string, seconds: number): void {
  const time = (to: number): number => dischargeTime(reserve(ohms, farads, from, to));
  expect(time(Number(printed) + halfDigit(printed))).toBeLessThanOrEqual(seconds);
  expect(time(Number(printed) - halfDigit(printed))).toBeGreaterThanOrEqual(seconds);
}

/* While a capacitor charges, what it lacks falls as the voltage of one that runs down. */
describe('Bird, Electrical Circuit Theory and Technology, chapter 17', () => {
  test('50 kΩ and 16 µF, time constant 0.8 s, from 100 V: 28.7 V after 1 s, 20 V after 1.28755 s, 1.07 mA after 0.5 s', () => {
    expectFall(50e3, 16e-6, 100, '28.7', 1);
    expectPrinted(dischargeTime(reserve(50e3, 16e-6, 100, 20)), '1.28755');
    // In mA through 50 kΩ.
    expectFall(50e3, 16e-6, 100 / 50, '1.07', 0.5);
    expectPrinted(dischargeTime(reserve(50e3, 16e-6, 100, 100 / Math.E)), '0.8');
  });

  test('15 µF and 47 kΩ charge to 120 V: 75.85 V after one time constant, half in 0.48867 s', () => {
    expectFall(47e3, 15e-6, 120, (120 - 75.85).toFixed(2), 47e3 * 15e-6);
    expectPrinted(dischargeTime(reserve(47e3, 15e-6, 120, 60)), '0.48867');
  });

  test('20 µF and 50 kΩ charge to 20 V: 15 V still on the resistor after 0.288 s, 0.147 mA after 1 s, 17.3 V after 2 s', () => {
    expectPrinted(dischargeTime(reserve(50e3, 20e-6, 20, 15)), '0.288');
    expectPrinted(dischargeTime(reserve(50e3, 20e-6, 20, 20 / Math.E)), '1.0');
    // From 0.4 mA.
    expectFall(50e3, 20e-6, 20 / 50, '0.147', 1);
    expectFall(50e3, 20e-6, 20, (20 - 17.3).toFixed(1), 2);
  });
});

describe('OpenStax College Physics, problem 21.58', () => {
  test('250 kΩ and 80.0 µF have a time constant of 20 s, 260 kΩ and 85.0 µF of a published variant 22.1 s', () => {
    expectPrinted(dischargeTime(reserve(250e3, 80e-6, 100, 100 / Math.E)), '20.0');
    expectPrinted(dischargeTime(reserve(260e3, 85e-6, 100, 100 / Math.E)), '22.1');
  });

  test('through 100 Ω the 80.0 µF are at 0.865 of their voltage after 16 ms: they lack the rest', () => {
    expectFall(100, 80e-6, 1, (1 - 0.865).toFixed(3), 0.016);
  });
});
