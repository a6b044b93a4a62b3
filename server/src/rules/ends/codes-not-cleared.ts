import { example } from '../examples.ts';
import { codesClearedFinder } from './codes-watch.ts';
import type { Rule } from '../rule.ts';

export const codesNotCleared: Rule = {
  name: 'codes-not-cleared',
  severity: 'error',
  stage: 'order',
  meaning: 'The procedure ends with codes in the memory of a monitor.',
  why: 'The work itself sets codes, of open stages for one; left there they mislead the next reader and keep the warning lamp on.',
  source: 'common practice',
  finder: codesClearedFinder,
  examples: {
    triggers: example(
      'codes are read and left',
      `- ignition: on
- read-codes: control-unit
- read: driver-loop
`,
    ),
    passes: example(
      'codes are cleared before the last reading',
      `
- ignition: on
- read-codes: control-unit
- clear-codes: control-unit
- read: driver-loop
`,
    ),
  },
};
