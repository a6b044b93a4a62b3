import { clockAfter, clockAtStart, clockTaken, isGroupOff, owesAtLeast } from '../../bench/clock.ts';
import type { Clock, Cluster } from '../../bench/clock.ts';
import type { Reported, Watcher } from '../../paths/explore.ts';
import { hardwareKey } from '../../bench/hardware.ts';
import type { Issue } from '../../paths/issue.ts';
import { powerKey } from '../../bench/power.ts';
import { proofsKey } from '../../bench/proofs.ts';
import type { Run } from '../../paths/run.ts';
import { formatWait } from '../../quantity/quantity.ts';
import type { Procedure } from '../../model/procedure.ts';
import { adviceTo, onlyOne, subjectOf } from './hands-advice.ts';
import { handsInText, isLookedAt } from './hands-in-text-check.ts';
import type { Worded } from './hands-in-text-check.ts';
import type { Context, Finder } from '../rule.ts';
import { sentencesOf } from './sentences.ts';
import type { Deed } from './sentences.ts';
import { listed, notSaidBecause, whatIsOn } from '../words.ts';

/*
 * Steps in words while something can still fire, is charged or not proven dead: they say what hands touch, and in what
 * they say is no word of doing. One automaton for each cluster of sources finds the steps; what they say is judged
 * behind it, since an automaton is asked once for all steps that do the same.
 */

export const handsFinder: Finder = {
  watch: (context) => context.clusters.map((cluster) => watchHands(context, cluster)),
  check: handsInText,
};

function watchHands({ procedure, graph }: Context, cluster: Cluster): Run {
  const watcher = unsafeWatcher(cluster);
  return function* ({ explore }) {
    const { reported, complete } = yield* explore(watcher);
    const judged = reported.flatMap((one): Reported[] => {
      const step = graph.steps[one.index];
      if (step?.verb !== 'do' && step?.verb !== 'inspect') return [];
      return judge(procedure, step, one.issue.message).map((issue) => ({ ...one, issue }));
    });
    return { reported: judged, complete };
  };
}

/** Reports each step in words that is reached while the cluster is not safe; the message says why that is so. */
function unsafeWatcher(cluster: Cluster): Watcher<Clock> {
  const keyOf = ({ power, proven, hardware }: Clock): string =>
    [powerKey(power), hardwareKey(hardware), proofsKey(proven)].join('|');
  return {
    watches: `the power of ${listed(cluster.sources)} and the wait owed`,
    start: clockAtStart(cluster),
    key: (clock) => `${keyOf(clock)}|${clock.owed.join()}`,
    // A state that owes more is less safe in every way.
    covers: (seen, clock) => keyOf(seen) === keyOf(clock) && owesAtLeast(seen, clock),
    step: (clock, step, report) => {
      if (step.verb === 'do' || step.verb === 'inspect') {
        const why = whyUnsafe(cluster, clock);
        if (why !== null) report({ rule: 'touch-not-said', message: why });
      }
      return clockAfter(clock, step, cluster);
    },
    take: (clock, step, edge) => clockTaken(clock, step, edge.taken, cluster),
  };
}

/** `the circuit of stage-1 has power: battery is connected`; null: all is off, waited for and proven dead. */
function whyUnsafe({ groups, highVoltage }: Cluster, clock: Clock): string | null {
  const isOn = groups.filter((group) => !isGroupOff(group, clock.power));
  if (isOn.length > 0) {
    const sources = isOn.flatMap((group) => group.sources);
    return `${circuitOf(isOn)} has power: ${whatIsOn(clock.power, [...new Set(sources)])}`;
  }
  const owing = groups.filter((_, at) => (clock.owed[at] ?? 0) > 0);
  if (owing.length > 0) {
    const most = groups.reduce((wait, _, at) => Math.max(wait, clock.owed[at] ?? 0), 0);
    const sources = listed([...new Set(owing.flatMap((group) => group.sources))]);
    return `${circuitOf(owing)} can still hold energy: after ${sources} is off ${formatWait(most)} of the wait remain`;
  }
  const unproven = highVoltage.filter((source) => !clock.proven.has(source));
  return unproven.length === 0 ? null : `nobody has verified that no voltage of ${listed(unproven)} is left`;
}

function circuitOf(groups: Cluster['groups']): string {
  const live = new Set(groups.flatMap(({ hazards }) => hazards.flatMap((hazard) => hazard.live)));
  return `the circuit of ${listed([...live])}`;
}

function judge(procedure: Procedure, step: Worded, why: string): readonly Issue[] {
  return [...(step.at === 'not said' ? [notSaid(why)] : []), ...deedIn(procedure, step, why)];
}

function notSaid(why: string): Issue {
  return {
    rule: 'touch-not-said',
    message: notSaidBecause(why),
  };
}

/** The first word of doing where hands touch nothing, or of what is only looked at. */
function deedIn(procedure: Procedure, step: Worded, why: string): readonly Issue[] {
  const touchesNothing = step.at === 'nothing';
  if (!touchesNothing && step.of.length === 0) return [];
  const isCovered = ({ names }: Deed): boolean =>
    touchesNothing || names.some(({ meaning }) => isLookedAt(procedure, step, meaning));
  const deed = sentencesOf(procedure)(step.text).deeds.find(isCovered);
  if (deed === undefined) return [];
  const { said, doing, names } = deed;
  const of = touchesNothing
    ? (names.find(({ meaning }) => meaning.as === 'id') ?? names[0])
    : names.find(({ meaning }) => isLookedAt(procedure, step, meaning));
  const stated = touchesNothing
    ? 'the step says `at: nothing`'
    : `\`of\` says that ${of?.name ?? 'it'} is only looked at`;
  const advice =
    doing === null
      ? 'write a `measure` step, which is checked'
      : adviceTo(procedure, doing, of === undefined ? null : onlyOne(of.meaning));
  return [
    {
      rule: 'hands-in-text',
      severity: 'error',
      immune: true,
      subject: of === undefined ? (doing?.base ?? said) : subjectOf(of),
      message: `The text says "${said}", but ${stated} while ${why}. Only steps are checked: ${advice}.`,
    },
  ];
}
