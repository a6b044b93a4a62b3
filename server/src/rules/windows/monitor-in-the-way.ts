import { example, giveBackOpened, makeSafe, withHandMeter } from '../examples.ts';
import { monitorInTheWayFinder } from './measured-check.ts';
import type { Rule } from '../rule.ts';

export const monitorInTheWay: Rule = {
  name: 'monitor-in-the-way',
  severity: 'error',
  stage: 'windows',
  meaning: 'A monitor lies between the probes of another instrument.',
  why: 'What is inside of a control unit is not in the file, so nothing can be said of what the instrument shows there.',
  source: 'a consequence of the circuit as written',
  finder: monitorInTheWayFinder,
  examples: {
    triggers: example(
      'the control unit still hangs on the wires',
      `${makeSafe}
- unplug: K30
  warning: Stay clear of the front of the airbag.
- measure: resistance
  across: K30.monitor
  with: hand-meter
- plug: K30
${giveBackOpened}`,
      withHandMeter,
    ),
    passes: example(
      'it is unplugged from them',
      `${makeSafe}
- unplug: K10
  warning: Stay clear of the front of the airbag.
- unplug: K30
- measure: resistance
  across: K30.monitor
  with: hand-meter
  expect: open
- plug: K30
- plug: K10
${giveBackOpened}`,
      withHandMeter,
    ),
  },
};
