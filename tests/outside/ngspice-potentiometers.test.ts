import { expect, test } from 'vitest';
import { voltageWindow } from '../../server/src/circuit/circuit.ts';
import type { Edge, Network } from '../../server/src/circuit/circuit.ts';
import { seededRandom } from '../../server/src/circuit/random.ts';
import type { Span } from '../../server/src/quantity/quantity.ts';
import { describeWith } from '../needs.ts';
import { resistor, room, source } from './elements.ts';
import { lacksNgspice, operateWithNgspice } from './ngspice.ts';

/*
 * Potentiometers in random networks on 5 V: ngspice, a general-purpose simulator, solves each with its track and its wiper
 * at many places, the two halves as plain resistors.
 */

const nodes = ['minus', 'plus', 'wiper', 'one', 'two'] as const;

interface Case {
  readonly track: Span;
  readonly wiper: Span;
  /** The other end of the track; the first is at the plus. */
  readonly end: number;
  readonly fixed: readonly Edge[];
  readonly probes: readonly [number, number];
}

function drawn(seed: number): Case {
  const random = seededRandom(seed);
  const pick = (count: number): number => Math.floor(random() * count);
  const between = (least: number, most: number): number => least * (most / least) ** random();
  const nominal = between(200, 5000);
  const [low, high] = [random() * 0.5, 0.5 + random() * 0.5];
  // Each node is led to ground, so that none hangs in the air.
  const fixed = [2, 3, 4].map((a): Edge => ({ a, b: 0, ohms: between(50, 1e6) }));
  const more = Array.from({ length: 3 }, (): Edge => {
    const a = pick(nodes.length);
    return { a, b: (a + 1 + pick(nodes.length - 1)) % nodes.length, ohms: between(50, 1e5) };
  });
  const from = pick(nodes.length);
  return {
    track: { least: nominal * 0.8, nominal, most: nominal * 1.2 },
    wiper: { least: low, nominal: (low + high) / 2, most: high },
    end: [0, 3, 4][pick(3)] ?? 0,
    fixed: [...fixed, ...more],
    probes: [from, (from + 1 + pick(nodes.length - 1)) % nodes.length],
  };
}

const nameOf = (node: number): string => nodes[node] ?? '';

function networkOf({ track, wiper, end, fixed }: Case): Network {
  const side = { kind: 'track', track, wiper: { id: 'pedal', place: wiper } } as const;
  return [
    { id: 'pedal.1', between: ['plus', 'wiper'], part: { ...side, end: 'first' } },
    { id: 'pedal.2', between: ['wiper', nameOf(end)], part: { ...side, end: 'second' } },
    ...fixed.map(({ a, b, ohms }, at) => resistor(`r${at}`, nameOf(a), nameOf(b), ohms)),
  ];
}

const places = 41;

/** Every place of the wiper, with the least, the middle and the greatest track. */
function sampled({ track, wiper, end, fixed }: Case) {
  return [track.least, track.nominal, track.most].flatMap((ohms) =>
    Array.from({ length: places }, (_, at) => {
      const x = wiper.least + ((wiper.most - wiper.least) * at) / (places - 1);
      const edges = [{ a: 1, b: 2, ohms: x * ohms }, { a: 2, b: end, ohms: (1 - x) * ohms }, ...fixed];
      return { edges, drives: [{ a: 1, b: 0, kind: 'voltage' as const, value: 5 }], nodes: nodes.length };
    }),
  );
}

describeWith(lacksNgspice, 'potentiometers in 40 random networks', () => {
  test('voltages with a potentiometer: no place of the wiper leaves the window, and its ends are met', () => {
    const cases = Array.from({ length: 40 }, (_, seed) => drawn(seed + 1));
    const points = operateWithNgspice(cases.flatMap(sampled));
    const each = 3 * places;
    let exact = 0;
    for (const [index, one] of cases.entries()) {
      const [from, to] = one.probes;
      const window = voltageWindow(networkOf(one), [source(5)], nameOf(from), nameOf(to), room);
      if (window.kind !== 'number') throw new Error(window.kind);
      const { least, most } = window.value;
      const found = points
        .slice(index * each, (index + 1) * each)
        .map(({ volts }) => (volts[from] ?? NaN) - (volts[to] ?? NaN));
      const rounding = 1e-6;
      for (const volts of found) {
        expect(volts).toBeGreaterThanOrEqual(least - rounding);
        expect(volts).toBeLessThanOrEqual(most + rounding);
      }
      if (!window.exact) continue;
      exact += 1;
      // Between two places of the wiper a greatest value can lie a little higher.
      const slack = rounding + (most - least) * 2e-3;
      expect(Math.min(...found)).toBeLessThanOrEqual(least + slack);
      expect(Math.max(...found)).toBeGreaterThanOrEqual(most - slack);
    }
    expect(exact).toBeGreaterThan(20);
  });
});
