import { example, giveBackOpened, makeSafe } from './examples.ts';
import { halfOpenFinder } from './half-open-watch.ts';
import type { Rule } from './rule.ts';

export const halfOpen: Rule = {
  name: 'half-open',
  severity: 'error',
  stage: 'order',
  immune: true,
  meaning: 'Power returns to a live circuit that is open or has a load fitted, and the step has no warning.',
  why: 'With a connector open or a load in the place of a stage, power may return only on purpose, and while nobody is near the stage.',
  source: 'common practice',
  finder: halfOpenFinder,
  examples: {
    triggers: example(
      'the battery comes back with the lamp in the place of the stage',
      `${makeSafe}
- unplug: K30
  warning: Stay clear of the front of the airbag.
- fit: bench-lamp
  at: K30.monitor
- reconnect: battery
- ignition: on
- read: driver-loop
- ignition: off
- disconnect: battery
- wait: 3 min
- remove: bench-lamp
- plug: K30
${giveBackOpened}`,
    ),
    passes: example(
      'the same with a warning on the step',
      `${makeSafe}
- unplug: K30
  warning: Stay clear of the front of the airbag.
- fit: bench-lamp
  at: K30.monitor
- reconnect: battery
  warning: Nobody in front of the airbag while power comes back.
- ignition: on
- read: driver-loop
- ignition: off
- disconnect: battery
- wait: 3 min
- remove: bench-lamp
- plug: K30
${giveBackOpened}`,
    ),
  },
};
