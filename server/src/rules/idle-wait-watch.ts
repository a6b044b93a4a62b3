import type { Watcher } from '../bench/explore.ts';
import { isOff, powerAfter, powerAtStart, powerKey } from '../bench/power.ts';
import type { Power } from '../bench/power.ts';
import { running } from '../bench/run.ts';
import type { Id } from '../text/procedure.ts';
import type { Finder } from './rule.ts';
import { listed, whatIsOn } from './words.ts';

/* A wait during which nothing runs down, because all that is live is still fed. */

export const idleWaitFinder: Finder = {
  watch: ({ circuits }) => {
    const fed = circuits.hazards.map((hazard) => hazard.sources).filter((sources) => sources.length > 0);
    return fed.length === 0 ? [] : [running(waitWatcher(fed))];
  },
};

function waitWatcher(fed: readonly (readonly Id[])[]): Watcher<Power> {
  const sources = [...new Set(fed.flat())];
  return {
    watches: `the power of ${listed(sources)}`,
    start: powerAtStart,
    key: powerKey,
    step: (power, step, report) => {
      const isFed = (feeding: readonly Id[]): boolean => feeding.some((source) => !isOff(power, source));
      if (step.verb === 'wait' && fed.every(isFed))
        report({
          rule: 'wait-without-effect',
          message: `Nothing runs down during this wait: ${whatIsOn(power, sources)}.`,
        });
      return powerAfter(power, step, sources);
    },
  };
}
