import { example } from './examples.ts';
import { handsInTextFinder } from './hands-in-text-check.ts';
import type { Rule } from './rule.ts';

export const handsInText: Rule = {
  name: 'hands-in-text',
  severity: 'warning',
  stage: 'order',
  meaning:
    'A text tells hands to do something that no step says: a `do` or `inspect` names what its `at` does not, or a note, notice, heading or `stop` gives a command.',
  why: 'Hands and switches hidden in a sentence are not checked. With `at` the step counts as a touch; what switches or fits has verbs of its own.',
  source: 'common practice',
  finder: handsInTextFinder,
  examples: {
    triggers: example(
      'pulling at the harness of K30 is a touch',
      `
- ignition: on
- read-codes: control-unit
- clear-codes: control-unit
- read: driver-loop
- do: Wiggle the harness at K30.
`,
    ),
    passes: example(
      'the sentence names nothing of the circuit',
      `
- ignition: on
- read-codes: control-unit
- clear-codes: control-unit
- read: driver-loop
- do: Write the reading on the job sheet.
`,
    ),
  },
};
