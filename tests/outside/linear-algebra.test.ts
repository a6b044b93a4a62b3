import fc from 'fast-check';
import { lusolve } from 'mathjs';
import { describe, expect, test } from 'vitest';
import {
  conflictsOf,
  operatingPoint,
  resistanceBetween,
  voltageBetween,
} from '../../server/src/circuit/circuit.ts';
import type { Drive, Edge } from '../../server/src/circuit/circuit.ts';
import { decades, meshes } from '../circuit/arbitrary-networks.ts';
import { exactResistance, exactVolts, exactly, isWithin, rounded } from '../circuit/fraction.ts';
import { pieceAround } from '../circuit/nodal.ts';
import { circuits } from '../circuit/random-circuits.ts';
import { assembled } from './equations.ts';

/** Potentials above node 0, by the equations of nodes and sources and the LU decomposition of mathjs. */
function byLu(edges: readonly Edge[], drives: readonly Drive[], ground = 0): ReadonlyMap<number, number> {
  const { nodes, matrix, right } = assembled(edges, drives, ground);
  const solved = nodes.length === 0 ? [] : (lusolve(matrix, right) as number[][]);
  return new Map([[ground, 0], ...nodes.map((node, index) => [node, solved[index]?.[0] ?? NaN] as const)]);
}

describe('the same voltages as mathjs finds by LU decomposition', () => {
  test('in 400 networks with sources, over 4 decades, to 1e-9 of the greatest', () => {
    const drawn = fc
      .sample(circuits(decades(-1, 3), 14), { numRuns: 500, seed: 20_250_301 })
      .filter(({ edges, drives, nodes }) => {
        const { joined, stranded } = conflictsOf(edges, drives, nodes);
        return joined.length + stranded.length === 0;
      })
      .slice(0, 400);
    expect(drawn).toHaveLength(400);
    for (const { edges, drives, nodes } of drawn) {
      const theirs = byLu(edges, drives);
      const { volts } = operatingPoint(edges, drives, nodes, 0);
      const scale = Math.max(1, ...[...theirs.values()].map(Math.abs));
      for (const [node, value] of volts.entries()) {
        const other = theirs.get(node);
        if (other === undefined) expect(value).toBeNaN();
        else expect(Math.abs(value - other)).toBeLessThanOrEqual(1e-9 * scale);
      }
    }
  });
});

describe('over 11 decades, against exact fractions', () => {
  const drawn = fc
    .sample(meshes(decades(-5, 6), 9), { numRuns: 150, seed: 20_250_302 })
    .filter(({ edges, from, to }) => pieceAround(edges, from).has(to));

  test('resistances hold to 1e-12, where LU decomposition does not', () => {
    let worstLu = 0;
    for (const { edges, nodes, from, to } of drawn) {
      const exact = exactResistance(edges, from, to);
      expect(isWithin(resistanceBetween(edges, nodes, from, to), exact, 1e-12)).toBe(true);
      const lu = byLu(edges, [{ a: from, b: to, kind: 'current', value: 1 }], to).get(from) ?? NaN;
      worstLu = Math.max(worstLu, Math.abs(lu / rounded(exact) - 1));
    }
    expect(worstLu).toBeGreaterThan(1e-9);
  });

  test('potentials above the minus of one source hold to 1e-12 of themselves', () => {
    for (const { edges, nodes, from, to } of drawn) {
      const drives = [{ a: from, b: to, kind: 'voltage', value: 12 }] as const;
      const exact = exactVolts(edges, drives, to);
      for (const [node, volts] of exact)
        if (node !== to)
          expect(isWithin(voltageBetween(edges, drives, nodes, node, to), volts, 1e-12)).toBe(true);
    }
  });

  test('with several sources voltages hold to 1e-12 of the sources', () => {
    const several = fc
      .sample(circuits(decades(-5, 6), 8), { numRuns: 150, seed: 20_250_303 })
      .map((circuit) => ({ ...circuit, drives: circuit.drives.filter(({ kind }) => kind === 'voltage') }))
      .filter(({ edges, drives, nodes }) => conflictsOf(edges, drives, nodes).joined.length === 0);
    let compared = 0;
    for (const { edges, drives, nodes } of several) {
      const exact = exactVolts(edges, drives, 0);
      const scale = drives.reduce((sum, { value }) => sum + Math.abs(value), 0);
      const { volts } = operatingPoint(edges, drives, nodes, 0);
      for (const [node, value] of exact) {
        const own = voltageBetween(edges, drives, nodes, node, 0);
        expect(Math.abs(own - rounded(value))).toBeLessThanOrEqual(1e-12 * scale);
        expect(Math.abs((volts[node] ?? NaN) - rounded(value))).toBeLessThanOrEqual(1e-12 * scale);
        compared += 1;
      }
    }
    expect(compared).toBeGreaterThan(300);
  });

  test('the fractions round to the double they came from', () => {
    for (const value of [0.1, -1 / 3, 12, 1e-5, 123_456.789, 2 ** -40])
      expect(rounded(exactly(value))).toBe(value);
  });
});
