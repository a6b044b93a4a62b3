import { expect, test } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import type { Drive, Edge } from '../../server/src/circuit/circuit.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import type { Reading } from '../../server/src/readings/reading.ts';
import { chanceFrom } from '../oracle/chance.ts';
import type { Chance } from '../oracle/chance.ts';
import { describeWith } from '../needs.ts';
import { lacksNgspice, operateWithNgspice, solveWithNgspice } from './ngspice.ts';

/*
 * Procedures that measure random networks by hand, written as files and read by the whole program, against ngspice. The
 * netlists are made beside the files from what was drawn, by node numbers, and share nothing with the program.
 */

interface Drawn {
  readonly id: string;
  readonly a: number;
  readonly b: number;
  readonly least: number;
  readonly nominal: number;
  readonly most: number;
  /** The connector that it is a pin of. */
  readonly connector?: string;
}

interface Asked {
  readonly quantity: 'resistance' | 'voltage';
  readonly a: number;
  readonly b: number;
  readonly unplugged: readonly string[];
}

interface Case {
  readonly text: string;
  readonly drawn: readonly Drawn[];
  readonly sources: readonly Drive[];
  readonly nodes: number;
  readonly asked: readonly Asked[];
}

const input = 10e6;
const nameOf = (node: number): string => (node === 0 ? 'ground' : `n${node}`);

function pair(chance: Chance, nodes: number): { readonly a: number; readonly b: number } {
  const a = chance.whole(0, nodes - 1);
  const b = chance.whole(0, nodes - 2);
  return { a, b: b >= a ? b + 1 : b };
}

function drawnCase(seed: number): Case {
  const chance = chanceFrom(seed);
  const nodes = chance.whole(4, 9);
  const drawn: Drawn[] = Array.from({ length: chance.whole(nodes, 2 * nodes) }, (_, at) => {
    const nominal = Number((10 ** (chance.draw() * 5 - 1)).toPrecision(3));
    const spread = chance.pick([0.01, 0.05, 0.2]);
    return {
      id: `part-${at}`,
      ...pair(chance, nodes),
      least: nominal * (1 - spread),
      nominal,
      most: nominal * (1 + spread),
    };
  });
  const connectors = Array.from({ length: chance.whole(1, 3) }, (_, at) => `K${at + 1}`);
  for (const connector of connectors)
    for (let pin = 1; pin <= chance.whole(1, 2); pin += 1)
      drawn.push({
        id: `${pin}`,
        ...pair(chance, nodes),
        least: 0.005,
        nominal: 0.01,
        most: 0.015,
        connector,
      });
  const [plus, supply] = [chance.whole(1, nodes - 1), chance.whole(1, nodes - 1)];
  const sources: Drive[] = [{ a: plus, b: 0, kind: 'voltage', value: 12 }];
  if (supply !== plus) sources.push({ a: supply, b: 0, kind: 'voltage', value: 5 });
  const unplugged = chance.some(connectors, 0.4);
  const asked: Asked[] = [
    ...Array.from({ length: 3 }, () => ({
      quantity: 'voltage' as const,
      ...pair(chance, nodes),
      unplugged: [],
    })),
    ...Array.from({ length: 2 }, () => ({ quantity: 'voltage' as const, ...pair(chance, nodes), unplugged })),
    ...Array.from({ length: 5 }, () => ({
      quantity: 'resistance' as const,
      ...pair(chance, nodes),
      unplugged,
    })),
  ];
  const measure = ({ quantity, a, b }: Asked): string =>
    `  - measure: ${quantity}\n    across: [${nameOf(a)}, ${nameOf(b)}]\n    with: hand-meter\n`;
  const parts = drawn.filter(({ connector }) => connector === undefined);
  const pins = drawn.filter(({ connector }) => connector !== undefined);
  const between = ({ a, b }: Drawn): string => `between: [${nameOf(a)}, ${nameOf(b)}]`;
  // Every node is there, also where nothing but the meter ends at it.
  const stubs = Array.from(
    { length: nodes - 1 },
    (_, at) => `  - { part: stub-${at + 1}, between: [n${at + 1}, far-${at + 1}] }\n`,
  );
  const text = `format: 1
title: A random network
sources:
  battery: { kind: battery, voltage: 12 V, resistance: 0 Ω, feeds: [part-0] }
${supply === plus ? '' : '  supply: { kind: regulated, voltage: 5 V, resistance: 0 Ω, from: battery }\n'}instruments:
  hand-meter:
    kind: multimeter
    zeroed: true
    resistance: { range: 0..40 MΩ, accuracy: 1 %, resolution: 0.001 Ω }
    voltage: { range: 0..100 V, accuracy: 1 %, resolution: 0.001 V, input: 10 MΩ }
parts:
${parts.map(({ id, least, nominal, most }) => `  ${id}: { kind: resistor, resistance: ${least}..${nominal}..${most} Ω }\n`).join('')}${stubs.map((_, at) => `  stub-${at + 1}: { kind: series, resistance: 1 Ω }\n`).join('')}connectors:
${connectors.map((id) => `  ${id}: { contact: 5..15 mΩ }\n`).join('')}network:
  - { source: battery, between: [${nameOf(plus)}, ground] }
${supply === plus ? '' : `  - { source: supply, between: [${nameOf(supply)}, ground] }\n`}${parts.map((part) => `  - { part: ${part.id}, ${between(part)} }\n`).join('')}${pins.map((pin) => `  - { connector: ${pin.connector ?? ''}, pin: ${pin.id}, ${between(pin)} }\n`).join('')}${stubs.join('')}steps:
${asked.slice(0, 3).map(measure).join('')}${unplugged.map((id) => `  - unplug: ${id}\n`).join('')}${asked.slice(3, 5).map(measure).join('')}  - disconnect: battery
${asked.slice(5).map(measure).join('')}`;
  return { text, drawn, sources, nodes, asked };
}

type Corner = 'least' | 'nominal' | 'most';

function edgesOf({ drawn }: Case, { unplugged }: Asked, corner: Corner): Edge[] {
  return drawn
    .filter(({ connector }) => connector === undefined || !unplugged.includes(connector))
    .map(({ a, b, [corner]: ohms }) => ({ a, b, ohms }));
}

function readingsOf({ text, asked }: Case): readonly Reading[] {
  const analysis = analyse(snapshotOf([{ id: 'random.procedure.yaml', text }]), 'random.procedure.yaml');
  expect(analysis.procedure().findings.map(({ message }) => message)).toEqual([]);
  const { readings } = finish(analysis.windows()).value;
  expect(readings.length).toBe(asked.length);
  return readings;
}

const cases = Array.from({ length: 250 }, (_, seed) => drawnCase(seed + 5000));

describeWith(lacksNgspice, 'what is measured by hand in 250 random networks is what ngspice finds', () => {
  test('resistances, at their least, nominal and most', () => {
    const corners: readonly Corner[] = ['least', 'nominal', 'most'];
    const pairs = cases.flatMap((one) => {
      const readings = readingsOf(one);
      return one.asked.flatMap((asked, at) => {
        if (asked.quantity === 'voltage') return [];
        const circuit = readings[at]?.good[0]?.circuit;
        return corners.map((corner) => ({
          ours: typeof circuit === 'object' ? circuit[corner] : circuit === 'open' ? Infinity : NaN,
          network: { edges: edgesOf(one, asked, corner), from: asked.a, to: asked.b },
        }));
      });
    });
    const theirs = solveWithNgspice(pairs.map(({ network }) => network));
    expect(pairs.length).toBe(250 * 5 * 3);
    expect(theirs.filter(Number.isFinite).length).toBeGreaterThan(2500);
    for (const [at, { ours }] of pairs.entries()) {
      const ohms = theirs[at] ?? NaN;
      if (ohms === Infinity) expect(ours).toBe(Infinity);
      else expect(Math.abs(ours / ohms - 1)).toBeLessThanOrEqual(1e-6);
    }
  });

  test('voltages with the load of the meter, at their nominal values', () => {
    const pairs = cases.flatMap((one) => {
      const readings = readingsOf(one);
      return one.asked.flatMap((asked, at) => {
        if (asked.quantity === 'resistance') return [];
        const good = readings[at]?.good[0];
        const meter: Edge = { a: asked.a, b: asked.b, ohms: input };
        const edges = [...edgesOf(one, asked, 'nominal'), meter];
        return [{ good, asked, circuit: { edges, drives: one.sources, nodes: one.nodes } }];
      });
    });
    const theirs = operateWithNgspice(pairs.map(({ circuit }) => circuit));
    let compared = 0;
    for (const [at, { good, asked }] of pairs.entries()) {
      const { volts = [] } = theirs[at] ?? {};
      const expected = (volts[asked.a] ?? NaN) - (volts[asked.b] ?? NaN);
      const circuit = good?.circuit;
      const ours = typeof circuit === 'object' ? circuit.nominal : NaN;
      if (Number.isNaN(expected)) {
        // Nothing connects the two with ground, and no source stands elsewhere.
        expect(ours).toBe(0);
        continue;
      }
      compared += 1;
      expect(Math.abs(ours - expected)).toBeLessThanOrEqual(1e-6 * Math.max(1, Math.abs(expected)));
    }
    expect(compared).toBeGreaterThan(1000);
  });
});
