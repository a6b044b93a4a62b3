import { example, giveBackOpened, makeSafe } from './examples.ts';
import { ignitionFirstFinder } from './ignition-first-watch.ts';
import type { Rule } from './rule.ts';

export const ignitionFirst: Rule = {
  name: 'ignition-first',
  severity: 'warning',
  stage: 'order',
  meaning: 'The ignition is on while a source is disconnected or reconnected.',
  why: 'Current then flows at the terminal, and the control unit wakes in the middle of the act.',
  source: 'common practice',
  finder: ignitionFirstFinder,
  examples: {
    triggers: example(
      'the battery comes off with the ignition on',
      `
- ignition: on
- read-codes: control-unit
- disconnect: battery
- ignition: off
- wait: 3 min
- unplug: K30
  warning: Stay clear of the front of the airbag.
- plug: K30
${giveBackOpened}`,
    ),
    passes: example(
      'the ignition goes off first',
      `${makeSafe}- unplug: K30
  warning: Stay clear of the front of the airbag.
- plug: K30
${giveBackOpened}`,
    ),
  },
};
