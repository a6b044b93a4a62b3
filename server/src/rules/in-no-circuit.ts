import { example, giveBackOpened, makeSafe } from './examples.ts';
import { inNoCircuitFinder } from './in-no-circuit-check.ts';
import type { Rule } from './rule.ts';

export const inNoCircuit: Rule = {
  name: 'in-no-circuit',
  severity: 'error',
  stage: 'order',
  immune: true,
  meaning:
    'A live part of the file that stands in no circuit, or a step on a connector or part that stands in none.',
  why: 'Nothing is known of what feeds it or what it carries, so no order of steps on it can be proven: the proof would be empty.',
  source: 'a guard of this program',
  finder: inNoCircuitFinder,
  examples: {
    triggers: example(
      'K40 is in no path',
      `${makeSafe}
- unplug: K40
- plug: K40
- reconnect: battery
- ignition: on
- clear-codes: control-unit
`,
      {
        connectors: `connectors:
  K10: { contact: 2..15 mΩ }
  K30: { contact: 2..15 mΩ }
  K40: { contact: 2..15 mΩ }
`,
      },
    ),
    passes: example(
      'K30 is in the path of the driver loop',
      `${makeSafe}- unplug: K30
  warning: Stay clear of the front of the airbag.
- plug: K30
${giveBackOpened}`,
    ),
  },
};
