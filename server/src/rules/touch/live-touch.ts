import { example, giveBackOpened, makeSafe } from '../examples.ts';
import { unsafeTouch } from './unsafe-touch.ts';
import type { Rule } from '../rule.ts';

export const liveTouch: Rule = {
  name: 'live-touch',
  severity: 'error',
  stage: 'order',
  immune: true,
  meaning: 'A step makes someone touch a live circuit while a source is connected or the ignition is on.',
  why: 'While the circuit has power, an airbag or belt tensioner can fire when a connector is opened, closed or probed. Whoever does that is in its path.',
  source: 'common practice; order of de-energizing as in NFPA 70E-2018, 120.5',
  finder: unsafeTouch,
  examples: {
    triggers: example(
      'the stage is unplugged with the battery connected',
      `
- ignition: on
- read-codes: control-unit
- ignition: off
- unplug: K30
  warning: Stay clear of the front of the airbag.
- plug: K30
- disconnect: battery
- wait: 3 min
${giveBackOpened}`,
    ),
    passes: example(
      'the battery is off and the wait is over',
      `${makeSafe}- unplug: K30
  warning: Stay clear of the front of the airbag.
- plug: K30
${giveBackOpened}`,
    ),
  },
};
