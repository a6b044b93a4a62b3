import type { Id, Loop, Outcome, Procedure, Step } from '../model/procedure.ts';
import { membersOf } from '../model/mentioned.ts';
import { loopsRead } from './asked.ts';
import { changesTo } from './changes.ts';
import { connectorsOf } from './circuits.ts';
import type { Watcher } from '../paths/explore.ts';
import { hardwareAfter, hardwareAtStart, hardwareKey, isWhole } from './hardware.ts';
import type { Cone, Hardware } from './hardware.ts';

/** Something that a good reading has still to verify, and the bench that such a reading depends on. */
export interface Unverified {
  readonly pending: boolean;
  readonly hardware: Hardware;
}

/** What readings can show to be sound. */
export interface Proves {
  /** Whether an outcome of a step says that what it reads of a loop, or between its probes, is within its window. */
  readonly within: (step: Step, outcome: Outcome, of: string) => boolean;
  /** Whether the window of a reading can tell a sound loop from a broken one: an open loop must not pass as `within`. */
  readonly loop: (step: Step, loop: Id) => boolean;
  /** Whether a reading of a loop, or between probes, shows a part, connector or monitor to be sound, everything mated. */
  readonly thing: (step: Step, of: string, thing: Id) => boolean;
  /** The connectors around what is measured by hand, where a thing stands in it; null: it does not. */
  readonly around: (step: Step, thing: Id) => readonly Id[] | null;
}

/** Follows what `opens` starts until a reading that `settles` it is left by an outcome that says `within`. */
function verificationWatcher(
  watches: string,
  connectors: readonly Id[],
  opens: (step: Step) => boolean,
  settles: (hardware: Hardware, step: Step, outcome: Outcome) => boolean,
): Watcher<Unverified> {
  const cone: Cone = { connectors: new Set(connectors) };
  return {
    watches,
    start: { pending: false, hardware: hardwareAtStart },
    key: ({ pending, hardware }) => `${pending ? '!' : ''}${hardwareKey(hardware)}`,
    step: (state, step) => {
      const hardware = hardwareAfter(state.hardware, step, cone);
      const pending = state.pending || opens(step);
      return hardware === state.hardware && pending === state.pending ? state : { pending, hardware };
    },
    take: (state, step, { outcome }) =>
      state.pending && outcome !== undefined && settles(state.hardware, step, outcome)
        ? { ...state, pending: false }
        : state,
  };
}

function isRead(step: Step, loop: Id): boolean {
  return loopsRead(step).includes(loop);
}

/** Whether all these connectors are mated, and no load sits on one. */
function areBare({ connectors, loads }: Hardware, ids: readonly Id[]): boolean {
  return ids.every((id) => !connectors.has(id) && ![...loads.values()].some((at) => at.connector === id));
}

/** Follows a repair of a part, connector or monitor until a reading of anything it stands in shows it to be sound. */
export function repairWatcher(procedure: Procedure, id: Id, proves: Proves): Watcher<Unverified> {
  const loops = [...procedure.loops.values()].filter((loop) => holds(loop, id));
  const byHand = new Map<Step, readonly Id[]>();
  for (const step of procedure.steps) {
    const around = proves.around(step, id);
    if (around !== null) byHand.set(step, around);
  }
  return verificationWatcher(
    `the repair of ${id} and what is open in its circuits`,
    [...loops.flatMap(connectorsOf), ...[...byHand.values()].flat()],
    (step) => replacedBy(step).includes(id),
    (hardware, step, outcome) => {
      const within = (of: string): boolean => proves.within(step, outcome, of) && proves.thing(step, of, id);
      if (step.verb !== 'measure')
        return loops.some((loop) => isRead(step, loop.id) && isWhole(hardware, loop) && within(loop.id));
      const around = byHand.get(step);
      return around !== undefined && areBare(hardware, around) && within(step.of);
    },
  );
}

/**
 * Follows a loop that has been opened until it is shown to be whole: at a connector, or by replacing something that it
 * shares with other loops, whose repair a reading of one of those would settle.
 */
export function openedLoopWatcher(procedure: Procedure, loop: Loop, proves: Proves): Watcher<Unverified> {
  const shared = (id: Id): boolean =>
    holds(loop, id) && [...procedure.loops.values()].filter((one) => holds(one, id)).length > 1;
  return verificationWatcher(
    `what is open in ${loop.id}`,
    connectorsOf(loop),
    (step) => {
      const opened = changesTo('connector', step).some(({ id, to }) => to !== 'mated' && holds(loop, id));
      return opened || replacedBy(step).some(shared);
    },
    (hardware, step, outcome) =>
      isRead(step, loop.id) &&
      isWhole(hardware, loop) &&
      proves.loop(step, loop.id) &&
      proves.within(step, outcome, loop.id),
  );
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
