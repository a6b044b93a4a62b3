import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { resistanceBetween } from '../../server/src/circuit/circuit.ts';
import type { Edge } from '../../server/src/circuit/circuit.ts';
import { decades, meshes, seriesAndParallel } from './arbitrary-networks.ts';
import { exactResistance, exactly, isWithin } from './fraction.ts';
import { nodalResistance, pieceAround } from './nodal.ts';

const moderate = meshes(decades(-1, 2));

function expectClose(value: number, expected: number, relative: number): void {
  if (expected === Infinity || expected === 0) expect(value).toBe(expected);
  else expect(Math.abs(value / expected - 1)).toBeLessThanOrEqual(relative);
}

describe('the resistance between two nodes', () => {
  test('of one resistor is its own', () => {
    expect(resistanceBetween([{ a: 0, b: 1, ohms: 2.5 }], 2, 0, 1)).toBe(2.5);
  });

  test('is nothing from a node to itself', () => {
    expect(resistanceBetween([{ a: 0, b: 1, ohms: 2.5 }], 2, 1, 1)).toBe(0);
  });

  test('is infinite where nothing connects them', () => {
    const edges = [
      { a: 0, b: 1, ohms: 1 },
      { a: 2, b: 3, ohms: 1 },
    ];
    expect(resistanceBetween(edges, 4, 0, 3)).toBe(Infinity);
    expect(resistanceBetween([], 2, 0, 1)).toBe(Infinity);
    expect(resistanceBetween([{ a: 0, b: 1, ohms: Infinity }], 2, 0, 1)).toBe(Infinity);
  });

  test('is nothing where 0 Ω joins them, over however many joints', () => {
    const edges = [
      { a: 0, b: 2, ohms: 0 },
      { a: 1, b: 3, ohms: 0 },
      { a: 3, b: 2, ohms: 0 },
      { a: 0, b: 1, ohms: 5 },
    ];
    expect(resistanceBetween(edges, 4, 0, 1)).toBe(0);
  });

  test('joins both sides of 0 Ω', () => {
    const edges = [
      { a: 0, b: 1, ohms: 2 },
      { a: 1, b: 2, ohms: 0 },
      { a: 2, b: 3, ohms: 3 },
      { a: 1, b: 3, ohms: 6 },
    ];
    // 2 Ω, then 3 Ω beside 6 Ω.
    expect(resistanceBetween(edges, 4, 0, 3)).toBeCloseTo(4, 14);
  });

  test('does not see dead ends, loose pieces or a resistor with both ends on one node', () => {
    const edges = [
      { a: 0, b: 1, ohms: 4 },
      { a: 1, b: 2, ohms: 7 },
      { a: 3, b: 4, ohms: 1 },
      { a: 1, b: 1, ohms: 0.001 },
    ];
    expect(resistanceBetween(edges, 5, 0, 1)).toBe(4);
  });

  test('takes a resistance too small to have a conductance as 0 Ω', () => {
    expect(resistanceBetween([{ a: 0, b: 1, ohms: 1e-310 }], 2, 0, 1)).toBe(0);
    const edges = [
      { a: 0, b: 1, ohms: 1e-310 },
      { a: 1, b: 2, ohms: 5 },
    ];
    expect(resistanceBetween(edges, 3, 0, 2)).toBe(5);
  });
});

describe('in networks drawn at random', () => {
  test('it agrees with the node equations solved as a dense matrix', () => {
    fc.assert(
      fc.property(moderate, ({ edges, nodes, from, to }) => {
        expectClose(
          resistanceBetween(edges, nodes, from, to),
          nodalResistance(edges, nodes, from, to),
          1e-10,
        );
      }),
      { numRuns: 500 },
    );
  });

  test('it agrees with the rules for series and parallel over 11 decades', () => {
    fc.assert(
      fc.property(seriesAndParallel(decades(-5, 6)), ({ edges, nodes, from, to, byRule }) => {
        expectClose(resistanceBetween(edges, nodes, from, to), byRule, 1e-13);
      }),
      { numRuns: 300 },
    );
  });

  test('it agrees with exact fractions to 1e-12 over 11 decades', () => {
    const connected = meshes(decades(-5, 6), 9).filter(({ edges, from, to }) =>
      pieceAround(edges, from).has(to),
    );
    fc.assert(
      fc.property(connected, ({ edges, nodes, from, to }) => {
        const value = resistanceBetween(edges, nodes, from, to);
        expect(isWithin(value, exactResistance(edges, from, to), 1e-12)).toBe(true);
      }),
      { numRuns: 150 },
    );
  });

  test('it agrees with exact fractions where every node is joined to every other, over 11 decades', () => {
    const nodes = 19;
    const pairs = Array.from({ length: nodes }, (_, a) =>
      Array.from({ length: a }, (_unused, b) => [a, b] as const),
    ).flat();
    const powers = fc.array(fc.integer({ min: -18, max: 18 }), {
      minLength: pairs.length,
      maxLength: pairs.length,
    });
    fc.assert(
      fc.property(powers, (exponents) => {
        const edges = pairs.map(([a, b], index) => ({ a, b, ohms: 2 ** (exponents[index] ?? 0) }));
        const value = resistanceBetween(edges, nodes, 0, nodes - 1);
        expect(isWithin(value, exactResistance(edges, 0, nodes - 1), 1e-13)).toBe(true);
      }),
      { numRuns: 5 },
    );
  });

  test('it agrees with the node equations in large crowded networks', () => {
    fc.assert(
      fc.property(meshes(decades(-1, 1), 80), ({ edges, nodes, from, to }) => {
        expectClose(
          resistanceBetween(edges, nodes, from, to),
          nodalResistance(edges, nodes, from, to),
          1e-10,
        );
      }),
      { numRuns: 60 },
    );
  });

  test('the fractions themselves tell 1e-12 apart', () => {
    const third = { over: 1n, under: 3n };
    expect(isWithin(1 / 3, third, 1e-15)).toBe(true);
    expect(isWithin((1 / 3) * (1 + 2e-12), third, 1e-12)).toBe(false);
    expect(exactly(0.1).under).toBe(2n ** 55n);
  });

  test('it rises, or stays, when one resistor rises (Rayleigh)', () => {
    fc.assert(
      fc.property(
        moderate,
        fc.nat(),
        fc.double({ min: 1, max: 100, noNaN: true }),
        (network, which, times) => {
          const { edges, nodes, from, to } = network;
          const index = which % edges.length;
          const raised = edges.map((edge, at) =>
            at === index ? { ...edge, ohms: edge.ohms * times } : edge,
          );
          const before = resistanceBetween(edges, nodes, from, to);
          expect(resistanceBetween(raised, nodes, from, to)).toBeGreaterThanOrEqual(before * (1 - 1e-13));
        },
      ),
    );
  });

  test('it doubles, to the last bit, when all resistors double', () => {
    fc.assert(
      fc.property(meshes(decades(-5, 6)), ({ edges, nodes, from, to }) => {
        const doubled = edges.map((edge) => ({ ...edge, ohms: 2 * edge.ohms }));
        expect(resistanceBetween(doubled, nodes, from, to)).toBe(
          2 * resistanceBetween(edges, nodes, from, to),
        );
      }),
    );
  });

  test('it is the same with the probes exchanged', () => {
    fc.assert(
      fc.property(meshes(decades(-5, 6)), ({ edges, nodes, from, to }) => {
        expectClose(
          resistanceBetween(edges, nodes, to, from),
          resistanceBetween(edges, nodes, from, to),
          1e-13,
        );
      }),
    );
  });

  test('it does not depend on how nodes are numbered or resistors listed', () => {
    fc.assert(
      fc.property(meshes(decades(-5, 6)), ({ edges, nodes, from, to }) => {
        const turned = [...edges]
          .reverse()
          .map(({ a, b, ohms }) => ({ a: nodes - 1 - b, b: nodes - 1 - a, ohms }));
        expectClose(
          resistanceBetween(turned, nodes, nodes - 1 - from, nodes - 1 - to),
          resistanceBetween(edges, nodes, from, to),
          1e-12,
        );
      }),
    );
  });

  // Rosen, 1924, from memory: between each two legs the product of their conductances over the sum of all.
  test('it is the same with a star or with its mesh', () => {
    const star = fc.array(fc.tuple(fc.nat(), decades(-3, 3)), { minLength: 2, maxLength: 5 });
    fc.assert(
      fc.property(meshes(decades(-3, 3), 8), star, ({ edges, nodes, from, to }, drawn) => {
        const legs = drawn.map(([node, ohms]): Edge => ({ a: node % nodes, b: nodes, ohms }));
        const sum = legs.reduce((total, { ohms }) => total + 1 / ohms, 0);
        const mesh = legs.flatMap((one, index) =>
          legs
            .slice(index + 1)
            .map((other): Edge => ({ a: one.a, b: other.a, ohms: one.ohms * other.ohms * sum })),
        );
        expectClose(
          resistanceBetween([...edges, ...legs], nodes + 1, from, to),
          resistanceBetween([...edges, ...mesh], nodes, from, to),
          1e-12,
        );
      }),
    );
  });

  test('it obeys the triangle rule of distances', () => {
    fc.assert(
      fc.property(moderate, fc.nat(), ({ edges, nodes, from, to }, which) => {
        const middle = which % nodes;
        const direct = resistanceBetween(edges, nodes, from, to);
        const around =
          resistanceBetween(edges, nodes, from, middle) + resistanceBetween(edges, nodes, middle, to);
        if (around !== Infinity) expect(direct).toBeLessThanOrEqual(around * (1 + 1e-12));
      }),
    );
  });

  // Foster, 1949, from memory: over all resistors of a connected network, R(between its ends) / its ohms sums to nodes - 1.
  test("it obeys Foster's theorem", () => {
    fc.assert(
      fc.property(meshes(decades(-3, 3), 8), ({ edges, nodes, from }) => {
        const piece = pieceAround(edges, from);
        const inside = edges.filter(({ a, b }) => a !== b && piece.has(a));
        const sum = inside.reduce(
          (total, { a, b, ohms }) => total + resistanceBetween(edges, nodes, a, b) / ohms,
          0,
        );
        expect(sum).toBeCloseTo(piece.size - 1, 9);
      }),
    );
  });
});
