import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { PartModel } from '../../server/src/circuit/circuit.ts';
import { dependenceOf, resistanceAt, resistanceWithin } from '../../server/src/circuit/circuit.ts';
import type { Span } from '../../server/src/quantity/quantity.ts';
import { expectPrinted } from './printed.ts';

const exactly = (value: number): Span => ({ least: value, nominal: value, most: value });

function at(model: PartModel, celsius: number): Span {
  return resistanceAt(model, { ambient: celsius, entered: new Map() });
}

function steinhartHart(a: number, b: number, c: number): PartModel {
  return { kind: 'thermistor', curve: { coefficients: [a, b, c] }, tolerance: null, temperature: 'ambient' };
}

describe('10 kΩ NTC, coefficients of a module guide, table C-1 of a probe manual', () => {
  const probe = steinhartHart(1.129148e-3, 2.34125e-4, 8.76741e-8);

  // The manual rounds its own coefficients otherwise: its ohms differ from these by less than 0.3 %.
  test.each([
    [-40, 336103.2],
    [-30, 176804.8],
    [-20, 97006.9],
    [-10, 55303.9],
    [0, 32650.9],
    [1, 31030.8],
  ])('%i °C: %d Ω', (celsius, ohms) => {
    expect(at(probe, celsius).nominal / ohms).toBeCloseTo(1, 2);
    expect(Math.abs(at(probe, celsius).nominal / ohms - 1)).toBeLessThan(0.003);
  });

  test('10 kΩ at 25 °C, which names it', () => {
    expect(Math.abs(at(probe, 25).nominal / 10_000 - 1)).toBeLessThan(0.0005);
  });
});

/*
 * The table looks garbled: no curve with C above zero goes through all five rows. But it is the row at 40 °C alone that is
 * off. The curve through three of the others has C above zero and meets the fourth.
 */
describe('a published table of five rows, of which no curve meets all: one row is off that of the other four', () => {
  // A + B x + C x³ = 1/T through the rows at 0, 25 and 50 °C: divided differences of Steinhart and Hart.
  const rows = [
    [0, 32128],
    [25, 9814],
    [50, 3542],
  ] as const;
  const [x0, x1, x2] = rows.map(([, ohms]) => Math.log(ohms)) as [number, number, number];
  const [y0, y1, y2] = rows.map(([celsius]) => 1 / (celsius + 273.15)) as [number, number, number];
  const c = ((y2 - y0) / (x2 - x0) - (y1 - y0) / (x1 - x0)) / ((x2 - x1) * (x0 + x1 + x2));
  const b = (y1 - y0) / (x1 - x0) - c * (x0 ** 2 + x0 * x1 + x1 ** 2);
  const through = steinhartHart(y0 - b * x0 - c * x0 ** 3, b, c);

  test('the curve through 0, 25 and 50 °C has C above zero', () => {
    expect(c).toBeGreaterThan(0);
  });

  test.each([...rows, [20, 12262] as const])('%i °C: %i Ω lies on one curve', (celsius, ohms) => {
    expect(Math.abs(at(through, celsius).nominal / ohms - 1)).toBeLessThan(1e-4);
  });

  test('40 °C: 5331 Ω is printed, and that curve has 1.9 % less', () => {
    expectPrinted(100 * (1 - at(through, 40).nominal / 5331), '1.9');
  });
});

describe('three-point fit shown as the usual default of calculators (from memory)', () => {
  const fitted = steinhartHart(2.108508e-3, 7.979205e-5, 6.535076e-7);

  test.each([
    [5, 25_000],
    [25, 10_000],
    [45, 4_000],
  ])('%i °C: %i Ω', (celsius, ohms) => {
    expect(Math.abs(at(fitted, celsius).nominal / ohms - 1)).toBeLessThan(1e-4);
  });
});

describe('B value: formula and B 3380 K, 10 kΩ of a thermistor FAQ; figures computed from them', () => {
  const ntc: PartModel = {
    kind: 'thermistor',
    curve: { r25: exactly(10_000), beta: exactly(3380) },
    tolerance: { fraction: 0.03 },
    temperature: 'ambient',
  };

  test.each([
    [-40, 1e3, '235.83'],
    [-20, 1e3, '75.02'],
    [0, 1e3, '28.22'],
    [50, 1e3, '4.160'],
    [85, 1e3, '1.497'],
    [100, 1e3, '1.024'],
  ])('%i °C, in units of %d Ω: %s', (celsius, unit, text) => {
    expectPrinted(at(ntc, celsius).nominal / unit, text);
  });

  test('10 kΩ ± 3 % at 25 °C', () => {
    const { least, nominal, most } = at(ntc, 25);
    expect([least, nominal, most].map((ohms) => Math.round(ohms))).toEqual([9700, 10000, 10300]);
  });

  test('its slope at 25 °C is -B/T² = -3.80 % for each kelvin (by hand)', () => {
    const slope = (at(ntc, 25.01).nominal - at(ntc, 24.99).nominal) / 0.02 / 10_000;
    expectPrinted(100 * slope, '-3.80');
  });
});

describe('how a thermistor may differ from its curve', () => {
  const curve = {
    r25: { least: 9_900, nominal: 10_000, most: 10_100 },
    beta: { least: 3346, nominal: 3380, most: 3414 },
  };
  const loose: PartModel = { kind: 'thermistor', curve, tolerance: null, temperature: 'ambient' };

  test('a spread of B does nothing at 25 °C and widens away from it on both sides', () => {
    const width = (celsius: number): number => {
      const { least, nominal, most } = at(loose, celsius);
      return (most - least) / nominal;
    };
    expect(width(25)).toBeCloseTo(0.02, 12);
    expect(width(0)).toBeGreaterThan(width(15));
    expect(width(85)).toBeGreaterThan(width(50));
    expect(width(50)).toBeGreaterThan(0.021);
  });

  test('holds every thermistor with values inside, and is met at the ends', () => {
    const part = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(part, part, fc.double({ min: -40, max: 130, noNaN: true }), (r, b, celsius) => {
        const ohms = (9_900 + 200 * r) * Math.exp((3346 + 68 * b) * (1 / (celsius + 273.15) - 1 / 298.15));
        const { least, most } = at(loose, celsius);
        expect(ohms).toBeGreaterThanOrEqual(least * (1 - 1e-12));
        expect(ohms).toBeLessThanOrEqual(most * (1 + 1e-12));
        const ends = [0, 1].flatMap((x) =>
          [0, 1].map(
            (y) => (9_900 + 200 * x) * Math.exp((3346 + 68 * y) * (1 / (celsius + 273.15) - 1 / 298.15)),
          ),
        );
        expect(Math.min(...ends) / least).toBeCloseTo(1, 12);
        expect(Math.max(...ends) / most).toBeCloseTo(1, 12);
      }),
    );
  });

  test('± 1 °C is the resistance one kelvin warmer and one colder', () => {
    const sensor: PartModel = {
      ...loose,
      curve: { coefficients: [1.129148e-3, 2.34125e-4, 8.76741e-8] },
      tolerance: { kelvin: 1 },
    };
    const bare: PartModel = { ...sensor, tolerance: null };
    expect(at(sensor, 60).least).toBe(at(bare, 61).nominal);
    expect(at(sensor, 60).most).toBe(at(bare, 59).nominal);
    expect(at(sensor, 60).nominal).toBe(at(bare, 60).nominal);
  });

  test('over a range the least is at the hottest: it falls with temperature', () => {
    expect(dependenceOf(loose)).toEqual({ on: 'ambient', trend: 'falls' });
    const ambient = { least: 10, nominal: 22.5, most: 35 };
    const window = resistanceWithin(loose, { ambient, entered: new Map() });
    expect(window.least).toBe(at(loose, 35).least);
    expect(window.most).toBe(at(loose, 10).most);
  });

  test('the equation of Steinhart and Hart is solved exactly, whatever its coefficients', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5e-4, max: 3e-3, noNaN: true }),
        fc.double({ min: 5e-5, max: 5e-4, noNaN: true }),
        fc.oneof(fc.constant(0), fc.double({ min: 1e-12, max: 1e-6, noNaN: true })),
        fc.double({ min: -40, max: 150, noNaN: true }),
        (a, b, c, celsius) => {
          const x = Math.log(at(steinhartHart(a, b, c), celsius).nominal);
          expect((a + b * x + c * x ** 3) * (celsius + 273.15)).toBeCloseTo(1, 10);
        },
      ),
    );
  });
});

test('R. K. Rajput, Electronic Measurements, chapter 7: the straight line 100 Ω less 5 % for each kelvin gives 50 Ω at 35 °C; a curve does not', () => {
  // B from the slope at 25 °C: 0.05 T².
  const beta = 0.05 * 298.15 ** 2;
  const model: PartModel = {
    kind: 'thermistor',
    curve: { r25: exactly(100), beta: exactly(beta) },
    tolerance: null,
    temperature: 'ambient',
  };
  expect(at(model, 35).nominal).toBeGreaterThan(60);
  expect(100 * (1 - 0.05 * 10)).toBe(50);
});
