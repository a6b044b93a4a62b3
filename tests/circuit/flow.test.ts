import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { flowBetween, resistanceBetween } from '../../server/src/circuit/circuit.ts';
import type { Edge, Flow } from '../../server/src/circuit/circuit.ts';
import { decades, meshes, seriesAndParallel } from './arbitrary-networks.ts';
import type { Probed } from './arbitrary-networks.ts';
import { pieceAround } from './nodal.ts';

function flowOf({ edges, nodes, from, to }: Probed): Flow {
  const flow = flowBetween(edges, nodes, from, to);
  if (flow === null) throw new Error('no path');
  return flow;
}

const connected = ({ edges, from, to }: Probed): boolean => pieceAround(edges, from).has(to);

/** What flows out of a node over all its edges, and the greatest of these currents. */
function balanceAt(node: number, edges: readonly Edge[], amperes: Float64Array): readonly [number, number] {
  let [sum, greatest] = [0, 0];
  for (const [index, { a, b }] of edges.entries()) {
    const current = amperes[index] ?? NaN;
    if (a === b || (a !== node && b !== node)) continue;
    sum += a === node ? current : -current;
    greatest = Math.max(greatest, Math.abs(current));
  }
  return [sum, greatest];
}

describe('the flow of 1 A through a network', () => {
  test('splits between resistors side by side against their resistance', () => {
    const edges = [
      { a: 0, b: 1, ohms: 3 },
      { a: 1, b: 0, ohms: 6 },
    ];
    const { ohms, amperes, volts } = flowOf({ edges, nodes: 2, from: 0, to: 1 });
    expect(ohms).toBeCloseTo(2, 14);
    expect([...amperes]).toEqual([expect.closeTo(2 / 3, 14), expect.closeTo(-1 / 3, 14)]);
    expect([...volts]).toEqual([ohms, 0]);
  });

  test('Bird, Electrical Circuit Theory and Technology, problem 34.3: 0.75 A of 4 A cross the bridge, 44 V and 50 V', () => {
    const bridge = [
      { a: 0, b: 1, ohms: 4 },
      { a: 0, b: 2, ohms: 1 },
      { a: 2, b: 1, ohms: 8 },
      { a: 1, b: 3, ohms: 16 },
      { a: 2, b: 3, ohms: 40 },
    ];
    const { amperes, volts } = flowOf({ edges: bridge, nodes: 4, from: 0, to: 3 });
    expect(4 * (amperes[2] ?? NaN)).toBeCloseTo(0.75, 12);
    expect(4 * (volts[1] ?? NaN)).toBeCloseTo(44, 12);
    expect(4 * (volts[2] ?? NaN)).toBeCloseTo(50, 12);
  });

  test('leaves dead ends, loose pieces and open resistors without current', () => {
    const edges = [
      { a: 0, b: 1, ohms: 4 },
      { a: 1, b: 2, ohms: 7 },
      { a: 3, b: 4, ohms: 1 },
      { a: 0, b: 1, ohms: Infinity },
      { a: 1, b: 1, ohms: 5 },
    ];
    const { amperes, volts } = flowOf({ edges, nodes: 5, from: 0, to: 1 });
    expect([...amperes]).toEqual([1, 0, 0, 0, 0]);
    expect([...volts]).toEqual([4, 0, 0, NaN, NaN]);
  });

  test('passes through joints of 0 Ω, and past what they bridge', () => {
    const edges = [
      { a: 0, b: 1, ohms: 2 },
      { a: 1, b: 2, ohms: 0 },
      { a: 1, b: 2, ohms: 9 },
      { a: 2, b: 3, ohms: 0 },
      { a: 2, b: 3, ohms: 0 },
      { a: 3, b: 4, ohms: 1 },
    ];
    const { ohms, amperes } = flowOf({ edges, nodes: 5, from: 0, to: 4 });
    expect(ohms).toBeCloseTo(3, 14);
    expect([...amperes]).toEqual([1, 1, expect.closeTo(0, 20), 0.5, 0.5, 1].map((value) => value as number));
  });

  test('has no value where there is no path', () => {
    expect(flowBetween([{ a: 0, b: 1, ohms: 1 }], 3, 0, 2)).toBeNull();
    expect(flowBetween([{ a: 0, b: 1, ohms: 1 }], 2, 1, 1)).toBeNull();
  });

  test('keeps the sum at every node: 1 A goes in, 1 A comes out, over 11 decades', () => {
    fc.assert(
      fc.property(meshes(decades(-5, 6)).filter(connected), (network) => {
        const { amperes } = flowOf(network);
        for (let node = 0; node < network.nodes; node += 1) {
          const expected = node === network.from ? 1 : node === network.to ? -1 : 0;
          const [sum] = balanceAt(node, network.edges, amperes);
          expect(Math.abs(sum - expected)).toBeLessThanOrEqual(1e-13);
        }
      }),
      { numRuns: 500 },
    );
  });

  test('obeys Ohm in every resistor, over 11 decades', () => {
    fc.assert(
      fc.property(meshes(decades(-5, 6)).filter(connected), (network) => {
        const { ohms, amperes, volts } = flowOf(network);
        for (const [index, edge] of network.edges.entries()) {
          const [a = NaN, b = NaN] = [volts[edge.a], volts[edge.b]];
          if (Number.isNaN(a)) continue;
          const drop = (amperes[index] ?? NaN) * edge.ohms;
          expect(Math.abs(a - b - drop)).toBeLessThanOrEqual(1e-13 * Math.max(ohms, edge.ohms));
        }
      }),
      { numRuns: 500 },
    );
  });

  test('never carries more than what goes in, and turns with the probes', () => {
    fc.assert(
      fc.property(meshes(decades(-5, 6)).filter(connected), (network) => {
        const there = flowOf(network);
        const back = flowOf({ ...network, from: network.to, to: network.from });
        for (const [index, amperes] of there.amperes.entries()) {
          expect(Math.abs(amperes)).toBeLessThanOrEqual(1 + 1e-14);
          expect(amperes + (back.amperes[index] ?? NaN)).toBeCloseTo(0, 13);
        }
      }),
    );
  });

  test('has the resistance of the solver, also in large crowded networks', () => {
    fc.assert(
      fc.property(meshes(decades(-5, 6), 80).filter(connected), ({ edges, nodes, from, to }) => {
        const { ohms } = flowOf({ edges, nodes, from, to });
        expect(ohms / resistanceBetween(edges, nodes, from, to)).toBeCloseTo(1, 12);
      }),
      { numRuns: 60 },
    );
  });

  test('in series and parallel every current is accurate to its own last digits, over 11 decades', () => {
    fc.assert(
      fc.property(seriesAndParallel(decades(-5, 6)), (network) => {
        const { ohms, amperes } = flowOf(network);
        // Tellegen: the losses add up to what goes in. All currents run one way here, so each sum is of positives.
        let losses = 0;
        for (const [index, { ohms: own }] of network.edges.entries()) {
          const current = amperes[index] ?? NaN;
          expect(current).toBeGreaterThan(0);
          losses += current * current * own;
        }
        expect(Math.abs(losses / ohms - 1)).toBeLessThanOrEqual(1e-13);
      }),
    );
  });

  // Cohn, 1950, from memory: the resistance rises with each resistor by the square of its share of the current.
  test('is how the resistance depends on each resistor', () => {
    fc.assert(
      fc.property(meshes(decades(-1, 2), 8).filter(connected), fc.nat(), (network, which) => {
        const { edges, nodes, from, to } = network;
        const index = which % edges.length;
        const { amperes } = flowOf(network);
        const own = edges[index]?.ohms ?? NaN;
        const at = (ohms: number): number =>
          resistanceBetween(
            edges.map((edge, other) => (other === index ? { ...edge, ohms } : edge)),
            nodes,
            from,
            to,
          );
        const small = 1e-4;
        const slope = (at(own * (1 + small)) - at(own * (1 - small))) / (2 * small * own);
        expect(slope).toBeCloseTo((amperes[index] ?? NaN) ** 2, 6);
      }),
    );
  });
});
