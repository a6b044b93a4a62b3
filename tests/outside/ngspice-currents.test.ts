import fc from 'fast-check';
import { expect, test } from 'vitest';
import { conflictsOf, currentWindow } from '../../server/src/circuit/circuit.ts';
import type { Drive, Edge, InCurrent, Network, Source } from '../../server/src/circuit/circuit.ts';
import type { Span } from '../../server/src/quantity/quantity.ts';
import { decades } from '../circuit/arbitrary-networks.ts';
import { circuits } from '../circuit/random-circuits.ts';
import type { Circuit } from '../circuit/random-circuits.ts';
import { describeWith } from '../needs.ts';
import { lacksNgspice, operateWithNgspice } from './ngspice.ts';

const workshop = { ambient: { least: 20, nominal: 20, most: 20 }, entered: new Map<string, Span>() };

/** How many of the resistors have a spread; all others are exact. */
const loose = 4;

function spanOf(ohms: number, index: number): Span {
  return { least: ohms, nominal: ohms, most: index < loose ? ohms * (1.1 + 0.4 * index) : ohms };
}

function windowOf({ edges, drives }: Circuit, instrument: InCurrent) {
  const network: Network = edges.map(({ a, b, ohms }, index) => ({
    id: `r${index}`,
    between: [`n${a}`, `n${b}`],
    part: { kind: 'stated', resistance: spanOf(ohms, index) },
  }));
  const sources: readonly Source[] = drives.map(({ a, b, kind, value }, index) => ({
    id: `s${index}`,
    between: [`n${a}`, `n${b}`],
    kind,
    value: { least: value, nominal: value, most: value },
  }));
  return currentWindow(network, sources, instrument, workshop);
}

/** Every corner of the box, with a source of 0 V in the way of the current: ngspice tells what it carries. */
function cornersOf(circuit: Circuit, cut: (edges: readonly Edge[]) => readonly Edge[], from: number) {
  const { edges, drives, nodes } = circuit;
  return Array.from({ length: 2 ** loose }, (_, corner) => {
    const at = edges.map((edge, index) => {
      const { least, most } = spanOf(edge.ohms, index);
      return { ...edge, ohms: (corner >> index) % 2 === 1 && index < loose ? most : least };
    });
    const sense: Drive = { a: from, b: nodes, kind: 'voltage', value: 0 };
    return { edges: cut(at), drives: [...drives, sense], nodes: nodes + 1 };
  });
}

const drawn = fc
  .sample(circuits(decades(-1, 3), 7), { numRuns: 400, seed: 20_261_130 })
  .filter(({ edges, drives, nodes }) => {
    const { joined, stranded } = conflictsOf(edges, drives, nodes);
    return joined.length + stranded.length === 0 && edges[0]?.a !== edges[0]?.b;
  })
  .slice(0, 150);

function held(
  instrumentOf: (circuit: Circuit) => InCurrent,
  cut: (circuit: Circuit) => (edges: readonly Edge[]) => readonly Edge[],
  fromOf: (circuit: Circuit) => number,
): number {
  const corners = drawn.map((circuit) => cornersOf(circuit, cut(circuit), fromOf(circuit)));
  const points = operateWithNgspice(corners.flat());
  let numbers = 0;
  for (const [index, circuit] of drawn.entries()) {
    const amperes = points
      .slice(index * 2 ** loose, (index + 1) * 2 ** loose)
      .map(({ delivered }) => -(delivered.at(-1) ?? NaN));
    if (amperes.some(Number.isNaN)) continue;
    const window = windowOf(circuit, instrumentOf(circuit));
    if (window.kind !== 'number') throw new Error(`No window: ${window.kind}`);
    expect(window.exact).toBe(true);
    const hair = 1e-6 * Math.max(...amperes.map(Math.abs)) + 1e-10;
    expect(Math.abs(window.value.least - Math.min(...amperes))).toBeLessThanOrEqual(hair);
    expect(Math.abs(window.value.most - Math.max(...amperes))).toBeLessThanOrEqual(hair);
    numbers += 1;
  }
  return numbers;
}

describeWith(
  lacksNgspice,
  'currents of networks drawn at random, over the corners of four resistances',
  () => {
    test('around one of them, which changes nothing', () => {
      const numbers = held(
        () => ({ kind: 'around', element: 'r0' }),
        ({ nodes }) =>
          (edges) =>
            edges.map((edge, index) => (index === 0 ? { ...edge, a: nodes } : edge)),
        ({ edges }) => edges[0]?.a ?? 0,
      );
      expect(numbers).toBeGreaterThan(80);
    });

    test('through an instrument of half an ohm between two nodes', () => {
      const numbers = held(
        ({ edges }) => ({
          kind: 'between',
          nodes: [`n${edges[0]?.a}`, `n${edges[0]?.b}`],
          burden: { least: 0.5, nominal: 0.5, most: 0.5 },
        }),
        ({ nodes, edges: [first] }) =>
          (edges) => [...edges, { a: nodes, b: first?.b ?? 0, ohms: 0.5 }],
        ({ edges }) => edges[0]?.a ?? 0,
      );
      expect(numbers).toBeGreaterThan(80);
    });
  },
);
