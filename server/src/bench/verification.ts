import type { Id, Loop, Procedure, Step } from '../text/procedure.ts';
import { membersOf } from '../text/mentioned.ts';
import { loopsRead } from './asked.ts';
import { changesTo } from './changes.ts';
import { connectorsOf } from './circuits.ts';
import type { Watcher } from './explore.ts';
import type { Edge } from './graph.ts';
import { hardwareAfter, hardwareAtStart, hardwareKey, isWhole } from './hardware.ts';
import type { Cone, Hardware } from './hardware.ts';

/** Something that a good reading has still to verify, and the bench that such a reading depends on. */
export interface Unverified {
  readonly pending: boolean;
  readonly hardware: Hardware;
}

/** Whether a way out of a reading says that this loop is within its window. */
function saysWithin(step: Step, edge: Edge, loop: Id): boolean {
  if (edge.outcome?.name !== 'within' || !loopsRead(step).includes(loop)) return false;
  return edge.outcome.of === undefined || edge.outcome.of === loop;
}

/** What readings can show to be sound. */
export interface Proves {
  /** Whether the window of a reading can tell a sound loop from a broken one: an open loop must not pass as `within`. */
  readonly loop: (step: Step, loop: Id) => boolean;
  /** What a measurement shows, as built; null: nothing. */
  readonly measured: (step: Step) => ShownByHand | null;
}

export interface ShownByHand {
  /** The parts and connectors that lie on some way between the probes; unknown where a value could not be read. */
  readonly things: ReadonlySet<Id> | 'unknown';
  /** All that have to be mated for it. */
  readonly connectors: readonly Id[];
}

/**
 * Follows what `opens` starts until a reading of one of the loops, whole and taken by its outcome `within`, settles it,
 * or a measurement that `shows` it.
 */
function verificationWatcher(
  watches: string,
  loops: readonly Loop[],
  proves: Proves,
  opens: (step: Step) => boolean,
  byHand: ReadonlyMap<Step, ShownByHand> = new Map(),
): Watcher<Unverified> {
  const around = [...byHand.values()].flatMap(({ connectors }) => connectors);
  const cone: Cone = { connectors: new Set([...loops.flatMap(connectorsOf), ...around]) };
  return {
    watches,
    start: { pending: false, hardware: hardwareAtStart },
    key: ({ pending, hardware }) => `${pending ? '!' : ''}${hardwareKey(hardware)}`,
    step: (state, step) => {
      const hardware = hardwareAfter(state.hardware, step, cone);
      const pending = state.pending || opens(step);
      return hardware === state.hardware && pending === state.pending ? state : { pending, hardware };
    },
    take: (state, step, edge) => {
      if (!state.pending) return state;
      const measured = edge.outcome?.name === 'within' ? byHand.get(step) : undefined;
      const verified =
        (measured !== undefined && areMated(state.hardware, measured.connectors)) ||
        loops.some(
          (loop) =>
            saysWithin(step, edge, loop.id) && proves.loop(step, loop.id) && isWhole(state.hardware, loop),
        );
      return verified ? { ...state, pending: false } : state;
    },
  };
}

/** Whether all these connectors are mated, and no load sits on one. */
function areMated({ connectors, loads }: Hardware, ids: readonly Id[]): boolean {
  return ids.every((id) => !connectors.has(id) && ![...loads.values()].some((at) => at.connector === id));
}

/**
 * Follows a repair of a part, connector or monitor: any loop that holds it can show that it is good, and any measurement
 * between the probes of which it lies.
 */
export function repairWatcher(procedure: Procedure, id: Id, proves: Proves): Watcher<Unverified> {
  const loops = [...procedure.loops.values()].filter((loop) => holds(loop, id));
  const byHand = new Map<Step, ShownByHand>();
  for (const step of procedure.steps) {
    const shown = proves.measured(step);
    if (shown !== null && (shown.things === 'unknown' || shown.things.has(id))) byHand.set(step, shown);
  }
  return verificationWatcher(
    `the repair of ${id} and what is open in its circuits`,
    loops,
    proves,
    (step) => replacedBy(step).includes(id),
    byHand,
  );
}

/**
 * Follows a loop that has been opened until it is shown to be whole: at a connector, or by replacing something that it
 * shares with other loops, whose repair a reading of one of those would settle.
 */
export function openedLoopWatcher(procedure: Procedure, loop: Loop, proves: Proves): Watcher<Unverified> {
  const shared = (id: Id): boolean =>
    holds(loop, id) && [...procedure.loops.values()].filter((one) => holds(one, id)).length > 1;
  return verificationWatcher(`what is open in ${loop.id}`, [loop], proves, (step) => {
    const opened = changesTo('connector', step).some(({ id, to }) => to !== 'mated' && holds(loop, id));
    return opened || replacedBy(step).some(shared);
  });
}

function holds(loop: Loop, id: Id): boolean {
  return loop.monitor === id || loop.elements.some((element) => element.id === id);
}

/** The parts, connectors and monitors that a step replaces. */
export function replacedBy(step: Step): readonly Id[] {
  return membersOf(changesTo('things', step).flatMap(({ replaced }) => replaced));
}

export function replacedIn({ steps }: Procedure): readonly Id[] {
  return [...new Set(steps.flatMap(replacedBy))];
}
