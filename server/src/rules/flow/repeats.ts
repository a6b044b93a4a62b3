import { example } from '../examples.ts';
import { repeatsFinder } from './flow-check.ts';
import type { Rule } from '../rule.ts';

export const repeats: Rule = {
  name: 'repeats',
  severity: 'warning',
  stage: 'order',
  meaning: 'A path comes back to a step without anything that could make a difference.',
  why: 'Verbs set the bench to a state: the second time round it is the same bench and reads the same.',
  source: 'common practice',
  finder: repeatsFinder,
  examples: {
    triggers: example(
      'the same reading again',
      `
- ignition: on
- read-codes: control-unit
- clear-codes: control-unit
- read: driver-loop
  id: again
  outcomes: { within: next, else: again }
`,
    ),
    passes: example(
      'something is inspected before the reading is repeated',
      `
- ignition: on
- read-codes: control-unit
- clear-codes: control-unit
- read: driver-loop
  id: again
  outcomes: { within: done, else: look }
- inspect: Is the plug of the trainer seated?
  at: nothing
  id: look
  outcomes: { ok: done, defect: again }
- stop: Loop read.
  id: done
`,
    ),
  },
};
