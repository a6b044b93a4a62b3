import { example, readOnly } from '../examples.ts';
import type { Rule } from '../rule.ts';
import { notPreferredFinder } from './sensor-check.ts';

export const notPreferred: Rule = {
  name: 'not-preferred',
  severity: 'error',
  stage: 'windows',
  meaning: 'A resistor of a series of preferred values whose value does not stand in that series.',
  why: 'No such resistor is made: either the value or the series is a slip, and the window would be wrong.',
  source: 'IEC 60063',
  finder: notPreferredFinder,
  examples: {
    triggers: example('4.2 Ω, which rounding suggests and E24 does not have', readOnly, {
      loads: `loads:
  load-plug: { kind: resistor, resistance: 4.2 Ω, series: E24 }
`,
    }),
    passes: example('4.3 Ω, which it has', readOnly, {
      loads: `loads:
  load-plug: { kind: resistor, resistance: 4.3 Ω, series: E24 }
`,
    }),
  },
};
