import { changesTo } from '../../bench/changes.ts';
import type { Watcher } from '../../paths/explore.ts';
import { powerAfter, powerAtStart, powerKey } from '../../bench/power.ts';
import type { Power } from '../../bench/power.ts';
import { running } from '../../paths/run.ts';
import { example, giveBackOpened, makeSafe } from '../examples.ts';
import type { Rule } from '../rule.ts';

/* The ignition while a source is taken away or given back. */

export const ignitionFirst: Rule = {
  name: 'ignition-first',
  severity: 'warning',
  stage: 'order',
  meaning: 'The ignition is on while a source is disconnected or reconnected.',
  why: 'Current then flows at the terminal, and the control unit wakes in the middle of the act.',
  source: 'common practice',
  finder: { watch: () => [running(ignition)] },
  examples: {
    triggers: example(
      'the battery comes off with the ignition on',
      `
- ignition: on
- read-codes: control-unit
- disconnect: battery
- ignition: off
- wait: 3 min
- unplug: K30
  warning: Stay clear of the front of the airbag.
- plug: K30
${giveBackOpened}`,
    ),
    passes: example(
      'the ignition goes off first',
      `${makeSafe}- unplug: K30
  warning: Stay clear of the front of the airbag.
- plug: K30
${giveBackOpened}`,
    ),
  },
};

const ignition: Watcher<Power> = {
  watches: 'the ignition',
  start: powerAtStart,
  key: powerKey,
  step: (power, step, report) => {
    for (const { id, isConnected } of power.ignitionOn ? changesTo('source', step) : [])
      report({
        rule: 'ignition-first',
        subject: id,
        message: `The ignition is still on when ${id} is ${isConnected ? 'reconnected' : 'disconnected'}: switch it off first.`,
      });
    return powerAfter(power, step, []);
  },
};
