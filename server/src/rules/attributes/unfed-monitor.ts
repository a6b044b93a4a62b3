import { example } from '../examples.ts';
import { unfedMonitorFinder } from './proof-check.ts';
import type { Rule } from '../rule.ts';

export const unfedMonitor: Rule = {
  name: 'unfed-monitor',
  severity: 'error',
  stage: 'order',
  immune: true,
  meaning: 'A monitor that no source feeds.',
  why: 'Its power could not be followed, and neither could that of the circuits it reads.',
  source: 'a guard of this program',
  finder: unfedMonitorFinder,
  examples: {
    triggers: example(
      'a second control unit without a source',
      `
- ignition: on
- read-codes: control-unit
- read-codes: seat-unit
- clear-codes: control-unit
- clear-codes: seat-unit
- read: driver-loop
`,
      {
        instruments: `instruments:
  control-unit: { kind: monitor, range: 0..10 Ω, accuracy: 3 % + 0.1 Ω, resolution: 0.01 Ω, test-current: 10 mA }
  seat-unit: { kind: monitor, range: 0..10 Ω, accuracy: 3 % + 0.1 Ω, resolution: 0.01 Ω, test-current: 10 mA }
`,
      },
    ),
    passes: example(
      'the only control unit is fed by the battery',
      `
- ignition: on
- read-codes: control-unit
- clear-codes: control-unit
- read: driver-loop
`,
    ),
  },
};
