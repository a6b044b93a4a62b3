import { describe, expect, test } from 'vitest';
import { leakSeen, leakWindow, networkWindow } from '../../server/src/circuit/circuit.ts';
import type { Element } from '../../server/src/circuit/circuit.ts';
import { resistor, room, source, volts } from './elements.ts';

/** Four loads of 50 Ω one after the other, from the supply to its minus. */
const nodes = ['plus', 'a', 'b', 'c', 'minus'] as const;
const loop: readonly Element[] = nodes
  .slice(1)
  .map((node, at) => resistor(`load-${at + 1}`, nodes[at] ?? '', node, 50));

/** The same with its second and third load parted. */
const parted = loop.map((load) => (load.id === 'load-3' ? resistor('load-3', 'far-b', 'c', 50) : load));

function expectNominal(network: readonly Element[], ohms: number): void {
  const { value } = networkWindow(network, 'plus', 'minus', room);
  expect(value === 'open' ? value : value.nominal).toBeCloseTo(ohms, 10);
}

describe('interlock loop of reference design TIDUF61: four loads of 50 Ω, 12 V, its states', () => {
  test('normal: 200 Ω, and half of the supply in the middle', () => {
    expectNominal(loop, 200);
    expect(volts(loop, source(12), 'b', 'minus')).toBeCloseTo(6, 12);
  });

  test('open: no path, the supply before the gap and nothing behind it', () => {
    expect(networkWindow(parted, 'plus', 'minus', room).value).toBe('open');
    expect(volts(parted, source(12), 'b', 'minus')).toBeCloseTo(12, 12);
    expect(volts(parted, source(12), 'far-b', 'minus')).toBeCloseTo(0, 12);
  });

  test.each([
    ['battery', 'plus', 12],
    ['ground', 'minus', 0],
  ])('short to %s in the middle: 100 Ω left, and the middle at that voltage', (_state, to, middle) => {
    const shorted = [...loop, resistor('short', 'b', to, 0)];
    expectNominal(shorted, 100);
    expect(volts(shorted, source(12), 'b', 'minus')).toBeCloseTo(middle, 12);
  });

  test('a monitor that looks for leaks tells both shorts from a loop that nothing ties to battery or ground', () => {
    const seen = (...more: readonly Element[]): string =>
      leakSeen(leakWindow([...loop, ...more], ['plus', 'minus'], ['battery', 'ground'], room), 1000);
    expect(seen()).toBe('never');
    for (const rail of ['battery', 'ground']) expect(seen(resistor('short', 'b', rail, 0))).toBe('always');
  });
});
