import type { Watcher } from '../bench/explore.ts';
import { powerAfter, powerAtStart, powerKey } from '../bench/power.ts';
import type { Power } from '../bench/power.ts';
import { running } from '../bench/run.ts';
import type { Finder } from './rule.ts';

/* The ignition while a source is taken away or given back. */

const ignition: Watcher<Power> = {
  watches: 'the ignition',
  start: powerAtStart,
  key: powerKey,
  step: (power, step, report) => {
    if ((step.verb === 'disconnect' || step.verb === 'reconnect') && power.ignitionOn)
      report({
        rule: 'ignition-first',
        subject: step.source,
        message: `The ignition is still on when ${step.source} is ${step.verb}ed: switch it off first.`,
      });
    return powerAfter(power, step, []);
  },
};

export const ignitionFirstFinder: Finder = { watch: () => [running(ignition)] };
