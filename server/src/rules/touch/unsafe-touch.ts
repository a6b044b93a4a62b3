import { changesTo } from '../../bench/changes.ts';
import { clockAfter, clockAtStart, clockTaken, owesAtLeast } from '../../bench/clock.ts';
import type { Clock, Cluster } from '../../bench/clock.ts';
import type { Watcher } from '../../paths/explore.ts';
import { hardwareKey } from '../../bench/hardware.ts';
import { powerKey } from '../../bench/power.ts';
import { proofsKey } from '../../bench/proofs.ts';
import { running } from '../../paths/run.ts';
import { touchesOf } from '../../bench/touch.ts';
import type { Id, Place, Step } from '../../model/procedure.ts';
import type { Context, Finder } from '../rule.ts';
import { judgeProof, judgeTouch } from './touch-judge.ts';
import type { Excused, Unsafe } from './touch-judge.ts';
import { listed } from '../words.ts';

/*
 * Hands on what can be live: safe when every source of it is off, the wait is over and, for high voltage, it is proven
 * dead. One automaton finds each cause, and the proofs that are taken before they can mean anything.
 */

export const unsafeTouch: Finder = {
  watch: (context) => context.clusters.map((cluster) => running(touchWatcher(context, cluster))),
};

interface State {
  readonly clock: Clock;
  readonly excused: Excused;
  /** Where loads sit, of those on connectors that concern the cluster. */
  readonly places: ReadonlyMap<Id, Place>;
  /** All but the wait owed. */
  readonly base: string;
}

function touchWatcher(context: Context, cluster: Cluster): Watcher<State> {
  const start = settled({ clock: clockAtStart(cluster), excused: [], places: new Map() });
  const proofs = cluster.highVoltage.length === 0 ? '' : ', what is proven dead';
  return {
    watches: `the power of ${listed(cluster.sources)}, the wait owed${proofs}, and the places of the loads`,
    start,
    key: (state) => `${state.base}|${state.clock.owed.join()}`,
    // A wait that is owed hides a proof that is missing, so with high voltage no state stands for another.
    ...(cluster.highVoltage.length > 0
      ? {}
      : {
          covers: (seen: State, state: State) =>
            seen.base === state.base && owesAtLeast(seen.clock, state.clock),
        }),
    step: (state, step, report) => {
      const touched = touchesOf(step, (load) => state.places.get(load)).flatMap((touch) =>
        judgeTouch(context, cluster, state, step, touch),
      );
      const unsafe = [...touched, ...judgeProof(context, cluster, state, step)];
      for (const { issue } of unsafe) report(issue);
      const excused = unsafe.length === 0 ? state : excuse(state, unsafe);
      return moved(context, cluster, switched(cluster, excused, step), step);
    },
    take: (state, step, edge) => {
      const clock = clockTaken(state.clock, step, edge.taken, cluster);
      return clock === state.clock ? state : settled({ ...state, clock });
    },
  };
}

function excuse(state: State, unsafe: readonly Unsafe[]): State {
  const sets = new Map(state.excused.map((set) => [set.join(), set]));
  for (const { groups } of unsafe)
    for (const { sources } of groups) {
      const set = [...sources].sort();
      sets.set(set.join(), set);
    }
  return settled({ ...state, excused: [...sets.keys()].sort().map((key) => sets.get(key) ?? []) });
}

function switched(cluster: Cluster, state: State, step: Step): State {
  const clock = clockAfter(state.clock, step, cluster);
  if (clock === state.clock) return state;
  return settled({ ...state, clock, excused: stillExcused(state, step) });
}

/** An excuse ends when one of its sources or the ignition is switched. */
function stillExcused({ excused }: State, step: Step): Excused {
  if (changesTo('ignition', step).length > 0) return [];
  const switched = changesTo('source', step).map(({ id }) => id);
  return excused.filter((set) => !set.some((source) => switched.includes(source)));
}

function moved(context: Context, cluster: Cluster, state: State, step: Step): State {
  return changesTo('load', step).reduce((before, { id, at }) => {
    const concerns = at !== null && concernsCluster(context, cluster, at.connector);
    if (!concerns && !before.places.has(id)) return before;
    const places = new Map(before.places);
    if (concerns) places.set(id, at);
    else places.delete(id);
    return settled({ ...before, places });
  }, state);
}

function concernsCluster(context: Context, cluster: Cluster, connector: Id): boolean {
  const concerned = context.circuits.hazardsAt(connector);
  return cluster.groups.some((group) => group.hazards.some((hazard) => concerned.includes(hazard)));
}

function settled(state: Omit<State, 'base'>): State {
  const { power, proven, hardware } = state.clock;
  const places = [...state.places].map(([load, place]) => `${load}@${place.connector}`).sort();
  const excused = state.excused.map((set) => set.join('+'));
  return {
    ...state,
    base: [powerKey(power), hardwareKey(hardware), proofsKey(proven), excused.join(), places.join()].join(
      '|',
    ),
  };
}
