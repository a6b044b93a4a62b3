import { example } from '../examples.ts';
import { codesRecordedFinder } from './codes-watch.ts';
import type { Rule } from '../rule.ts';

export const codesNotRecorded: Rule = {
  name: 'codes-not-recorded',
  severity: 'warning',
  stage: 'order',
  meaning: 'Codes are not read before the first disconnection or before they are cleared.',
  why: 'They are what the customer came with. Without power or after clearing they may be gone.',
  source: 'common practice',
  finder: codesRecordedFinder,
  examples: {
    triggers: example(
      'codes are cleared unread',
      `- ignition: on
- clear-codes: control-unit
- read: driver-loop
`,
    ),
    passes: example(
      'codes are read first',
      `
- ignition: on
- read-codes: control-unit
- clear-codes: control-unit
- read: driver-loop
`,
    ),
  },
};
