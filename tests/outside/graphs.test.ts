import { describe, expect, test } from 'vitest';
import type { Edge } from '../../server/src/circuit/circuit.ts';
import { resistanceBetween } from '../../server/src/circuit/circuit.ts';
import { expectPrinted } from './printed.ts';

// All resistors of these graphs are 1 Ω.

function complete(nodes: number): readonly Edge[] {
  return Array.from({ length: nodes }, (_, a) =>
    Array.from({ length: a }, (_unused, b) => ({ a, b, ohms: 1 })),
  ).flat();
}

describe('the cube, from memory', () => {
  // Corners are numbered by their coordinates as bits; an edge changes one bit.
  const edges = Array.from({ length: 8 }, (_, corner) =>
    [1, 2, 4].filter((bit) => (corner & bit) === 0).map((bit) => ({ a: corner, b: corner | bit, ohms: 1 })),
  ).flat();

  test.each([
    ['edge', 0b001, 7 / 12],
    ['face diagonal', 0b011, 3 / 4],
    ['body diagonal', 0b111, 5 / 6],
  ])('%s', (_name, corner, ohms) => {
    expect(edges).toHaveLength(12);
    expect(resistanceBetween(edges, 8, 0, corner)).toBeCloseTo(ohms, 14);
  });
});

describe('complete graphs, from memory: 2/n between any two of n nodes', () => {
  test.each([2, 3, 4, 5, 10, 40, 100])('n = %i', (nodes) => {
    const edges = complete(nodes);
    expect(resistanceBetween(edges, nodes, 0, nodes - 1)).toBeCloseTo(2 / nodes, 14);
    expect(resistanceBetween(edges, nodes, 0, 1)).toBeCloseTo(2 / nodes, 14);
  });
});

describe('ladders', () => {
  function ladder(sections: number): number {
    const edges = Array.from({ length: sections }, (_, section) => [
      { a: section, b: section + 1, ohms: 1 },
      { a: section + 1, b: sections + 1, ohms: 1 },
    ]).flat();
    return resistanceBetween(edges, sections + 2, 0, sections + 1);
  }

  test.each([
    [1, 2],
    [2, 5 / 3],
    [3, 13 / 8],
    [4, 34 / 21],
    [5, 89 / 55],
  ])('%i sections, computed from the Fibonacci numbers', (sections, ohms) => {
    expect(ladder(sections)).toBeCloseTo(ohms, 14);
  });

  test('without end: the golden ratio (IEEE Potentials 1982)', () => {
    expectPrinted(ladder(10), '1.6180339985');
    expect(ladder(200)).toBeCloseTo((1 + Math.sqrt(5)) / 2, 14);
  });

  test('with resistors in both rails: 1 + √3, by Q1 = 3 and the next Q = (3Q + 2)/(Q + 1)', () => {
    let byRecursion = 3;
    for (let sections = 1; sections <= 30; sections += 1) {
      const edges = Array.from({ length: sections }, (_, at) => [
        { a: 2 * at, b: 2 * at + 2, ohms: 1 },
        { a: 2 * at + 1, b: 2 * at + 3, ohms: 1 },
        { a: 2 * at + 2, b: 2 * at + 3, ohms: 1 },
      ]).flat();
      expect(resistanceBetween(edges, 2 * sections + 2, 0, 1)).toBeCloseTo(byRecursion, 13);
      byRecursion = (3 * byRecursion + 2) / (byRecursion + 1);
    }
    expectPrinted(byRecursion, '2.7320508076');
    expect(byRecursion).toBeCloseTo(1 + Math.sqrt(3), 13);
  });
});

describe('the square grid', () => {
  // The node in the middle of 151 by 151, 22 801 nodes. The infinite grid: Atkinson and van Steenwijk, Am. J. Phys. 67
  // (1999) 486; 1/2 between neighbours is printed there, the others are from memory. The finite values are computed.
  const size = 151;
  const middle = 75 * size + 75;
  const edges: Edge[] = [];
  for (let node = 0; node < size * size; node += 1) {
    if (node % size < size - 1) edges.push({ a: node, b: node + 1, ohms: 1 });
    if (node + size < size * size) edges.push({ a: node, b: node + size, ohms: 1 });
  }

  test.each([
    ['to the neighbour', 1, '0.500024', 1 / 2],
    ['across a square', size + 1, '0.636668', 2 / Math.PI],
    ['two further', 2, '0.726856', 2 - 4 / Math.PI],
    ['a knight’s move', size + 2, '0.773360', 4 / Math.PI - 1 / 2],
  ])('%s', (_name, offset, finite, infinite) => {
    const ohms = resistanceBetween(edges, size * size, middle, middle + offset);
    expectPrinted(ohms, finite);
    expect(Math.abs(ohms - infinite)).toBeLessThan(1.5e-4);
  });
});
