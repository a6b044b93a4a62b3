import fc from 'fast-check';
import { expect, test } from 'vitest';
import { resistanceBetween } from '../../server/src/circuit/circuit.ts';
import type { Probed } from '../circuit/arbitrary-networks.ts';
import { decades, meshes, seriesAndParallel } from '../circuit/arbitrary-networks.ts';
import { describeWith } from '../needs.ts';
import { lacksNgspice, solveWithNgspice } from './ngspice.ts';

/** Eight decades, with a joint or a break here and there. */
const eightDecades = fc.oneof(
  { weight: 10, arbitrary: decades(-3, 5) },
  { weight: 1, arbitrary: fc.constant(0) },
  { weight: 1, arbitrary: fc.constant(Infinity) },
);

function drawn(arbitrary: fc.Arbitrary<Probed>, count: number, seed: number): readonly Probed[] {
  return fc.sample(arbitrary, { numRuns: count, seed });
}

describeWith(lacksNgspice, 'the same resistances as ngspice finds, to one part in a million', () => {
  const groups: readonly (readonly [string, readonly Probed[]])[] = [
    ['meshes', drawn(meshes(eightDecades, 14), 400, 20_250_101)],
    ['series and parallel', drawn(seriesAndParallel(decades(-3, 5)), 200, 20_250_102)],
    ['large meshes of like resistors', drawn(meshes(decades(-1, 1), 60), 100, 20_250_103)],
  ];

  test.each(groups)('%s', (_name, networks) => {
    const expected = solveWithNgspice(networks);
    let numbers = 0;
    for (const [index, { edges, nodes, from, to }] of networks.entries()) {
      const ohms = resistanceBetween(edges, nodes, from, to);
      const other = expected[index] ?? Number.NaN;
      // A voltage of 1e-15 V at 1 A is the rounding of ngspice for 0 Ω.
      if (other === Infinity || Math.abs(other) < 1e-12) expect(ohms).toBe(other === Infinity ? Infinity : 0);
      else {
        expect(Math.abs(ohms / other - 1)).toBeLessThanOrEqual(1e-6);
        numbers += 1;
      }
    }
    expect(numbers).toBeGreaterThan(networks.length / 2);
  });

  test('the deck itself: a divider by hand, a joint, a break, a loose piece', () => {
    const edges = [
      { a: 0, b: 1, ohms: 3 },
      { a: 1, b: 2, ohms: 6 },
      { a: 1, b: 2, ohms: 6 },
      { a: 2, b: 3, ohms: 0 },
      { a: 3, b: 2, ohms: 0 },
      { a: 4, b: 5, ohms: 1 },
      { a: 0, b: 5, ohms: Infinity },
    ];
    const [total, joint, broken, same] = solveWithNgspice([
      { edges, from: 0, to: 3 },
      { edges, from: 2, to: 3 },
      { edges, from: 0, to: 4 },
      { edges, from: 4, to: 4 },
    ]);
    expect(total).toBeCloseTo(6, 9);
    expect(joint).toBeCloseTo(0, 12);
    expect(broken).toBe(Infinity);
    expect(same).toBe(0);
  });
});
