import { example } from './examples.ts';
import { noDifferenceFinder } from './no-difference-check.ts';
import type { Rule } from './rule.ts';

const read = `
- ignition: on
- read-codes: control-unit
- clear-codes: control-unit
- read: driver-loop
`;

export const noDifference: Rule = {
  name: 'no-difference',
  severity: 'warning',
  stage: 'order',
  meaning: 'A reading or an inspection of which all outcomes lead to one step.',
  why: 'What is found then changes nothing: a fault is seen, and the work goes on as if there were none. A reading that is only to be written down has no `outcomes`.',
  source: 'a guard of this program',
  finder: noDifferenceFinder,
  examples: {
    triggers: example(
      'a loop that reads wrong goes on like a good one',
      `${read}  outcomes: { within: next, else: next }
`,
    ),
    passes: example(
      'a loop that reads wrong ends the work',
      `${read}  outcomes: { within: next, else: faulty }
- stop: The loop is sound.
- stop: The loop is not sound. Ask the workshop lead.
  id: faulty
`,
    ),
  },
};
