import { example, giveBackOpened, makeSafe } from '../examples.ts';
import { unsafeTouch } from './unsafe-touch.ts';
import type { Rule } from '../rule.ts';

export const shortWait: Rule = {
  name: 'short-wait',
  severity: 'error',
  stage: 'order',
  immune: true,
  meaning:
    'A step makes someone touch a live circuit after its sources are off, but before the waiting time is over.',
  why: 'The energy reserve of a restraint system can fire a stage for minutes after the battery is off. The waiting time is the longer of the stated one and the time in which the reserve runs down.',
  source: 'common practice; discharge t = R C ln(V0/V)',
  finder: unsafeTouch,
  examples: {
    triggers: example(
      'one minute where three are stated',
      `${makeSafe.replace('3 min', '1 min')}- unplug: K30
  warning: Stay clear of the front of the airbag.
- plug: K30
${giveBackOpened}`,
    ),
    passes: example(
      'the stated three minutes, in two waits',
      `${makeSafe.replace('3 min', '1 min')}- wait: 2 min
- unplug: K30
  warning: Stay clear of the front of the airbag.
- plug: K30
${giveBackOpened}`,
    ),
  },
};
