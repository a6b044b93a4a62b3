import { describe, expect, test } from 'vitest';
import type { PartModel } from '../../server/src/circuit/circuit.ts';
import { resistanceAt as resistanceUnder } from '../../server/src/circuit/circuit.ts';
import {
  conductorResistance,
  copper,
  crossSection,
  gaugeDiameter,
  temperatureFactor,
} from '../../server/src/circuit/materials.ts';
import type { Span, Wire } from '../../server/src/quantity/quantity.ts';
import { expectPrinted } from './printed.ts';

const thousandFeet = 304.8;

function resistanceAt(model: PartModel, celsius: number): Span {
  return resistanceUnder(model, { ambient: celsius, entered: new Map() });
}

function wireOf(wire: Wire, metres: number): PartModel {
  return {
    kind: 'copper-wire',
    wire,
    length: { least: metres, nominal: metres, most: metres },
    temperature: 'ambient',
  };
}

describe('IEC 60028, standard annealed copper at 20 °C', () => {
  test('1 m of 1 mm² has 1/58 Ω, quoted as 0.017241 Ω', () => {
    expectPrinted(resistanceAt(wireOf({ squareMillimetres: 0.9999 }, 1), 20).nominal * 0.9999, '0.017241');
    expect(resistanceAt(wireOf({ squareMillimetres: 1 }, 58), 20).nominal).toBeCloseTo(1, 14);
  });

  test('is not pure copper: the CRC Handbook prints 1.678e-8 Ω·m at 20 °C, 2.7 % less', () => {
    expectPrinted(100 * (1 - 0.01678 / copper.resistivity), '2.7');
  });

  test('10.37 Ω for a foot of one circular mil, the usual copper rule of wire tables', () => {
    const circularMil = (Math.PI / 4) * 0.0254 ** 2;
    expectPrinted(conductorResistance(copper.resistivity, 0.3048, circularMil), '10.37');
  });

  test('the coefficient 0.00393 vanishes at -234.45 °C (computed), and resistance stays at zero below', () => {
    expect(temperatureFactor(copper.coefficient, 20, -234.45)).toBeCloseTo(0, 4);
    expect(temperatureFactor(copper.coefficient, 20, -260)).toBe(0);
  });

  test('100 °C is 1.3144 times 20 °C (computed from the coefficient)', () => {
    const wire = wireOf({ squareMillimetres: 0.35 }, 10);
    expectPrinted(resistanceAt(wire, 100).nominal / resistanceAt(wire, 20).nominal, '1.3144');
  });
});

describe('American wire gauge, Floyd, Electric Circuit Fundamentals, as tabulated by HyperPhysics (20 °C)', () => {
  test.each([
    [10, '101.89', '0.9989'],
    [11, '90.74', '1.260'],
    [12, '80.80', '1.588'],
    [13, '71.96', '2.003'],
    [14, '64.08', '2.525'],
    [15, '57.07', '3.184'],
    [16, '50.82', '4.016'],
    [17, '45.26', '5.064'],
    [18, '40.30', '6.385'],
    [19, '35.89', '8.051'],
    [20, '31.96', '10.15'],
    [21, '28.46', '12.80'],
    [22, '25.35', '16.14'],
    [23, '22.57', '20.36'],
    [24, '20.10', '25.67'],
  ])('AWG %i is %s mil and %s Ω per 1000 ft', (awg, mils, ohms) => {
    // The table cuts two of its diameters off instead of rounding them.
    expect(Math.abs(gaugeDiameter(awg) / 0.0254 - Number(mils))).toBeLessThan(0.01);
    expectPrinted(resistanceAt(wireOf({ awg }, thousandFeet), 20).nominal, ohms);
  });
});

describe('the spread of a gauge number', () => {
  test.each([
    [16, '19/29', 4.27],
    [18, '16/30', 6.48],
    [18, '7/26', 5.86],
    [18, '19/30', 5.46],
    [22, '7/30', 14.74],
  ])('holds AWG %i stranded %s, %d Ω per 1000 ft (a published chart of stranded wire)', (awg, _, ohms) => {
    const { least, most } = resistanceAt(wireOf({ awg }, thousandFeet), 20);
    expect(ohms).toBeGreaterThan(least);
    expect(ohms).toBeLessThan(most);
  });

  test.each([
    [10, 1.24, 1.26],
    [12, 1.98, 2.01],
    [14, 3.14, 3.19],
    [16, 4.99, 5.08],
    [18, 7.95, 8.08],
  ])('holds AWG %i stranded, %d, and coated, %d (NEC chapter 9 table 8, 75 °C)', (awg, stranded, coated) => {
    const { least, most } = resistanceAt(wireOf({ awg }, thousandFeet), 75);
    expect(stranded).toBeGreaterThan(least);
    expect(coated).toBeLessThan(most);
  });
});

describe('NEC chapter 9 table 8, solid uncoated copper at 75 °C', () => {
  test.each([
    [10, '1.21'],
    [12, '1.93'],
    [14, '3.07'],
    [18, '7.77'],
  ])('AWG %i has %s Ω per 1000 ft', (awg, ohms) => {
    expectPrinted(resistanceAt(wireOf({ awg }, thousandFeet), 75).nominal, ohms);
  });

  test('AWG 16 is printed as 4.89 from rounded circular mils, 0.13 % above the exact gauge', () => {
    const ohms = resistanceAt(wireOf({ awg: 16 }, thousandFeet), 75).nominal;
    expectPrinted(ohms, '4.88');
    expectPrinted(100 * (4.89 / ohms - 1), '0.13');
  });

  test('the 20 °C value is about 82 % of the 75 °C value, the rule of thumb for that table', () => {
    const wire = wireOf({ awg: 12 }, 1);
    expectPrinted(resistanceAt(wire, 20).nominal / resistanceAt(wire, 75).nominal, '0.82');
  });
});

describe('IEC 60228, greatest resistance at 20 °C in Ω/km', () => {
  // Size; classes 1 and 2, plain and metal-coated; class 5, the same.
  const rows = [
    [0.5, '36.0', '36.7', '39.0', '40.1'],
    [0.75, '24.5', '24.8', '26.0', '26.7'],
    [1, '18.1', '18.2', '19.5', '20.0'],
    [1.5, '12.1', '12.2', '13.3', '13.7'],
    [2.5, '7.41', '7.56', '7.98', '8.21'],
    [4, '4.61', '4.70', '4.95', '5.09'],
    [6, '3.08', '3.11', '3.30', '3.39'],
    [10, '1.83', '1.84', '1.91', '1.95'],
    [16, '1.15', '1.16', '1.21', '1.24'],
    [25, '0.727', '0.734', '0.780', '0.795'],
    [35, '0.524', '0.529', '0.554', '0.565'],
    [50, '0.387', '0.391', '0.386', '0.393'],
    [70, '0.268', '0.270', '0.272', '0.277'],
    [95, '0.193', '0.195', '0.206', '0.210'],
    [120, '0.153', '0.154', '0.161', '0.164'],
    [150, '0.124', '0.126', '0.129', '0.132'],
    [185, '0.0991', '0.100', '0.106', '0.108'],
    [240, '0.0754', '0.0762', '0.0801', '0.0817'],
    [300, '0.0601', '0.0607', '0.0641', '0.0654'],
  ] as const;

  test.each(rows)(
    '%d mm²: solid and stranded up to %s, coated %s; flexible up to %s, coated %s, which is the most that is taken',
    (squareMillimetres, plain, coated, flexible, flexibleCoated) => {
      const { least, nominal, most } = resistanceAt(wireOf({ squareMillimetres }, 1000), 20);
      expectPrinted(most, flexibleCoated);
      // All classes allow more than the ideal wire has, by up to 19.2 %.
      expect(nominal).toBe(least);
      for (const limit of [plain, coated, flexible]) {
        expect(nominal).toBeLessThan(Number(limit));
        expect(Number(limit)).toBeLessThan(most);
      }
      expect(most / nominal).toBeLessThan(1.192);
    },
  );

  test('a size outside the table has a wider spread than any that stands in it', () => {
    const { least, nominal, most } = resistanceAt(wireOf({ squareMillimetres: 0.35 }, 1000), 20);
    expectPrinted(nominal, '49.3');
    for (const [squareMillimetres] of rows) {
      const listed = resistanceAt(wireOf({ squareMillimetres }, 1000), 20);
      expect(least / nominal).toBeLessThan(listed.least / listed.nominal);
      expect(most / nominal).toBeGreaterThan(listed.most / listed.nominal);
    }
  });

  test('the limit rises with temperature as the copper does', () => {
    const wire = wireOf({ squareMillimetres: 0.5 }, 1000);
    expect(resistanceAt(wire, 75).most).toBeCloseTo(40.1 * 1.21615, 10);
    expect(resistanceAt(wire, 75).least).toBeCloseTo((1000 / 29) * 1.21615, 10);
  });

  test('the length of a wire has a spread of its own', () => {
    const { least, nominal, most } = resistanceAt(
      {
        kind: 'copper-wire',
        wire: { squareMillimetres: 0.5 },
        length: { least: 29, nominal: 58, most: 100 },
        temperature: 'ambient',
      },
      20,
    );
    expect(least).toBeCloseTo(1, 12);
    expect(nominal).toBeCloseTo(2, 12);
    expect(most).toBeCloseTo(4.01, 12);
  });
});

describe('the straight line of resistance over temperature', () => {
  test.each([
    [5, '1.064'],
    [10, '1.042'],
    [15, '1.020'],
    [20, '1.000'],
    [25, '0.980'],
    [30, '0.962'],
    [35, '0.943'],
    [40, '0.926'],
    [50, '0.893'],
    [60, '0.862'],
    [70, '0.833'],
    [80, '0.806'],
    [90, '0.781'],
    [100, '0.758'],
  ])(
    'IEC 60228 corrects a reading at %i °C to 20 °C by %s, with the rounded coefficient 0.004',
    (celsius, factor) => {
      expectPrinted(1 / temperatureFactor(0.004, 20, celsius), factor);
    },
  );

  test('with 0.00393 the same corrections come out otherwise (computed), and that is what is used here', () => {
    const wire = wireOf({ awg: 20 }, 1);
    const correction = (celsius: number): number =>
      resistanceAt(wire, 20).nominal / resistanceAt(wire, celsius).nominal;
    expectPrinted(correction(5), '1.063');
    expectPrinted(correction(25), '0.981');
    expectPrinted(correction(50), '0.895');
    expectPrinted(correction(90), '0.784');
  });
});

describe('J. O. Bird, Electrical Circuit Theory and Technology, chapter 3', () => {
  test('example 1: 600 Ω at 5 m is 960 Ω at 8 m, and 420 Ω at 3.5 m', () => {
    const resistivity = 600 / 5;
    expect(conductorResistance(resistivity, 8, 1)).toBeCloseTo(960, 9);
    expect(conductorResistance(resistivity, 3.5, 1)).toBeCloseTo(420, 9);
  });

  test('example 2: 300 Ω at 2 mm² is 120 Ω at 5 mm², and 750 Ω at 0.8 mm²', () => {
    expect(conductorResistance(600, 1, 5)).toBeCloseTo(120, 9);
    expect(conductorResistance(600, 1, 0.8)).toBeCloseTo(750, 9);
  });

  test('example 3: 0.16 Ω of 3 mm² and 8 m, drawn to 1 mm², is 1.44 Ω', () => {
    expect(conductorResistance((0.16 * 3) / 8, 8 * 3, 1)).toBeCloseTo(1.44, 12);
  });

  test('example 4: 2000 m of 100 mm² at 0.03 µΩ·m is 0.6 Ω', () => {
    expect(conductorResistance(0.03, 2000, 100)).toBeCloseTo(0.6, 12);
  });

  test('example 5: 40 m at 0.02 µΩ·m is 0.25 Ω with 3.2 mm²', () => {
    expect(conductorResistance(0.02, 40, 3.2)).toBeCloseTo(0.25, 12);
  });

  test('example 6: 1500 m of 0.17 mm² at 0.017 µΩ·m is 150 Ω', () => {
    expect(conductorResistance(0.017, 1500, 0.17)).toBeCloseTo(150, 9);
  });

  test('example 7: 1200 m of 12 mm diameter at 1.7e-8 Ω·m is 0.180 Ω', () => {
    expectPrinted(conductorResistance(0.017, 1200, (Math.PI / 4) * 12 ** 2), '0.180');
  });

  test('examples 8 to 12: up and down the line of a coefficient', () => {
    expectPrinted(100 * temperatureFactor(0.0043, 0, 70), '130.1');
    expectPrinted(27 / temperatureFactor(0.0038, 0, 35), '23.83');
    expectPrinted(1000 * temperatureFactor(-0.0005, 0, 80), '960');
    expectPrinted(10 * temperatureFactor(0.004, 20, 100), '13.2');
    expectPrinted(200 * temperatureFactor(0.0039, 18, 69.28), '240.0');
  });

  test('example 13: a coefficient for 0 °C is not one for 20 °C; 200 Ω at 20 °C is 252 Ω at 90 °C, not 256', () => {
    const atZero = 200 / temperatureFactor(0.004, 0, 20);
    expectPrinted(atZero * temperatureFactor(0.004, 0, 90), '252');
    expectPrinted(200 * temperatureFactor(0.004, 20, 90), '256');
  });
});

describe('figures that are often mistaken for each other', () => {
  test('0.0043 per kelvin belongs to 0 °C: the same copper has 0.00393 at 20 °C and 0.004265 at 0 °C (NBS Handbook 100, from memory)', () => {
    const atZero = temperatureFactor(copper.coefficient, 20, 0);
    const perKelvin = (temperatureFactor(copper.coefficient, 20, 1) - atZero) / atZero;
    expectPrinted(perKelvin, '0.004265');
    expectPrinted(perKelvin, '0.0043');
  });

  test('a list of materials gives copper 0.004041, which is neither: at 90 °C it would be 0.6 % more', () => {
    const ours = temperatureFactor(copper.coefficient, 20, 90);
    expectPrinted(100 * (temperatureFactor(0.004041, 20, 90) / ours - 1), '0.6');
  });

  test.each([
    [14, '3.07'],
    [12, '1.93'],
    [10, '1.21'],
  ])('NEC chapter 9 table 8: a page for stranded wire prints the solid values of AWG %i, %s', (awg, ohms) => {
    expectPrinted(resistanceAt(wireOf({ awg }, thousandFeet), 75).nominal, ohms);
  });

  test('a bus cable of 0.25 to 0.34 mm² is given as 70 mΩ/m (CANopen manuals): it lies in the spread of 0.25 mm²', () => {
    const { least, most } = resistanceAt(wireOf({ squareMillimetres: 0.25 }, 1), 20);
    expect(0.07).toBeGreaterThan(least);
    expect(0.07).toBeLessThan(most);
  });

  test.each([
    [0.13, 136],
    [0.22, 84.8],
    [0.35, 54.4],
  ])(
    'road-vehicle cable of %d mm², at most %d Ω/km (ISO 6722-1, from memory), lies in the spread',
    (size, ohms) => {
      const { nominal, most } = resistanceAt(wireOf({ squareMillimetres: size }, 1000), 20);
      expect(ohms).toBeGreaterThan(nominal);
      expect(ohms).toBeLessThan(most);
    },
  );

  test.each([
    [0.5, 37.1],
    [0.75, 24.7],
    [1, 18.5],
    [1.5, 12.7],
    [2.5, 7.6],
    [4, 4.71],
    [6, 3.14],
    [10, 1.82],
    [16, 1.16],
    [25, 0.743],
    [35, 0.527],
    [50, 0.368],
    [70, 0.259],
    [95, 0.196],
    [120, 0.153],
  ])(
    'road-vehicle cable of %d mm², at most %d Ω/km (ISO 6722-1, from memory), is held by class 5',
    (size, ohms) => {
      const { nominal, most } = resistanceAt(wireOf({ squareMillimetres: size }, 1000), 20);
      expect(ohms).toBeGreaterThan(nominal);
      expect(ohms).toBeLessThan(most);
    },
  );
});

describe('a coil of copper, IEC 60034-1', () => {
  const coil = (ohms: number, at: number): PartModel => ({
    kind: 'copper-coil',
    resistance: { least: 0.95 * ohms, nominal: ohms, most: 1.05 * ohms },
    at,
    temperature: 'ambient',
  });

  test('its resistance is in proportion to 234.5 °C + t', () => {
    const { least, nominal, most } = resistanceAt(coil(12, 20), 100);
    expect(nominal).toBeCloseTo((12 * 334.5) / 254.5, 12);
    expect(least / nominal).toBeCloseTo(0.95, 12);
    expect(most / nominal).toBeCloseTo(1.05, 12);
  });

  test('from 20 to 100 °C that is 1.3143 times, and 1.3144 by the coefficient of IEC 60028', () => {
    const factor = resistanceAt(coil(1, 20), 100).nominal;
    expectPrinted(factor, '1.3143');
    expectPrinted(temperatureFactor(copper.coefficient, 20, 100), '1.3144');
  });

  test('at the temperature at which it is stated nothing is added, whatever that is', () => {
    for (const at of [-20, 0, 20, 23, 75]) expect(resistanceAt(coil(5, at), at).nominal).toBe(5);
  });

  test.each([
    [28, 1.0312],
    // Worked example of an uncertainty program: 1 Ω at 20 °C, coefficient 0.0039, at 28 °C.
  ])(
    'at %i °C 1 Ω is %d Ω by the rounded coefficient 0.0039, and the coil law agrees to 0.1 %%',
    (celsius, ohms) => {
      expect(Math.abs(resistanceAt(coil(1, 20), celsius).nominal / ohms - 1)).toBeLessThan(0.001);
    },
  );
});

test('ASTM B258, rule from memory: AWG 36 is 5 mil, AWG 0000 is 92 times that, each gauge the 39th root of 92 apart', () => {
  expect(gaugeDiameter(36)).toBe(0.127);
  expect(gaugeDiameter(-3) / gaugeDiameter(36)).toBeCloseTo(92, 12);
  expect(crossSection({ awg: 36 })).toBeCloseTo((Math.PI / 4) * 0.127 ** 2, 15);
});
