import { example, giveBackOpened, makeSafe, withHandMeter } from '../examples.ts';
import type { Rule } from '../rule.ts';
import { underPower } from './under-power-watch.ts';

export const meterAcrossLive: Rule = {
  name: 'meter-across-live',
  severity: 'error',
  stage: 'order',
  immune: true,
  meaning: 'Something is measured by hand where a stage hangs on the probes, live or inert.',
  why: 'What an instrument sends can fire a stage, and nobody in the bay knows for certain what it sends. A wire that touches ground makes a path that no diagram shows. So it is asked only whether a stage hangs together with a probe, ground taken out, whatever the values.',
  source: 'common practice, no source',
  finder: underPower,
  examples: {
    triggers: example(
      'the side of the connector that hangs on the stage',
      `${makeSafe}
- unplug: K10
  warning: Stay clear of the front of the airbag.
- measure: resistance
  across: K10.end
  with: hand-meter
- plug: K10
${giveBackOpened}`,
      withHandMeter,
    ),
    passes: example(
      'the wires that lead to it, parted from the control unit too',
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
