import { describe, expect, test } from 'vitest';
import { fuseResistance } from '../../server/src/circuit/circuit.ts';

/** Rated ampere and milliohms. */
type Published = readonly (readonly [amperes: number, milliohms: number])[];

/** Cold resistance of blade fuses, as makers publish it; from memory. */
const medium: Published = [
  [1, 123],
  [2, 53.5],
  [3, 31.1],
  [4, 22.8],
  [5, 17.85],
  [7.5, 10.91],
  [10, 7.7],
  [15, 4.8],
  [20, 3.38],
  [25, 2.52],
  [30, 1.97],
  [40, 1.44],
];
const miniature: Published = [
  [2, 54.9],
  [3, 31.5],
  [4, 22.9],
  [5, 17.1],
  [7.5, 10.66],
  [10, 7.51],
  [15, 4.58],
  [20, 3.21],
  [25, 2.42],
  [30, 1.89],
];

describe('a blade fuse, estimated from its rated current', () => {
  test('voltage drop charts: 1 mV is 130 mA through 10 A, 218 mA through a miniature one of 15 A', () => {
    for (const [amperes, through] of [
      [10, 0.13],
      [15, 0.218],
    ] as const) {
      const { least, nominal, most } = fuseResistance(amperes);
      const shown = 0.001 / through;
      expect(shown).toBeGreaterThan(least);
      expect(shown).toBeLessThan(most);
      expect(Math.abs(shown / nominal - 1)).toBeLessThan(0.07);
    }
  });

  test('a fuse of 15 A: published with 4.8 mΩ, measured with 4.5 mΩ at about 20 °C', () => {
    const { least, nominal, most } = fuseResistance(15);
    expect(Math.abs(nominal / 4.8e-3 - 1)).toBeLessThan(0.02);
    expect(4.5e-3).toBeGreaterThan(least);
    expect(4.5e-3).toBeLessThan(most);
  });

  test.each([
    ['type C', medium],
    ['type F', miniature],
  ] as const)('%s, from memory: within a tenth of what is published', (_, published) => {
    for (const [amperes, milliohms] of published)
      expect(Math.abs((fuseResistance(amperes).nominal * 1000) / milliohms - 1)).toBeLessThan(0.11);
  });
});
