import { circuit, example, giveBackOpened, makeSafe, withHandMeter } from '../examples.ts';
import { barInTheWayFinder } from './measured-check.ts';
import type { Rule } from '../rule.ts';

const withBar = {
  ...withHandMeter,
  connectors: circuit.connectors.replace('side: end', 'side: monitor'),
};

export const barInTheWay: Rule = {
  name: 'bar-in-the-way',
  severity: 'error',
  stage: 'order',
  meaning: 'Something is measured by hand across a side of a connector whose shorting bar is closed there.',
  why: 'The bar bridges what is to be measured. The instrument shows the bar, and a broken wire behind it looks sound.',
  source: 'common practice, no source',
  finder: barInTheWayFinder,
  examples: {
    triggers: example(
      'the harness is measured at the side on which the bar has closed',
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
      withBar,
    ),
    passes: example(
      'the bar itself is meant, and its window is stated',
      `${makeSafe}
- unplug: K10
  warning: Stay clear of the front of the airbag.
- unplug: K30
- measure: resistance
  across: K30.monitor
  with: hand-meter
  expect: 0.15..0.45 Ω
- plug: K30
- plug: K10
${giveBackOpened}`,
      withBar,
    ),
  },
};
