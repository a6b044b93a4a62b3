import type { Circuit } from '../bench/circuits.ts';
import { clockAfter, clockAtStart, clustersOf, owesAtLeast } from '../bench/clock.ts';
import type { Clock, Cluster, Group } from '../bench/clock.ts';
import type { Watcher } from '../bench/explore.ts';
import type { Issue } from '../bench/issue.ts';
import { owedByAll } from '../bench/owed.ts';
import { isOff, powerKey } from '../bench/power.ts';
import { running } from '../bench/run.ts';
import { touchesOf } from '../bench/touch.ts';
import type { Touch } from '../bench/touch.ts';
import { formatWait } from '../quantity/quantity.ts';
import type { Id, Place, Procedure, Step } from '../text/procedure.ts';
import type { Context, Finder } from './rule.ts';
import { listed, whatIsOn } from './words.ts';

/*
 * Hands on a live circuit: safe when every source that feeds it is off and the wait is over. One automaton finds both
 * causes: a source that is on, and a wait that is still owed.
 */

export const unsafeTouch: Finder = {
  watch: (context) =>
    clustersOf(context.procedure, context.circuits).map((cluster) => running(touchWatcher(context, cluster))),
};

interface State {
  readonly clock: Clock;
  /** Sources that count as safe after a finding, a set for each unsafe touch. */
  readonly excused: readonly (readonly Id[])[];
  /** Where loads sit, of those on connectors that concern the cluster. */
  readonly places: ReadonlyMap<Id, Place>;
  /** All but the wait owed. */
  readonly base: string;
}

function touchWatcher(context: Context, cluster: Cluster): Watcher<State> {
  const start = settled({ clock: clockAtStart(cluster), excused: [], places: new Map() });
  return {
    watches: `the power of ${listed(cluster.sources)}, the wait owed, and the places of the loads`,
    start,
    key: (state) => `${state.base}|${state.clock.owed.join()}`,
    covers: (seen, state) => seen.base === state.base && owesAtLeast(seen.clock, state.clock),
    step: (state, step, report) => {
      const unsafe = touchesOf(step, (load) => state.places.get(load)).flatMap((touch) =>
        judge(context, cluster, state, touch),
      );
      for (const { issue } of unsafe) report(issue);
      const excused = unsafe.length === 0 ? state : excuse(state, unsafe);
      return moved(context, cluster, switched(cluster, excused, step), step);
    },
  };
}

interface Unsafe {
  readonly issue: Issue;
  readonly sources: readonly Id[];
}

function judge(context: Context, cluster: Cluster, state: State, touch: Touch): readonly Unsafe[] {
  const concerned = context.circuits.touchedBy(touch.id);
  const { power, owed } = state.clock;
  const on: Group[] = [];
  const owing: Group[] = [];
  let wait = 0;
  for (const [at, group] of cluster.groups.entries()) {
    if (!group.circuits.some((circuit) => concerned.includes(circuit))) continue;
    const judged = group.sources.filter((source) => !state.excused.some((set) => set.includes(source)));
    if (judged.some((source) => !isOff(power, source))) on.push(group);
    else if (judged.length > 0 && (owed[at] ?? 0) > 0) {
      owing.push(group);
      wait = Math.max(wait, owed[at] ?? 0);
    }
  }
  const found: Unsafe[] = [];
  if (on.length > 0)
    found.push({
      issue: liveTouch(context.procedure, touch, stages(on, concerned), on, state),
      sources: sourcesOf(on),
    });
  if (owing.length > 0) {
    const issue = shortWait(context.procedure, touch, stages(owing, concerned), owing, wait);
    found.push({ issue, sources: sourcesOf(owing) });
  }
  return found;
}

function liveTouch(
  procedure: Procedure,
  touch: Touch,
  live: readonly Id[],
  groups: readonly Group[],
  state: State,
): Issue {
  const sources = sourcesOf(groups);
  const needed = [
    ...(state.clock.power.ignitionOn ? ['`ignition: off`'] : []),
    ...sources
      .filter((id) => !state.clock.power.disconnected.includes(id))
      .map((id) => `\`disconnect: ${id}\``),
    `\`wait: ${formatWait(owedByAll(procedure, sources))}\``,
  ];
  return {
    rule: 'live-touch',
    subject: touch.id,
    underline: touch.place,
    message: `Hands on ${subjectOf(touch, live, 'can still fire')}: ${whatIsOn(state.clock.power, sources)}. Needed before: ${listed(needed)}.`,
  };
}

function shortWait(
  procedure: Procedure,
  touch: Touch,
  live: readonly Id[],
  groups: readonly Group[],
  wait: number,
): Issue {
  const sources = sourcesOf(groups);
  const whole = formatWait(owedByAll(procedure, sources));
  const more = formatWait(wait);
  const rest = more === whole ? 'and no wait stands before it' : `and ${more} of it are still owed`;
  return {
    rule: 'short-wait',
    subject: touch.id,
    underline: touch.place,
    message:
      `Hands on ${subjectOf(touch, live, 'can still be charged')}: ` +
      `after ${listed(sources)} is off the wait is ${whole}, ${rest}.`,
  };
}

/** `K30 while stage-1 can still fire`, or of the stage itself `stage-1, which can still fire`. */
function subjectOf({ id }: Touch, live: readonly Id[], what: string): string {
  const others = live.filter((stage) => stage !== id);
  if (others.length === 0) return `${id}, which ${what}`;
  const own = others.length < live.length ? [id] : [];
  return `${id} while ${listed([...own, ...others])} ${what}`;
}

function stages(groups: readonly Group[], concerned: readonly Circuit[]): readonly Id[] {
  const circuits = groups.flatMap((group) => group.circuits).filter((circuit) => concerned.includes(circuit));
  return [...new Set(circuits.flatMap((circuit) => circuit.liveParts))];
}

function sourcesOf(groups: readonly Group[]): readonly Id[] {
  return [...new Set(groups.flatMap((group) => group.sources))];
}

function excuse(state: State, unsafe: readonly Unsafe[]): State {
  const set = [...new Set(unsafe.flatMap(({ sources }) => sources))].sort();
  const known = state.excused.some((other) => other.join() === set.join());
  return known ? state : settled({ ...state, excused: [...state.excused, set].sort() });
}

function switched(cluster: Cluster, state: State, step: Step): State {
  const clock = clockAfter(state.clock, step, cluster);
  if (clock === state.clock) return state;
  return settled({ ...state, clock, excused: stillExcused(state, step) });
}

/** An excuse ends when one of its sources or the ignition is switched. */
function stillExcused({ excused }: State, step: Step): State['excused'] {
  switch (step.verb) {
    case 'ignition':
      return [];
    case 'disconnect':
    case 'reconnect':
      return excused.filter((set) => !set.includes(step.source));
    default:
      return excused;
  }
}

function moved(context: Context, cluster: Cluster, state: State, step: Step): State {
  if (step.verb !== 'fit' && step.verb !== 'move' && step.verb !== 'remove') return state;
  const place = step.verb === 'fit' ? step.at : step.verb === 'move' ? step.to : null;
  const concerns = place !== null && concernsCluster(context, cluster, place.connector);
  if (!concerns && !state.places.has(step.load)) return state;
  const places = new Map(state.places);
  if (concerns) places.set(step.load, place);
  else places.delete(step.load);
  return settled({ ...state, places });
}

function concernsCluster(context: Context, cluster: Cluster, connector: Id): boolean {
  const concerned = context.circuits.touchedBy(connector);
  return cluster.groups.some((group) => group.circuits.some((circuit) => concerned.includes(circuit)));
}

function settled(state: Omit<State, 'base'>): State {
  const places = [...state.places].map(([load, place]) => `${load}@${place.connector}`).sort();
  const excused = state.excused.map((set) => set.join('+'));
  return { ...state, base: `${powerKey(state.clock.power)}|${excused.join()}|${places.join()}` };
}
