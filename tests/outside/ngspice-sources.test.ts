import fc from 'fast-check';
import { expect, test } from 'vitest';
import { conflictsOf, operatingPoint, voltageBetween } from '../../server/src/circuit/circuit.ts';
import { decades } from '../circuit/arbitrary-networks.ts';
import { circuits } from '../circuit/random-circuits.ts';
import { describeWith } from '../needs.ts';
import { lacksNgspice, operateWithNgspice } from './ngspice.ts';

/** Eight decades, with a joint or a break here and there. */
const eightDecades = fc.oneof(
  { weight: 12, arbitrary: decades(-3, 5) },
  { weight: 1, arbitrary: fc.constant(0) },
  { weight: 1, arbitrary: fc.constant(Infinity) },
);

/** Volt or ampere: what ngspice prints for nothing at all. */
const roundingOfZero = 1e-11;

describeWith(lacksNgspice, '2,000 networks with sources, drawn at random, in one deck', () => {
  const drawn = fc
    .sample(circuits(eightDecades), { numRuns: 3000, seed: 20_250_201 })
    .filter(({ edges, drives, nodes }) => {
      const { joined, stranded } = conflictsOf(edges, drives, nodes);
      return joined.length + stranded.length === 0;
    })
    .slice(0, 2000);
  const expected = operateWithNgspice(drawn);

  /** Greatest voltage of a circuit: what is left of larger ones is accurate to their last digits. */
  const scaleOf = (volts: readonly number[]): number =>
    Math.max(...volts.filter((value) => !Number.isNaN(value)).map(Math.abs));

  test('every potential and every voltage between neighbours in number, to one part in a million', () => {
    expect(drawn).toHaveLength(2000);
    let [numbers, floating] = [0, 0];
    for (const [index, { edges, drives, nodes }] of drawn.entries()) {
      const { volts } = operatingPoint(edges, drives, nodes, 0);
      const other = expected[index]?.volts ?? [];
      const hair = 1e-9 * scaleOf(other) + roundingOfZero;
      for (const [node, value] of volts.entries()) {
        const theirs = other[node] ?? NaN;
        if (Number.isNaN(theirs)) {
          expect(value).toBeNaN();
          floating += 1;
          continue;
        }
        expect(Math.abs(value - theirs)).toBeLessThanOrEqual(1e-6 * Math.abs(theirs) + hair);
        const next = other[(node + 1) % nodes] ?? NaN;
        if (Number.isNaN(next)) continue;
        const across = voltageBetween(edges, drives, nodes, node, (node + 1) % nodes);
        expect(Math.abs(across - (theirs - next))).toBeLessThanOrEqual(1e-6 * Math.abs(theirs - next) + hair);
        numbers += 1;
      }
    }
    expect(numbers).toBeGreaterThan(5000);
    expect(floating).toBeGreaterThan(100);
  });

  test('what every voltage source delivers, to one part in a million', () => {
    let numbers = 0;
    for (const [index, { edges, drives, nodes }] of drawn.entries()) {
      const { delivered } = operatingPoint(edges, drives, nodes, 0);
      const other = expected[index]?.delivered ?? [];
      const hair = 1e-9 * Math.max(...delivered.map(Math.abs)) + roundingOfZero;
      for (const [place, theirs] of other.entries()) {
        if (Number.isNaN(theirs)) continue;
        expect(Math.abs((delivered[place] ?? NaN) - theirs)).toBeLessThanOrEqual(
          1e-6 * Math.abs(theirs) + hair,
        );
        numbers += 1;
      }
    }
    expect(numbers).toBeGreaterThan(1500);
  });
});
