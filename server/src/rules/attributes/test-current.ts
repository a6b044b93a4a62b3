import { example } from '../examples.ts';
import { testCurrentFinder } from './test-current-check.ts';
import type { Rule } from '../rule.ts';

const readOnly = `
- ignition: on
- read-codes: control-unit
- clear-codes: control-unit
- read: driver-loop
`;

const stage = `parts:
  coil-coupling: { kind: rotary-coupling, resistance: 0.05..0.15 Ω }
  stage-1: { kind: initiator, resistance: 1.7..2.3 Ω, no-fire: 400 mA, live: true }
`;

function withCurrent(current: string): { readonly instruments: string; readonly parts: string } {
  return {
    instruments: `instruments:
  control-unit:
    { kind: monitor, range: 0..10 Ω, accuracy: 3 % + 0.1 Ω, resolution: 0.01 Ω, test-current: ${current} }
`,
    parts: stage,
  };
}

export const testCurrent: Rule = {
  name: 'test-current',
  severity: 'error',
  stage: 'order',
  meaning: 'An instrument reads a live stage with more than a tenth of its no-fire current.',
  why: 'What flows to read a stage must stay far from what may fire it. A unit that is built so by the vehicle maker can be taken over with that as the reason.',
  source: '14 CFR 417 Appendix D, monitoring circuits: a range-safety rule, not one of vehicles',
  finder: testCurrentFinder,
  examples: {
    triggers: example('50 mA where the stage is sure up to 400 mA', readOnly, withCurrent('50 mA')),
    passes: example('40 mA: a tenth, and no more', readOnly, withCurrent('40 mA')),
  },
};
