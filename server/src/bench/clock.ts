import type { Taken } from '../model/finding.ts';
import type { Id, Procedure, Step } from '../model/procedure.ts';
import { isHighVoltage } from '../model/source-kinds.ts';
import { changesTo } from './changes.ts';
import type { Circuits } from './circuits.ts';
import type { Watcher } from '../paths/explore.ts';
import { hardwareAfter, hardwareAtStart } from './hardware.ts';
import type { Hardware } from './hardware.ts';
import type { Hazard } from './hazards.ts';
import { owedByAll } from './owed.ts';
import { powerAtStart, powerKey, switching } from './power.ts';
import type { Power } from './power.ts';
import { connectorsAround, noProofs, withProof, withoutProof } from './proofs.ts';
import type { Proofs } from './proofs.ts';

/** Hazards with the very same sources: they owe one wait. */
export interface Group {
  readonly sources: readonly Id[];
  readonly hazards: readonly Hazard[];
  /** The whole wait, in seconds. */
  readonly whole: number;
}

/** Groups that share a source, directly or through others. */
export interface Cluster {
  readonly sources: readonly Id[];
  readonly groups: readonly Group[];
  /** Those of its sources that have to be proven dead. */
  readonly highVoltage: readonly Id[];
  /** The connectors around what these lead to. */
  readonly connectors: ReadonlySet<Id>;
  readonly procedure: Procedure;
}

/** The power of a cluster's sources, by group the wait still owed in seconds, and what is proven dead. */
export interface Clock {
  readonly power: Power;
  readonly owed: readonly number[];
  readonly proven: Proofs;
  /** The connectors and loads around what high voltage leads to, on which it depends what a proof holds for. */
  readonly hardware: Hardware;
}

export function clockAtStart(cluster: Cluster): Clock {
  const owed = cluster.groups.map((group) => group.whole);
  return { power: powerAtStart, owed, proven: noProofs, hardware: hardwareAtStart };
}

/** The clock after a step; the same object where the step neither switches a source nor lets time pass. */
export function clockAfter(clock: Clock, step: Step, cluster: Cluster): Clock {
  const hardware = hardwareAfter(clock.hardware, step, cluster);
  const before = switched(clock, step, cluster);
  return changesTo('time', step).reduce(
    (after, { seconds }) => ({ ...after, owed: waited(after, cluster, seconds) }),
    hardware === before.hardware ? before : { ...before, hardware },
  );
}

function switched(clock: Clock, step: Step, cluster: Cluster): Clock {
  const passed = switching(clock.power, step, cluster.sources);
  const power = passed.at(-1);
  if (power === undefined) return clock;
  const staysOff = cluster.groups.map((group) => passed.every((one) => isGroupOff(group, one)));
  const owed = cluster.groups.map((group, at) =>
    staysOff[at] === true ? (clock.owed[at] ?? 0) : group.whole,
  );
  // A proof lapses when power returns to anything that the source feeds.
  const lapsed = cluster.groups.flatMap((group, at) => (staysOff[at] === true ? [] : group.sources));
  return { ...clock, power, owed, proven: withoutProof(clock.proven, lapsed) };
}

/**
 * The clock after a way out: `dead` proves a source where all that it feeds is off and owes no wait, any other way out
 * of a proof takes an earlier one away. The same object where the step proves nothing of the cluster.
 */
export function clockTaken(clock: Clock, step: Step, taken: Taken, cluster: Cluster): Clock {
  if (step.verb !== 'prove-dead' || !cluster.highVoltage.includes(step.source)) return clock;
  const { source } = step;
  const saysDead = taken.kind === 'outcome' && taken.outcome === 'dead';
  const early = cluster.groups.some(
    (group, at) =>
      group.sources.includes(source) && (!isGroupOff(group, clock.power) || (clock.owed[at] ?? 0) > 0),
  );
  if (saysDead && !early) {
    const proven = withProof(cluster.procedure, clock.proven, source, step.at, clock.hardware);
    return { ...clock, proven };
  }
  return { ...clock, proven: withoutProof(clock.proven, [source]) };
}

export function isGroupOff(group: Group, power: Power): boolean {
  if (power.ignitionOn || group.sources.length > power.disconnected.length) return false;
  const disconnected = new Set(power.disconnected);
  return group.sources.every((source) => disconnected.has(source));
}

/** Less than this many seconds owed is nothing but the rounding of sums. */
const noTime = 1e-6;

function waited({ power, owed }: Clock, cluster: Cluster, seconds: number): readonly number[] {
  return cluster.groups.map((group, at) => {
    const left = (owed[at] ?? 0) - (isGroupOff(group, power) ? seconds : 0);
    return left < noTime ? 0 : left;
  });
}

/** The automaton of a cluster's power and wait. A state with more wait owed stands for one with less. */
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
  const groups = new Map<string, Hazard[]>();
  for (const hazard of circuits.hazards) {
    if (hazard.sources.length === 0) continue;
    const key = hazard.sources.join();
    groups.set(key, [...(groups.get(key) ?? []), hazard]);
  }
  const joined: Pick<Cluster, 'sources' | 'groups'>[] = [];
  for (const hazards of groups.values()) {
    const sources = hazards[0]?.sources ?? [];
    const group: Group = { sources, hazards, whole: owedByAll(procedure, sources) };
    const sharing = joined.filter((cluster) => cluster.sources.some((source) => sources.includes(source)));
    for (const cluster of sharing) joined.splice(joined.indexOf(cluster), 1);
    joined.push({
      sources: [...new Set([...sharing.flatMap((cluster) => cluster.sources), ...sources])],
      groups: [...sharing.flatMap((cluster) => cluster.groups), group],
    });
  }
  const isProven = (id: Id): boolean => isHighVoltage(procedure.sources.get(id));
  return joined.map((cluster) => {
    const highVoltage = cluster.sources.filter(isProven);
    const connectors = new Set(highVoltage.flatMap((source) => connectorsAround(procedure, source)));
    return { ...cluster, highVoltage, connectors, procedure };
  });
}
