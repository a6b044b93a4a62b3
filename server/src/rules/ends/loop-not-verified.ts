import { example, giveBackOpened, makeSafe } from '../examples.ts';
import { loopVerifiedFinder } from './verified-watch.ts';
import type { Rule } from '../rule.ts';

export const loopNotVerified: Rule = {
  name: 'loop-not-verified',
  severity: 'warning',
  stage: 'order',
  meaning:
    'A loop has been opened, or something of it replaced, and no later reading shows that it is sound.',
  why: 'A pin pushed back or a lock left open while plugging would go out unseen.',
  source: 'common practice',
  finder: loopVerifiedFinder,
  examples: {
    triggers: example(
      'K30 is plugged again and not read',
      `${makeSafe}- unplug: K30
  warning: Stay clear of the front of the airbag.
- plug: K30
- reconnect: battery
- ignition: on
- clear-codes: control-unit
`,
    ),
    passes: example(
      'the loop is read after it',
      `${makeSafe}- unplug: K30
  warning: Stay clear of the front of the airbag.
- plug: K30
${giveBackOpened}`,
    ),
  },
};
