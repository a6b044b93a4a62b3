import { describe, expect, test } from 'vitest';
import { currentWindow, voltageWindow, withConsumers } from '../../server/src/circuit/circuit.ts';
import type { Consumer, Drive, Edge, Network, Source } from '../../server/src/circuit/circuit.ts';
import type { Span } from '../../server/src/quantity/quantity.ts';
import { describeWith } from '../needs.ts';
import { lacksNgspice, operateWithNgspice } from './ngspice.ts';

const workshop = { ambient: { least: 20, nominal: 20, most: 20 }, entered: new Map<string, Span>() };

function exactly(value: number): Span {
  return { least: value, nominal: value, most: value };
}

function wire(id: string, from: string, to: string, ohms: Span): Network[number] {
  return { id, between: [from, to], part: { kind: 'stated', resistance: ohms } };
}

function battery(volts: Span): Source {
  return { id: 'battery', between: ['plus', 'minus'], kind: 'voltage', value: volts };
}

const feed = [wire('feed', 'plus', 'k50', { least: 0.01, nominal: 0.02, most: 0.03 })];
const starter = (draws: Span): Consumer => ({ id: 'starter', between: ['k50', 'minus'], draws });

describe('a consumer of a stated current', () => {
  test("lets a voltage drop in its feed: Ohm's law at both ends", () => {
    const found = withConsumers(
      feed,
      [battery(exactly(12))],
      [starter({ least: 140, nominal: 150, most: 160 })],
      workshop,
    );
    if (found.kind !== 'settled') throw new Error('not settled');
    const window = voltageWindow(found.network, found.sources, 'plus', 'k50', workshop);
    if (window.kind !== 'number') throw new Error('no number');
    expect(window.value.least).toBeCloseTo(140 * 0.01, 9);
    expect(window.value.nominal).toBeCloseTo(150 * 0.02, 9);
    expect(window.value.most).toBeCloseTo(160 * 0.03, 9);
  });

  test('draws nothing and has no voltage across it where no source is on', () => {
    const found = withConsumers(feed, [], [starter(exactly(150))], workshop);
    if (found.kind !== 'settled') throw new Error('not settled');
    const volts = voltageWindow(found.network, found.sources, 'k50', 'minus', workshop);
    expect(volts).toMatchObject({ value: { least: 0, most: 0 } });
    const amperes = currentWindow(
      found.network,
      found.sources,
      { kind: 'around', element: 'feed' },
      workshop,
    );
    expect(amperes).toMatchObject({ value: { least: 0, most: 0 } });
  });

  test('takes what its feed lets through where its whole current would need more than the battery has', () => {
    const weak = [wire('feed', 'plus', 'k50', exactly(1))];
    const found = withConsumers(weak, [battery(exactly(12))], [starter(exactly(150))], workshop);
    if (found.kind !== 'settled') throw new Error('not settled');
    const amperes = currentWindow(
      found.network,
      found.sources,
      { kind: 'around', element: 'feed' },
      workshop,
    );
    if (amperes.kind !== 'number') throw new Error('no number');
    expect(amperes.value.nominal).toBeCloseTo(12, 9);
  });

  test('is not decided where the stated values allow both', () => {
    const wide = [wire('feed', 'plus', 'k50', { least: 0.01, nominal: 0.05, most: 0.1 })];
    expect(withConsumers(wide, [battery(exactly(12))], [starter(exactly(150))], workshop)).toEqual({
      kind: 'undecided',
      consumer: 'starter',
    });
  });
});

describeWith(lacksNgspice, 'ladders with a consumer at each rung', () => {
  /** Deterministic, of ordinary size: wires of 0.01 to 0.2 Ω, consumers of 0.1 to 3 A, a resistor beside each. */
  const ladders = Array.from({ length: 60 }, (_, seed) => {
    const rungs = 2 + (seed % 5);
    return Array.from({ length: rungs }, (_rung, at) => ({
      wire: 0.01 + 0.19 * (((seed + 1) * (at + 3) * 7) % 11) * 0.1,
      amperes: 0.1 + 0.29 * (((seed + 5) * (at + 1) * 13) % 11),
      beside: 5 + (((seed + 2) * (at + 2)) % 17),
    }));
  });

  test('every voltage along the ladder, to one part in a million', () => {
    const points = operateWithNgspice(
      ladders.map((rungs) => ({
        nodes: rungs.length + 2,
        // Node 0 is the minus, node 1 the plus.
        edges: rungs.flatMap(({ wire: ohms, beside }, at): Edge[] => [
          { a: at + 1, b: at + 2, ohms },
          { a: at + 2, b: 0, ohms: beside },
        ]),
        drives: [
          { a: 1, b: 0, kind: 'voltage', value: 12.6 } satisfies Drive,
          ...rungs.map(({ amperes }, at): Drive => ({ a: 0, b: at + 2, kind: 'current', value: amperes })),
        ],
      })),
    );
    let numbers = 0;
    for (const [index, rungs] of ladders.entries()) {
      const node = (at: number): string => (at === 0 ? 'plus' : `n${at}`);
      const network = rungs.flatMap(({ wire: ohms, beside }, at) => [
        wire(`wire ${at}`, node(at), node(at + 1), exactly(ohms)),
        wire(`beside ${at}`, node(at + 1), 'minus', exactly(beside)),
      ]);
      const consumers = rungs.map(({ amperes }, at): Consumer => ({
        id: `consumer ${at}`,
        between: [node(at + 1), 'minus'],
        draws: exactly(amperes),
      }));
      const found = withConsumers(network, [battery(exactly(12.6))], consumers, workshop);
      if (found.kind !== 'settled') throw new Error('not settled');
      for (const at of rungs.keys()) {
        const window = voltageWindow(found.network, found.sources, node(at + 1), 'minus', workshop);
        const theirs = points[index]?.volts[at + 2] ?? NaN;
        // Where ngspice would need a voltage below zero the consumer has stopped, and the ladder is another one.
        if (Math.min(...(points[index]?.volts ?? [])) < 0) continue;
        if (window.kind !== 'number') throw new Error('no number');
        expect(Math.abs(window.value.nominal - theirs)).toBeLessThanOrEqual(1e-6 * theirs);
        numbers += 1;
      }
    }
    expect(numbers).toBeGreaterThan(100);
  });
});
