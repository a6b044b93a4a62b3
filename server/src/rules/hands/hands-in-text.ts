import { example } from '../examples.ts';
import { handsFinder } from './hands-watch.ts';
import type { Rule } from '../rule.ts';

export const handsInText: Rule = {
  name: 'hands-in-text',
  severity: 'warning',
  stage: 'order',
  meaning:
    'A text tells hands to do something that no step says: a `do` or `inspect` names what its `at` does not or says in words what has a step of its own (unplug, plug, fit, measure), or a note, notice, heading or `stop` gives a command. An error that cannot be waived: a word of doing in a step with `at: nothing`, or of what `of` names, while something can still fire, is charged or not verified to be without voltage; and an order to switch the ignition or a source, in any text.',
  why: 'Hands and switches hidden in a sentence are not checked. With `at` the step counts as a touch; what switches, fits or measures has verbs of its own. Read are English words (unplug, connect, measure, wiggle and the like, in any form) and names in any spelling, also what people call a thing: the airbag, the harness. Texts in other languages are not read: there the author alone answers for them.',
  source: 'common practice, no source',
  finder: handsFinder,
  examples: {
    triggers: example(
      'pulling at the harness of K30 is a touch, and no step says it',
      `
- ignition: on
- read-codes: control-unit
- clear-codes: control-unit
- read: driver-loop
  note: Wiggle the harness at K30 while you watch the value.
`,
    ),
    passes: example(
      'the sentence tells of nothing that hands do to the circuit',
      `
- ignition: on
- read-codes: control-unit
- clear-codes: control-unit
- read: driver-loop
- do: Write the reading on the job sheet.
  at: nothing
`,
    ),
  },
};
