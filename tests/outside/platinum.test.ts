import { describe, expect, test } from 'vitest';
import type { PartModel } from '../../server/src/circuit/circuit.ts';
import { platinumRange, resistanceAt, resistanceWithin } from '../../server/src/circuit/circuit.ts';
import { platinumRatio, platinumTolerance } from '../../server/src/circuit/platinum.ts';
import { expectPrinted } from './printed.ts';

function pt100(name: 'AA' | 'A' | 'B', celsius: number): PartModel {
  const stated = { least: celsius, nominal: celsius, most: celsius };
  return { kind: 'platinum', r0: 100, class: name, temperature: { stated } };
}

const anywhere = { ambient: 20, entered: new Map<string, number>() };

describe('IEC 60751, resistance of a Pt100, as tabulated by a reference page on platinum sensors', () => {
  test.each([
    [-200, '18.52'],
    [-150, '39.72'],
    [-100, '60.26'],
    [-90, '64.30'],
    [-80, '68.33'],
    [-60, '76.33'],
    [-40, '84.27'],
    [-20, '92.16'],
    [-10, '96.09'],
    [0, '100.00'],
    [10, '103.90'],
    [20, '107.79'],
    [25, '109.73'],
    [40, '115.54'],
    [60, '123.24'],
    [70, '127.08'],
    [80, '130.90'],
    [90, '134.71'],
    [100, '138.51'],
    [150, '157.33'],
    [200, '175.86'],
    [300, '212.05'],
    [400, '247.09'],
    [600, '313.71'],
  ])('%i °C: %s Ω', (celsius, ohms) => {
    expectPrinted(resistanceAt(pt100('B', celsius), anywhere).nominal, ohms);
  });

  test('-160 °C is 35.54 Ω by the formula; a published table prints 35.34', () => {
    const { least, nominal, most } = resistanceAt(pt100('B', -160), anywhere);
    expectPrinted(nominal, '35.54');
    expect(nominal - 35.34).toBeGreaterThan(0.19);
    // Even with the width of class A the printed value would not hold.
    expect(resistanceAt(pt100('A', -160), anywhere).least - 35.34).toBeGreaterThan(0);
    expect([least < nominal, nominal < most]).toEqual([true, true]);
  });

  test('the two branches meet at 0 °C with the same slope', () => {
    const step = 1e-4;
    const below = (platinumRatio(0) - platinumRatio(-step)) / step;
    const above = (platinumRatio(step) - platinumRatio(0)) / step;
    expect(below).toBeCloseTo(above, 9);
  });

  test('coefficient 3.851e-3 per kelvin between 0 and 100 °C, which names the curve', () => {
    expectPrinted((platinumRatio(100) - platinumRatio(0)) / 100, '0.003851');
  });
});

describe('IEC 751:1995, tolerance of a Pt100 in °C and in ohms', () => {
  test.each([
    [-200, '0.55', '0.24', '1.3', '0.56'],
    [-100, '0.35', '0.14', '0.8', '0.32'],
    [0, '0.15', '0.06', '0.3', '0.12'],
    [100, '0.35', '0.13', '0.8', '0.30'],
    [200, '0.55', '0.20', '1.3', '0.48'],
    [300, '0.75', '0.27', '1.8', '0.64'],
    [400, '0.95', '0.33', '2.3', '0.79'],
  ])('%i °C: class A ± %s °C and %s Ω, class B ± %s °C and %s Ω', (celsius, offA, ohmsA, offB, ohmsB) => {
    for (const [name, off, ohms] of [
      ['A', offA, ohmsA],
      ['B', offB, ohmsB],
    ] as const) {
      expectPrinted(platinumTolerance(name, celsius), off);
      const { least, nominal, most } = resistanceAt(pt100(name, celsius), anywhere);
      expectPrinted((most - least) / 2, ohms);
      expect(most - nominal).toBeCloseTo(nominal - least, 2);
    }
  });

  test('class B at 850 °C is ± 1.33 Ω by the formula; a published table prints 1.34', () => {
    const { least, most } = resistanceAt(pt100('B', 850), anywhere);
    expectPrinted((most - least) / 2, '1.33');
  });
});

describe('IEC 60751, classes as reproduced by three reference pages', () => {
  test.each([
    ['AA', 0.1, 0.0017, -50, 250],
    ['A', 0.15, 0.002, -100, 450],
    ['B', 0.3, 0.005, -196, 600],
  ] as const)('class %s: ± (%d + %d |t|) °C from %i to %i °C', (name, constant, slope, from, to) => {
    expect(platinumRange(name)).toEqual({ from, to });
    for (const celsius of [from, 0, to])
      expect(platinumTolerance(name, celsius)).toBeCloseTo(constant + slope * Math.abs(celsius), 12);
  });
});

test('a sensor with a range of temperatures has the least of the coldest and the most of the hottest', () => {
  const sensor: PartModel = { kind: 'platinum', r0: 1000, class: 'B', temperature: 'ambient' };
  const ambient = { least: -40, nominal: 20, most: 60 };
  const window = resistanceWithin(sensor, { ambient, entered: new Map() });
  // Ten times the tabulated Pt100: 84.27 - 0.5 °C, 107.79, 123.24 + 0.6 °C, at 0.39 Ω for each °C (by hand).
  expectPrinted(window.least, '840.7');
  expectPrinted(window.nominal, '1077.9');
  expectPrinted(window.most, '1234.7');
});
