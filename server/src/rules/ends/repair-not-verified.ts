import { example, makeSafe } from '../examples.ts';
import { repairVerifiedFinder } from './verified-watch.ts';
import type { Rule } from '../rule.ts';

export const repairNotVerified: Rule = {
  name: 'repair-not-verified',
  severity: 'error',
  stage: 'order',
  meaning: 'Something has been replaced and no later reading shows that its loop is sound.',
  why: 'The new part may be wrong, or was never the cause.',
  source: 'common practice',
  finder: repairVerifiedFinder,
  examples: {
    triggers: example(
      'the stage is replaced and not read',
      `${makeSafe}- replace: stage-1
  warning: A stage can still fire.
- reconnect: battery
- ignition: on
- clear-codes: control-unit
`,
    ),
    passes: example(
      'the loop is read after it',
      `${makeSafe}- replace: stage-1
  warning: A stage can still fire.
- reconnect: battery
- ignition: on
- clear-codes: control-unit
- read: driver-loop
  outcomes: { within: sound, else: faulty }
- stop: The loop is sound.
  id: sound
- stop: The loop is not sound. Ask the workshop lead.
  id: faulty
  leaves: [repair]
`,
    ),
  },
};
