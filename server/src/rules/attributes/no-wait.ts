import { example } from '../examples.ts';
import { noWaitFinder } from './proof-check.ts';
import type { Rule } from '../rule.ts';

export const noWait: Rule = {
  name: 'no-wait',
  severity: 'error',
  stage: 'order',
  immune: true,
  meaning:
    'A source of a live circuit, or of more than 30 V, that says neither how long to wait nor what its reserve holds.',
  why: 'A wait of nothing would pass as long enough.',
  source: 'a guard of this program',
  finder: noWaitFinder,
  examples: {
    triggers: example(
      'the battery states no wait',
      `
- ignition: on
- read-codes: control-unit
- clear-codes: control-unit
- read: driver-loop
`,
      {
        sources: `sources:
  battery: { kind: battery, voltage: 12.6 V, feeds: [control-unit] }
`,
      },
    ),
    passes: example(
      'the battery states its wait',
      `
- ignition: on
- read-codes: control-unit
- clear-codes: control-unit
- read: driver-loop
`,
    ),
  },
};
