import { example } from '../examples.ts';
import { endlessFinder } from './flow-check.ts';
import type { Rule } from '../rule.ts';

export const endless: Rule = {
  name: 'endless',
  severity: 'error',
  stage: 'order',
  meaning: 'From this step on no path leads to an end.',
  why: 'Whoever comes here goes round for ever.',
  source: 'common practice',
  finder: endlessFinder,
  examples: {
    triggers: example(
      'the last step leads back to itself over an inspection',
      `
- ignition: on
- read-codes: control-unit
- clear-codes: control-unit
- read: driver-loop
- inspect: Is the seat fitted?
  at: nothing
  id: look
- go: look
`,
    ),
    passes: example(
      'the inspection can end it',
      `
- ignition: on
- read-codes: control-unit
- clear-codes: control-unit
- read: driver-loop
- inspect: Is the seat fitted?
  at: nothing
  id: look
  outcomes: { ok: done, defect: look }
- stop: Loop read.
  id: done
`,
    ),
  },
};
