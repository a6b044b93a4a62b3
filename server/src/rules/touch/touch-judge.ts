import type { Clock, Cluster, Group } from '../../bench/clock.ts';
import type { Hazard } from '../../bench/hazards.ts';
import type { Issue } from '../../paths/issue.ts';
import { isOff } from '../../bench/power.ts';
import type { Touch } from '../../bench/touch.ts';
import { halvesToProve, isNeverDead, isProven, isSeatOf } from '../../bench/proofs.ts';
import type { Id, Procedure, Step } from '../../model/procedure.ts';
import type { Context } from '../rule.ts';
import {
  hangsOnSource,
  liveTouch,
  notProvenDead,
  proofTooEarly,
  seatTouched,
  shortWait,
} from './touch-words.ts';

/* Whether hands, or a proof, come to what is still on, still charged or not proven dead. */

/** Sources that count as safe after a finding, a set for those of each circuit that was not dead. */
export type Excused = readonly (readonly Id[])[];

export interface Unsafe {
  readonly issue: Issue;
  /** Their sources count as safe from here on. */
  readonly groups: readonly Group[];
}

interface State {
  readonly clock: Clock;
  readonly excused: Excused;
}

/** Of a high-voltage source that is off and has waited, where hands are. */
type StateOf = 'never dead' | 'seat' | 'unproven' | 'proven';

/** Groups that are not dead, each by the first thing that is missing. */
interface NotDead {
  readonly on: readonly Group[];
  readonly owing: readonly Group[];
  /** The longest wait that is owed, in seconds. */
  readonly wait: number;
  /** What is touched hangs together with a source of theirs that stays where it is. */
  readonly never: readonly Group[];
  /** The same of the seat of the connector that isolates such a source. */
  readonly seat: readonly Group[];
  readonly unproven: readonly { readonly group: Group; readonly sources: readonly Id[] }[];
}

function notDead(
  cluster: Cluster,
  { clock, excused }: State,
  concerns: (group: Group) => boolean,
  stateOf: (source: Id) => StateOf,
): NotDead {
  const on: Group[] = [];
  const owing: Group[] = [];
  const never: Group[] = [];
  const seat: Group[] = [];
  const unproven: { group: Group; sources: readonly Id[] }[] = [];
  let wait = 0;
  for (const [at, group] of cluster.groups.entries()) {
    if (!concerns(group)) continue;
    const judged = group.sources.filter((source) => !excused.some((set) => set.includes(source)));
    const owed = judged.length > 0 ? (clock.owed[at] ?? 0) : 0;
    const highVoltage = judged.filter((source) => cluster.highVoltage.includes(source));
    const sources = highVoltage.filter((source) => stateOf(source) === 'unproven');
    if (judged.some((source) => !isOff(clock.power, source))) on.push(group);
    else if (owed > 0) {
      owing.push(group);
      wait = Math.max(wait, owed);
    } else if (highVoltage.some((source) => stateOf(source) === 'never dead')) never.push(group);
    else if (highVoltage.some((source) => stateOf(source) === 'seat')) seat.push(group);
    else if (sources.length > 0) unproven.push({ group, sources });
  }
  return { on, owing, wait, never, seat, unproven };
}

export function judgeTouch(
  { procedure, circuits }: Context,
  cluster: Cluster,
  state: State,
  step: Step,
  touch: Touch,
): readonly Unsafe[] {
  const { switches, isMoved = false } = touch;
  // A stage that hangs on what is moved is looked for on the bench itself, by a rule of its own.
  const concerned = circuits
    .hazardsAt(touch.id)
    .filter(({ sources }) => switches === undefined || !sources.includes(switches))
    .filter(({ isOfStages }) => !(isMoved && isOfStages));
  const concerns = ({ hazards }: Group): boolean => hazards.some((hazard) => concerned.includes(hazard));
  const { proven, hardware } = state.clock;
  const stateOf = (source: Id): StateOf => {
    if (isNeverDead(procedure, source, touch, hardware)) return 'never dead';
    if (!fitsLoad(step) && isSeatOf(procedure, source, touch)) return 'seat';
    const isShown =
      showsVoltage(procedure, step, source) || isProven(procedure, proven, source, touch, hardware);
    return isShown ? 'proven' : 'unproven';
  };
  const { on, owing, wait, never, seat, unproven } = notDead(cluster, state, concerns, stateOf);
  const found: Unsafe[] = [];
  if (on.length > 0) {
    const issue = liveTouch(procedure, touch, liveIn(on, concerned), sourcesOf(on), state.clock.power);
    found.push({ issue, groups: on });
  }
  if (owing.length > 0) {
    const issue = shortWait(procedure, touch, liveIn(owing, concerned), sourcesOf(owing), wait);
    found.push({ issue, groups: owing });
  }
  if (unproven.length > 0) {
    const groups = unproven.map(({ group }) => group);
    const missing = [...new Set(unproven.flatMap(({ sources }) => sources))].map((source) => ({
      source,
      halves: halvesToProve(procedure, proven, source, touch, hardware),
      isProvenElsewhere: proven.has(source),
    }));
    found.push({ issue: notProvenDead(touch, liveIn(groups, concerned), missing), groups });
  }
  if (never.length > 0)
    found.push({ issue: hangsOnSource(procedure, touch, sourcesOf(never)), groups: never });
  if (seat.length > 0) found.push({ issue: seatTouched(touch, sourcesOf(seat)), groups: seat });
  return found;
}

/** A load is made for the pins of its loop, and `missing-notice` asks for a `danger` where it is fitted. */
function fitsLoad({ verb }: Step): boolean {
  return verb === 'fit' || verb === 'move' || verb === 'remove';
}

/** A proof has a meaning only where all that the source feeds is off and the wait is over. */
export function judgeProof(
  { procedure }: Context,
  cluster: Cluster,
  state: State,
  step: Step,
): readonly Unsafe[] {
  if (step.verb !== 'prove-dead') return [];
  const concerns = ({ sources }: Group): boolean => sources.includes(step.source);
  const { on, owing, wait } = notDead(cluster, state, concerns, () => 'proven');
  const groups = [...on, ...owing];
  if (groups.length === 0) return [];
  const issue = proofTooEarly(procedure, step.source, sourcesOf(on), wait, state.clock.power);
  return [{ issue, groups }];
}

/** Whether a step measures a voltage that may be there, with a `danger` and an instrument that holds it. */
function showsVoltage({ multimeters, sources }: Procedure, step: Step, source: Id): boolean {
  if (step.verb !== 'measure' || step.quantity !== 'voltage' || step.danger === undefined) return false;
  const range = multimeters.get(step.with)?.voltage?.range?.most;
  const voltage = sources.get(source)?.voltage?.most;
  return range !== undefined && voltage !== undefined && range >= voltage;
}

function liveIn(groups: readonly Group[], concerned: readonly Hazard[]): readonly Id[] {
  const hazards = groups.flatMap((group) => group.hazards).filter((hazard) => concerned.includes(hazard));
  return [...new Set(hazards.flatMap(({ live }) => live))];
}

function sourcesOf(groups: readonly Group[]): readonly Id[] {
  return [...new Set(groups.flatMap((group) => group.sources))];
}
