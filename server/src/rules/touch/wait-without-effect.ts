import type { Watcher } from '../../paths/explore.ts';
import { isOff, powerAfter, powerAtStart, powerKey } from '../../bench/power.ts';
import type { Power } from '../../bench/power.ts';
import { running } from '../../paths/run.ts';
import { poweredAsBuilt } from '../../bench/supplies.ts';
import type { Id } from '../../model/procedure.ts';
import { example, giveBackOpened, makeSafe } from '../examples.ts';
import type { Context, Rule } from '../rule.ts';
import { listed, whatIsOn } from '../words.ts';

/* A wait during which nothing runs down: all that is live, and all that owes a wait, is still fed. */

export const waitWithoutEffect: Rule = {
  name: 'wait-without-effect',
  severity: 'warning',
  stage: 'order',
  meaning: 'A wait while all that is live, and all that can stay charged, is still fed.',
  why: 'Nothing runs down while a source is on; the whole wait is owed from the moment at which the last one is off.',
  source: 'common practice',
  finder: {
    watch: (context) => {
      const fed = fedTogether(context);
      return fed.length === 0 && !runsOn(context) ? [] : [running(waitWatcher(fed, runsOn(context)))];
    },
  },
  examples: {
    triggers: example(
      'the wait stands before the battery comes off',
      `
- ignition: on
- read-codes: control-unit
- ignition: off
- wait: 3 min
- disconnect: battery
- wait: 3 min
- unplug: K30
  warning: Stay clear of the front of the airbag.
- plug: K30
${giveBackOpened}`,
    ),
    passes: example(
      'the wait stands behind it',
      `${makeSafe}- unplug: K30
  warning: Stay clear of the front of the airbag.
- plug: K30
${giveBackOpened}`,
    ),
  },
};

/** Sources that must all be off before something runs down. */
function fedTogether({ procedure, circuits }: Context): readonly (readonly Id[])[] {
  const ofHazards = circuits.hazards.map((hazard) => hazard.sources).filter((sources) => sources.length > 0);
  const ofPieces = poweredAsBuilt(procedure)
    .filter((supplies) => supplies.some(({ wait }) => wait > 0))
    .filter((supplies) => supplies.every(({ offWith }) => offWith !== 'never'))
    .map((supplies) => supplies.flatMap(({ source, offWith }) => (offWith === 'itself' ? [source] : [])));
  return [...ofHazards, ...ofPieces];
}

/** Whether some supply runs on for a stated time after the ignition is off. */
function runsOn({ procedure: { regulated } }: Context): boolean {
  return [...regulated.values()].some(({ afterRun }) => typeof afterRun === 'number' && afterRun > 0);
}

function waitWatcher(fed: readonly (readonly Id[])[], runsOn: boolean): Watcher<Power> {
  const sources = [...new Set(fed.flat())];
  return {
    watches: `the power of ${listed(sources)}`,
    start: powerAtStart,
    key: powerKey,
    step: (power, step, report) => {
      const isFed = (feeding: readonly Id[]): boolean => feeding.some((source) => !isOff(power, source));
      const isIdle = fed.every(isFed) && !(runsOn && !power.ignitionOn);
      if (step.verb === 'wait' && isIdle)
        report({
          rule: 'wait-without-effect',
          message: `Nothing runs down during this wait: ${whatIsOn(power, sources)}.`,
        });
      return powerAfter(power, step, sources);
    },
  };
}
