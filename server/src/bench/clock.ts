import type { Id, Procedure, Step } from '../text/procedure.ts';
import type { Circuit, Circuits } from './circuits.ts';
import type { Watcher } from './explore.ts';
import { owedByAll } from './owed.ts';
import { isOff, powerAtStart, powerKey, switching } from './power.ts';
import type { Power } from './power.ts';

/** Live circuits fed by the very same sources: they owe one wait. */
export interface Group {
  readonly sources: readonly Id[];
  readonly circuits: readonly Circuit[];
  /** The whole wait, in seconds. */
  readonly whole: number;
}

/** Groups that share a source, directly or through others. */
export interface Cluster {
  readonly sources: readonly Id[];
  readonly groups: readonly Group[];
}

/** The power of a cluster's sources, and by group the wait still owed in seconds. */
export interface Clock {
  readonly power: Power;
  readonly owed: readonly number[];
}

export function clockAtStart(cluster: Cluster): Clock {
  return { power: powerAtStart, owed: cluster.groups.map((group) => group.whole) };
}

/** The clock after a step; the same object where the step neither switches a source nor lets time pass. */
export function clockAfter(clock: Clock, step: Step, cluster: Cluster): Clock {
  if (step.verb === 'wait') return { ...clock, owed: waited(clock, cluster, step.seconds) };
  const passed = switching(clock.power, step, cluster.sources);
  const power = passed.at(-1);
  if (power === undefined) return clock;
  const owed = cluster.groups.map((group, at) =>
    passed.every((one) => isGroupOff(group, one)) ? (clock.owed[at] ?? 0) : group.whole,
  );
  return { power, owed };
}

export function isGroupOff(group: Group, power: Power): boolean {
  return group.sources.every((source) => isOff(power, source));
}

/** Less than this many seconds owed is nothing but the rounding of sums. */
const noTime = 1e-6;

function waited({ power, owed }: Clock, cluster: Cluster, seconds: number): readonly number[] {
  return cluster.groups.map((group, at) => {
    const left = (owed[at] ?? 0) - (isGroupOff(group, power) ? seconds : 0);
    return left < noTime ? 0 : left;
  });
}

/** The automaton of a cluster's clock alone. A state with more wait owed stands for one with less. */
export function clockWatcher(cluster: Cluster): Watcher<Clock> {
  return {
    watches: `the power of ${cluster.sources.join(', ')} and the wait owed`,
    start: clockAtStart(cluster),
    key: ({ power, owed }) => `${powerKey(power)}|${owed.join()}`,
    covers: (seen, state) => powerKey(seen.power) === powerKey(state.power) && owesAtLeast(seen, state),
    step: (clock, step) => clockAfter(clock, step, cluster),
  };
}

export function owesAtLeast(one: Clock, other: Clock): boolean {
  return one.owed.every((owed, at) => owed >= (other.owed[at] ?? 0));
}

export function clustersOf(procedure: Procedure, circuits: Circuits): readonly Cluster[] {
  const groups = new Map<string, Circuit[]>();
  for (const circuit of circuits.live) {
    if (circuit.sources.length === 0) continue;
    const key = circuit.sources.join();
    groups.set(key, [...(groups.get(key) ?? []), circuit]);
  }
  const joined: Cluster[] = [];
  for (const members of groups.values()) {
    const sources = members[0]?.sources ?? [];
    const group: Group = { sources, circuits: members, whole: owedByAll(procedure, sources) };
    const sharing = joined.filter((cluster) => cluster.sources.some((source) => sources.includes(source)));
    for (const cluster of sharing) joined.splice(joined.indexOf(cluster), 1);
    joined.push({
      sources: [...new Set([...sharing.flatMap((cluster) => cluster.sources), ...sources])],
      groups: [...sharing.flatMap((cluster) => cluster.groups), group],
    });
  }
  return joined;
}
