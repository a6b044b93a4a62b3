import fc from 'fast-check';
import { expect, test } from 'vitest';
import { resistanceAt } from '../../server/src/circuit/circuit.ts';
import type { PartModel } from '../../server/src/circuit/circuit.ts';
import { curvatureOf } from '../../server/src/circuit/curvature.ts';

const positive = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const spread = fc
  .tuple(positive(1, 1e5), positive(0, 0.2))
  .map(([value, part]) => ({ least: value * (1 - part), nominal: value, most: value * (1 + part) }));
const tolerance = fc.oneof(
  fc.constant(null),
  positive(0, 5).map((kelvin) => ({ kelvin })),
  positive(0, 0.1).map((fraction) => ({ fraction })),
);

const models: Readonly<Record<string, fc.Arbitrary<PartModel>>> = {
  'copper wire': fc.tuple(fc.constantFrom(0.35, 0.5, 1), spread).map(([squareMillimetres, length]) => ({
    kind: 'copper-wire',
    wire: { squareMillimetres },
    length,
    temperature: 'ambient',
  })),
  'copper winding': spread.map((resistance) => ({
    kind: 'copper-coil',
    resistance,
    at: 20,
    temperature: 'ambient',
  })),
  'thermistor by B': fc
    .tuple(spread, positive(50, 5000), positive(0, 0.1), tolerance)
    .map(([r25, beta, part, off]) => ({
      kind: 'thermistor',
      curve: { r25, beta: { least: beta * (1 - part), nominal: beta, most: beta * (1 + part) } },
      tolerance: off,
      temperature: 'ambient',
    })),
  'thermistor by Steinhart and Hart': fc
    .tuple(
      positive(1e-3, 2.5e-3),
      positive(5e-5, 5e-4),
      fc.oneof(fc.constant(0), positive(1e-12, 1e-5)),
      tolerance,
    )
    .map(([a, b, c, off]) => ({
      kind: 'thermistor',
      curve: { coefficients: [a, b, c] },
      tolerance: off,
      temperature: 'ambient',
    })),
  'platinum sensor': fc
    .tuple(positive(10, 1000), fc.constantFrom('AA' as const, 'A' as const, 'B' as const))
    .map(([r0, name]) => ({ kind: 'platinum', r0, class: name, temperature: 'ambient' })),
};

test.each(Object.entries(models))('a %s bends over its temperature as is said of it', (_, model) => {
  fc.assert(
    fc.property(
      model,
      positive(-60, 150),
      positive(-60, 150),
      positive(0, 1),
      fc.constantFrom('least' as const, 'nominal' as const, 'most' as const),
      (part, one, other, place, end) => {
        const { shape, kinks } = curvatureOf(part);
        const from = Math.min(one, other);
        const to = Math.min(Math.max(one, other), ...kinks.filter((kink) => kink > from));
        const at = (celsius: number): number =>
          resistanceAt(part, { ambient: celsius, entered: new Map() })[end];
        const chord = at(from) + place * (at(to) - at(from));
        const off = at(from + place * (to - from)) - chord;
        const rounding = 1e-12 * Math.max(at(from), at(to));
        if (shape !== 'unknown' && shape !== 'humped') expect(off).toBeLessThanOrEqual(rounding);
        if (shape !== 'unknown' && shape !== 'hollow') expect(off).toBeGreaterThanOrEqual(-rounding);
      },
    ),
    { numRuns: 1000 },
  );
});
