import { example } from './examples.ts';
import { uncoveredFinder } from './uncovered-check.ts';
import type { Rule } from './rule.ts';

function reading(outcomes: string): string {
  return `
- ignition: on
- read-codes: control-unit
- clear-codes: control-unit
- read: driver-loop
  outcomes: { ${outcomes} }
- stop: The loop is sound.
- stop: The loop is not sound. Ask the workshop lead.
  id: faulty
`;
}

export const uncovered: Rule = {
  name: 'uncovered',
  severity: 'error',
  stage: 'order',
  meaning: 'A step with outcomes that leaves out one that can happen.',
  why: 'The reader would see something on the display that the card does not know.',
  source: 'common practice: state what to expect and what to do then',
  finder: uncoveredFinder,
  examples: {
    triggers: example(
      'nothing is said of an open loop',
      reading('below: faulty, within: next, above: faulty'),
    ),
    passes: example('`else` covers the rest', reading('within: next, else: faulty')),
  },
};
