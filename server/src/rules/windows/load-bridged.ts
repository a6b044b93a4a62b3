import { changesTo } from '../../bench/changes.ts';
import type { Watcher } from '../../paths/explore.ts';
import { placeInWords, stateOf } from '../../bench/hardware.ts';
import type { Hardware } from '../../bench/hardware.ts';
import type { Issue } from '../../paths/issue.ts';
import { connectorWithLoads } from '../../bench/items.ts';
import { running } from '../../paths/run.ts';
import { bridgedLoads, nominally } from '../../readings/bridged.ts';
import type { Bridged } from '../../readings/bridged.ts';
import { ohmsInWords } from '../../readings/shown-in-words.ts';
import type { Id, Procedure, Step } from '../../model/procedure.ts';
import { example, makeSafe, readAndHandOver } from '../examples.ts';
import type { Rule } from '../rule.ts';

/*
 * Loads that come to lie in parallel with a closed shorting bar, at the step that brings them there: the load is fitted
 * on it, a lock is lifted and the bar closes, or the adapter that held it open is taken away.
 */

export const loadBridged: Rule = {
  name: 'load-bridged',
  severity: 'error',
  stage: 'windows',
  meaning: 'A load lies in parallel with a closed shorting bar.',
  why: 'The bar makes any load look like a bridged loop, so that the reading says nothing of what the load stands for. A load goes where no bar is closed, or on an adapter that opens it.',
  source: 'common practice',
  finder: {
    watch: ({ procedure }) =>
      [...procedure.connectors.values()]
        .filter(({ shortingBar }) => shortingBar !== null)
        .map(({ id }) => running(connectorWatcher(procedure, id))),
  },
  examples: {
    triggers: example(
      'the bar of K30 is on the side of the stage',
      `${makeSafe}
- unplug: K30
  warning: Stay clear of the front of the airbag.
- fit: bench-lamp
  at: K30.end
${readAndHandOver('bench-lamp')}`,
    ),
    passes: example(
      'the lamp on the other side, which the monitor reads',
      `${makeSafe}
- unplug: K30
  warning: Stay clear of the front of the airbag.
- fit: bench-lamp
  at: K30.monitor
${readAndHandOver('bench-lamp')}`,
    ),
  },
};

function connectorWatcher(procedure: Procedure, id: Id): Watcher<Hardware> {
  const item = connectorWithLoads(id);
  return {
    ...item,
    step: (hardware, step, report) => {
      const after = item.step(hardware, step, report);
      // To take apart what a load sits on is impossible, and said to be.
      const isTakenApart = stateOf(after, id) === 'unplugged' && stateOf(hardware, id) !== 'unplugged';
      if (after !== hardware && !isTakenApart) {
        const before = bridgedLoads(procedure, hardware).map(({ load }) => load);
        for (const one of bridgedLoads(procedure, after))
          if (!before.includes(one.load)) report(bridged(procedure, one, after, step));
      }
      return after;
    },
  };
}

function bridged(procedure: Procedure, one: Bridged, hardware: Hardware, step: Step): Issue {
  const { load, place } = one;
  const ohms = nominally(procedure, one);
  const numbers =
    ohms === null
      ? ''
      : `, together about ${ohmsInWords(ohms.together)} instead of ${ohmsInWords(ohms.alone)}`;
  const message =
    `${load} at ${placeInWords(place)} lies in parallel with the closed shorting bar of ${place.connector}${numbers}: ` +
    `${advice(procedure, one, hardware)}.`;
  return { rule: 'load-bridged', subject: load, message, ...underlined(step, load) };
}

function advice({ connectors }: Procedure, { place, bar }: Bridged, hardware: Hardware): string {
  const { connector, side } = place;
  const isApart = stateOf(hardware, connector) === 'unplugged';
  if (side !== bar.side) return `unplug ${connector} before`;
  const near = connectors.get(connector)?.sides[0] ?? 'monitor';
  if (bar.side === near) return 'only an adapter that opens the bar can be read here';
  return isApart
    ? `fit it at ${connector}.${near}`
    : `unplug ${connector} and fit it at ${connector}.${near}`;
}

function underlined(step: Step, load: Id): Pick<Issue, 'underline'> {
  const change = changesTo('load', step).find(({ id }) => id === load);
  return change === undefined ? {} : { underline: change.named };
}
