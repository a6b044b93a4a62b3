import { changesTo } from '../bench/changes.ts';
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
    for (const { id, isConnected } of power.ignitionOn ? changesTo('source', step) : [])
      report({
        rule: 'ignition-first',
        subject: id,
        message: `The ignition is still on when ${id} is ${isConnected ? 'reconnected' : 'disconnected'}: switch it off first.`,
      });
    return powerAfter(power, step, []);
  },
};

export const ignitionFirstFinder: Finder = { watch: () => [running(ignition)] };
