import { example } from '../examples.ts';
import { unfedCircuitFinder } from './proof-check.ts';
import type { Rule } from '../rule.ts';

export const unfedCircuit: Rule = {
  name: 'unfed-circuit',
  severity: 'error',
  stage: 'order',
  immune: true,
  meaning: 'A live circuit that no source feeds.',
  why: 'Where nothing feeds a stage, every order of steps would pass as safe, and the proof would be empty.',
  source: 'a guard of this program',
  finder: unfedCircuitFinder,
  examples: {
    triggers: example(
      'the stage has no source',
      `
- ignition: on
- read-codes: control-unit
- read-codes: other-unit
- clear-codes: control-unit
- clear-codes: other-unit
- read: driver-loop
`,
      {
        sources: `sources:
  battery: { kind: battery, voltage: 12.6 V, feeds: [other-unit], wait: 3 min }
`,
        instruments: `instruments:
  control-unit: { kind: monitor, range: 0..10 Ω, accuracy: 3 % + 0.1 Ω, resolution: 0.01 Ω, test-current: 10 mA }
  other-unit: { kind: monitor, range: 0..10 Ω, accuracy: 3 % + 0.1 Ω, resolution: 0.01 Ω, test-current: 10 mA }
`,
      },
    ),
    passes: example(
      'the battery feeds the control unit, and with it the stage',
      `
- ignition: on
- read-codes: control-unit
- clear-codes: control-unit
- read: driver-loop
`,
    ),
  },
};
