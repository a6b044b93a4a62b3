import { example } from '../examples.ts';
import type { Rule } from '../rule.ts';

const steps = (outcomes: string): string => `
- ignition: on
- read-codes: control-unit
- clear-codes: control-unit
- read: driver-loop
  id: look
  outcomes: ${outcomes}
- stop: The loop is sound.
- stop: Hand over to the workshop lead.
  id: faulty
`;

const waivers = `waivers:
  - { rule: uncovered, step: look, reason: The rig shows nothing else. }
`;

export const unusedWaiver: Rule = {
  name: 'unused-waiver',
  severity: 'warning',
  stage: 'order',
  meaning: 'A waiver of something that is not found.',
  why: 'It would silently swallow the finding if it came one day for another reason.',
  source: 'common practice',
  // Waivers are held against the findings of all other rules.
  finder: {},
  examples: {
    triggers: example(
      'the outcome that was missing has been added',
      steps('{ within: next, else: faulty }'),
      {
        waivers,
      },
    ),
    passes: example('the finding is still there', steps('{ within: next, below: faulty, above: faulty }'), {
      waivers,
    }),
  },
};
