import { example, giveBackOpened, makeSafe } from './examples.ts';
import { idleWaitFinder } from './idle-wait-watch.ts';
import type { Rule } from './rule.ts';

export const waitWithoutEffect: Rule = {
  name: 'wait-without-effect',
  severity: 'warning',
  stage: 'order',
  meaning: 'A wait while all that is live, and all that can stay charged, is still fed.',
  why: 'Nothing runs down while a source is on; the whole wait is owed from the moment at which the last one is off.',
  source: 'common practice',
  finder: idleWaitFinder,
  examples: {
    triggers: example(
      'the wait stands before the battery comes off',
      `
- ignition: on
- read-codes: control-unit
- ignition: off
- wait: 3 min
- disconnect: battery
- wait: 3 min
- unplug: K30
  warning: Stay clear of the front of the airbag.
- plug: K30
${giveBackOpened}`,
    ),
    passes: example(
      'the wait stands behind it',
      `${makeSafe}- unplug: K30
  warning: Stay clear of the front of the airbag.
- plug: K30
${giveBackOpened}`,
    ),
  },
};
