import { example, giveBackOpened, makeSafe } from './examples.ts';
import { leftBehindFinder } from './left-behind.ts';
import type { Rule } from './rule.ts';

export const notRestored: Rule = {
  name: 'not-restored',
  severity: 'error',
  stage: 'order',
  // It also tells of live circuits that are left under power.
  immune: true,
  meaning: 'The procedure ends with a source off, a connector not mated or a load fitted.',
  why: 'The vehicle would go back with a restraint system that does not work, or with a stage that is live and open.',
  source: 'common practice',
  finder: leftBehindFinder,
  examples: {
    triggers: example(
      'the battery stays off at the end',
      `${makeSafe}- unplug: K30
  warning: Stay clear of the front of the airbag.
- plug: K30
- reconnect: battery
- ignition: on
- clear-codes: control-unit
- read: driver-loop
  outcomes: { within: off, else: faulty }
- stop: The loop is not sound. Ask the workshop lead.
  id: faulty
  leaves: [repair]
- ignition: off
  id: off
- disconnect: battery
`,
    ),
    passes: example(
      'everything is as it was',
      `${makeSafe}- unplug: K30
  warning: Stay clear of the front of the airbag.
- plug: K30
${giveBackOpened}`,
    ),
  },
};
