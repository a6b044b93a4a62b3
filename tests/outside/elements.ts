import { expect } from 'vitest';
import { voltageWindow } from '../../server/src/circuit/circuit.ts';
import type { ConditionRanges, Element, Source } from '../../server/src/circuit/circuit.ts';
import type { Span } from '../../server/src/quantity/quantity.ts';

export function exact(value: number): Span {
  return { least: value, nominal: value, most: value };
}

export function resistor(id: string, a: string, b: string, ohms: number | Span): Element {
  return {
    id,
    between: [a, b],
    part: { kind: 'stated', resistance: typeof ohms === 'number' ? exact(ohms) : ohms },
  };
}

/** Volts from `plus` to `minus`. */
export function source(volts: number): Source {
  return { id: 'battery', between: ['plus', 'minus'], kind: 'voltage', value: exact(volts) };
}

export const room: ConditionRanges = { ambient: exact(20), entered: new Map() };

/** The range of the voltage between two nodes. */
export function voltageSpan(network: readonly Element[], supply: Source, from: string, to: string): Span {
  const window = voltageWindow(network, [supply], from, to, room);
  if (window.kind !== 'number') throw new Error(window.kind);
  expect(window.exact).toBe(true);
  return window.value;
}

export function volts(network: readonly Element[], supply: Source, from: string, to: string): number {
  return voltageSpan(network, supply, from, to).nominal;
}
