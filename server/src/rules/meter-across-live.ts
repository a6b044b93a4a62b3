import { example, giveBackOpened, makeSafe, withHandMeter } from './examples.ts';
import { meterAcrossLiveFinder } from './measured-check.ts';
import type { Rule } from './rule.ts';

export const meterAcrossLive: Rule = {
  name: 'meter-across-live',
  severity: 'error',
  stage: 'order',
  immune: true,
  meaning: 'An ohmmeter sends its current through a live stage.',
  why: 'What an ohmmeter sends can fire a stage, and nobody in the bay knows its current for certain. Whether a stage lies between the probes is looked for in the network as it stands, whatever the values.',
  source: 'common practice, no source; biconnected components: Tarjan 1973 (from memory)',
  finder: meterAcrossLiveFinder,
  examples: {
    triggers: example(
      'the side of the connector that hangs on the stage',
      `${makeSafe}
- unplug: K30
  warning: Stay clear of the front of the airbag.
- measure: resistance
  across: K30.end
  with: hand-meter
- plug: K30
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
- plug: K30
- plug: K10
${giveBackOpened}`,
      withHandMeter,
    ),
  },
};
