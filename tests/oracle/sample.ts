import type { PlainProcedure, PlainStep } from './plain-procedure.ts';
import { typedProcedure } from './plain-procedure.ts';
import type { Procedure } from '../../server/src/model/procedure.ts';
import { oracle } from './oracle.ts';

/* A small bench for the oracle's own tests: one live loop with two connectors, one inert loop with one. */

export type Changes = Partial<Omit<PlainProcedure, 'steps'>>;

const circuit: Omit<PlainProcedure, 'steps'> = {
  format: 1,
  title: 'A hand-written procedure',
  conditions: { ambient: '20..20 °C' },
  sources: { battery: { kind: 'battery', voltage: '12.6 V', feeds: ['unit'], wait: '120 s' } },
  instruments: {
    unit: {
      kind: 'monitor',
      range: '0..10 Ω',
      accuracy: '3 % + 0.1 Ω',
      resolution: '0.01 Ω',
      codes: { 'too-low': 'below 1.0 Ω', 'too-high': 'above 4.5 Ω' },
      'test-current': '10 mA',
    },
  },
  loads: {
    lamp: { kind: 'lamp', resistance: '3.0 Ω ± 5 %' },
    plug: { kind: 'resistor', resistance: '2.2 Ω ± 1 %', 'opens-shorting-bar': true },
  },
  parts: {
    cable: { kind: 'cable', resistance: '50 mΩ' },
    stage: { kind: 'initiator', resistance: '1.7..2.3 Ω', 'no-fire': '400 mA', live: true },
    inert: { kind: 'resistor', resistance: '2.0..2.4 Ω' },
  },
  connectors: {
    K1: { contact: '2..15 mΩ' },
    K2: {
      contact: '2..15 mΩ',
      'shorting-bar': { side: 'end', closes: 'unlocked', resistance: '0.2..0.4 Ω' },
    },
    K3: { contact: '2..15 mΩ' },
  },
  loops: {
    live: { path: ['unit', 'K1', 'cable', 'K2', 'stage'] },
    dull: { path: ['unit', 'K3', 'inert'] },
  },
};

export function sample(steps: readonly PlainStep[], changes: Changes = {}): Procedure {
  return typedProcedure({ ...circuit, ...changes, steps });
}

/** What the oracle says of one rule: `subject at step in n`, n the steps on the shortest path; `-` for none. */
export function said(rule: string, steps: readonly PlainStep[], changes: Changes = {}): string[] {
  return oracle(sample(steps, changes))
    .filter((told) => told.rule === rule)
    .map(({ subject, step, shortest }) => `${subject ?? '-'} at ${step ?? '-'} in ${shortest ?? '-'}`)
    .sort();
}

/** Ignition is off at the start, so that this alone makes everything dead. */
export const dead: readonly PlainStep[] = [{ disconnect: 'battery' }, { wait: '120 s' }];

export const second = {
  ...circuit.sources,
  backup: { kind: 'battery', voltage: '12.6 V', feeds: ['stage'], wait: '60 s' },
};

export { circuit };
