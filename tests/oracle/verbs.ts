import type { Id, Outcome, Procedure, Source, Step } from '../../server/src/model/procedure.ts';
import { polesShown } from './carried.ts';
import { tellsOpen } from './accepted.ts';
import { newlyBridged } from './bridged.ts';
import { impossible, monitorsRead } from './impossible.ts';
import { measureWrongs } from './network.ts';
import { barMeasured } from './unlikely.ts';
import { notices } from './notices.ts';
import { settled, waited, wound } from './energy.ts';
import { afterTest, testProven, testWaited, touchTested } from './tested.ts';
import { piecesDuring } from './pieces.ts';
import { canBeProven, handsNotSaid, proofPoints, proofTooEarly, touch } from './touch.ts';
import { asReading } from './wiggled.ts';
import { runsDown, underPower } from './under-power.ts';
import { codesSet } from './values.ts';
import { isVerified } from './verified.ts';
import type { HeldAgainst } from './verified.ts';
import {
  bare,
  carriedBy,
  dangers,
  feedersOfMonitor,
  isOff,
  isolatorOf,
  loadsIn,
  loopsThrough,
  openConnectors,
  wholeWait,
} from './world.ts';
import type { World, Wrong } from './world.ts';

/* What one step does to the bench, and what is wrong with it there. */

// ---- power ------------------------------------------------------------------------------------

/** After a source (null: the ignition) was switched: excuses lapse, and a circuit with a source on owes its whole wait. */
function switched(procedure: Procedure, world: World, source: Id | null): World {
  const owed: Record<Id, number> = {};
  const woken = new Set<Id>();
  for (const danger of dangers(procedure)) {
    const allOff = danger.feeders.every((each) => isOff(world, each));
    owed[danger.id] = allOff ? (world.owed[danger.id] ?? 0) : wholeWait(danger);
    if (!allOff) for (const each of danger.feeders) woken.add(each.id);
  }
  const proven = Object.fromEntries(Object.entries(world.proven).filter(([id]) => !woken.has(id)));
  const excuses = source === null ? [] : world.excuses.filter((excuse) => !excuse.includes(source));
  return wound(procedure, { ...world, owed, proven, excuses });
}

/** What is open or loaded while one of its sources comes back, or high voltage is given back, which no notice excuses. */
function halfOpen(procedure: Procedure, before: World, after: World, step: Step): Wrong[] {
  const isSaid = step.warning !== undefined || step.danger !== undefined;
  const high = step.verb === 'reconnect' ? procedure.sources.get(step.source) : undefined;
  const isHighBack = (feeders: readonly Source[]): boolean =>
    high?.kind === 'high-voltage' && feeders.includes(high);
  const loadsPast = (source: Source | undefined): Id[] =>
    [...procedure.connectors.keys()]
      .filter((id) => source !== undefined && carriedBy(procedure, id).includes(source))
      .flatMap((id) => loopsThrough(procedure, id).flatMap((loop) => loadsIn(after, loop)));
  return dangers(procedure)
    .filter(
      ({ feeders }) =>
        isHighBack(feeders) ||
        (!isSaid && feeders.some((each) => isOff(before, each) && !isOff(after, each))),
    )
    .filter(({ connectors, loop, piece, feeders }) => {
      const isOpen = connectors.some((id) => after.connectors[id] !== 'mated');
      if (isOpen || (loop !== null && loadsIn(after, loop).length > 0)) return true;
      return loop === null && piece === undefined && isHighBack(feeders) && loadsPast(high).length > 0;
    })
    .map(({ id }) => ({ rule: 'half-open', subject: id }));
}

/** Everything connected, mated and charged, the ignition off. */
export function start(procedure: Procedure): World {
  const world = bare(procedure);
  const afterRun = Object.fromEntries(
    [...procedure.regulated.values()].map(({ id, afterRun: stated }) => [
      id,
      typeof stated === 'number' ? stated : 0,
    ]),
  );
  return settled(procedure, wound(procedure, { ...world, afterRun }));
}

// ---- one step ---------------------------------------------------------------------------------

/** Replacing something that several loops share opens each of them. */
function loopsSharing(procedure: Procedure, id: Id): Id[] {
  const holding = [...procedure.loops.values()].filter(
    (loop) => loop.monitor === id || loop.elements.some((element) => element.id === id),
  );
  return holding.length > 1 ? holding.map((loop) => loop.id) : [];
}

const opening = (procedure: Procedure, world: World, connector: Id): Id[] =>
  [...new Set([...world.opened, ...loopsThrough(procedure, connector).map((loop) => loop.id)])].sort();

/** The bench after the verb alone. `cycle` never comes here: it is off, then on. */
function done(procedure: Procedure, world: World, step: Step): World {
  switch (step.verb) {
    case 'ignition':
      return switched(procedure, { ...world, ignition: step.to === 'on' }, null);
    case 'disconnect':
    case 'reconnect': {
      const connected = { ...world.connected, [step.source]: step.verb === 'reconnect' };
      const isolator = isolatorOf(procedure.sources.get(step.source));
      const mating = step.verb === 'reconnect' ? ('mated' as const) : ('unplugged' as const);
      const plugged =
        isolator === null
          ? {}
          : {
              connectors: { ...world.connectors, [isolator]: mating },
              opened: step.verb === 'disconnect' ? opening(procedure, world, isolator) : world.opened,
            };
      return switched(procedure, { ...world, ...plugged, connected }, step.source);
    }
    case 'wait': {
      const owed = { ...world.owed };
      for (const { id, feeders } of dangers(procedure)) {
        if (feeders.every((source) => isOff(world, source)))
          owed[id] = Math.max(0, (owed[id] ?? 0) - step.seconds);
      }
      return testWaited(waited(procedure, { ...world, owed }, step.seconds), step.seconds);
    }
    case 'unlock':
    case 'unplug': {
      const state = step.verb === 'unlock' ? 'unlocked' : 'unplugged';
      const connectors = { ...world.connectors, [step.connector]: state } as const;
      return { ...world, connectors, opened: opening(procedure, world, step.connector) };
    }
    case 'plug':
      return { ...world, connectors: { ...world.connectors, [step.connector]: 'mated' } };
    case 'fit':
      return { ...world, loads: { ...world.loads, [step.load]: step.at } };
    case 'move':
      return { ...world, loads: { ...world.loads, [step.load]: step.to } };
    case 'remove':
      return { ...world, loads: { ...world.loads, [step.load]: null } };
    case 'read-codes':
      return { ...world, recorded: { ...world.recorded, [step.monitor]: true } };
    case 'clear-codes':
      return { ...world, stored: { ...world.stored, [step.monitor]: false } };
    case 'replace': {
      const replaced = step.what.flatMap(({ members }) => members);
      return {
        ...world,
        pending: [...new Set([...world.pending, ...replaced])].sort(),
        opened: [
          ...new Set([...world.opened, ...replaced.flatMap((id) => loopsSharing(procedure, id))]),
        ].sort(),
      };
    }
    case 'measure':
      return afterTest(procedure, world, step);
    case 'prove-dead':
    case 'read':
    case 'wiggle':
    case 'inspect':
    case 'do':
    case 'conclude':
    case 'go':
    case 'stop':
    case 'run':
    case 'broken':
      return world;
  }
}

/** Monitors whose memory may fill at this step. */
export function listening(procedure: Procedure, step: Step): Id[] {
  if (step.verb === 'ignition' || step.verb === 'reconnect') return [...procedure.monitors.keys()];
  return asReading(step).verb === 'read' ? monitorsRead(procedure, step) : [];
}

/** Monitors whose codes are lost or falsified by this step, not written down before it. */
function notRecorded(procedure: Procedure, world: World, step: Step): Id[] {
  const monitors = [...procedure.monitors.keys()].filter((monitor) =>
    step.verb === 'disconnect'
      ? feedersOfMonitor(procedure, monitor).some((source) => source.id === step.source)
      : step.verb === 'clear-codes' && step.monitor === monitor,
  );
  return monitors.filter((monitor) => world.recorded[monitor] === false);
}

function waitsInVain(procedure: Procedure, world: World): boolean {
  const fed = dangers(procedure).filter(({ feeders }) => feeders.length > 0);
  const running = fed.filter(({ feeders }) => feeders.every((source) => isOff(world, source)));
  const others = runsDown(procedure, world);
  return fed.length + others.length > 0 && running.length === 0 && !others.includes(true);
}

export function carryOut(procedure: Procedure, world: World, step: Step): { world: World; wrongs: Wrong[] } {
  if (step.verb === 'ignition' && step.to === 'cycle') {
    const off = carryOut(procedure, world, { ...step, to: 'off' });
    const on = carryOut(procedure, off.world, { ...step, to: 'on' });
    return { world: on.world, wrongs: [...off.wrongs, ...on.wrongs] };
  }
  const hands = touch(procedure, world, step);
  const left = touchTested(procedure, world, step);
  const proof = proofTooEarly(procedure, world, step);
  const said = notices(procedure, world, step);
  const measured = [...measureWrongs(procedure, world, step), ...underPower(procedure, world, step)];
  const wrongs = [
    ...hands.wrongs,
    ...left.wrongs,
    ...proof.wrongs,
    ...said.wrongs,
    ...measured,
    ...handsNotSaid(procedure, world, step),
  ];
  const bar = barMeasured(procedure, world, step);
  if (bar !== null) wrongs.push({ rule: 'bar-in-the-way', subject: bar });
  const excuses = [...hands.excuses, ...proof.excuses];
  for (const subject of impossible(procedure, world, step)) wrongs.push({ rule: 'impossible', subject });
  if ((step.verb === 'disconnect' || step.verb === 'reconnect') && world.ignition)
    wrongs.push({ rule: 'ignition-first', subject: step.source });
  if (step.verb === 'wait' && waitsInVain(procedure, world))
    wrongs.push({ rule: 'wait-without-effect', subject: null });
  const lost = notRecorded(procedure, world, step);
  for (const subject of lost) wrongs.push({ rule: 'codes-not-recorded', subject });

  let after = done(procedure, left.world, step);
  if (step.verb !== 'unplug' && step.verb !== 'disconnect')
    for (const subject of newlyBridged(procedure, world, after))
      wrongs.push({ rule: 'load-bridged', subject });
  wrongs.push(...halfOpen(procedure, world, after, step));
  after = {
    ...settled(procedure, after, piecesDuring(procedure, after, step)),
    met: said.met,
    excuses: sortedSets([...after.excuses, ...excuses]),
  };
  for (const monitor of lost) after = { ...after, recorded: { ...after.recorded, [monitor]: true } };
  for (const { loop } of codesSet(procedure, after, listening(procedure, step))) {
    const monitor = procedure.loops.get(loop)?.monitor;
    if (monitor) after = { ...after, stored: { ...after.stored, [monitor]: true } };
  }
  return { world: after, wrongs };
}

function sortedSets(sets: readonly (readonly Id[])[]): (readonly Id[])[] {
  const byText = new Map(sets.map((each) => [JSON.stringify(each), each]));
  return [...byText.keys()].sort().map((text) => byText.get(text) ?? []);
}

/** What an outcome of a step says that is within its window. null: it does not say so. */
export type Proves = (step: Step, of: Id, outcome: Outcome) => HeldAgainst | null;

/**
 * What an outcome adds: a reading left by one that says `within` shows what is sound, and everything mated and no load
 * fitted, that its loops are shut; a proof left by `dead` that had a meaning proves its source where it was taken, any other takes all proofs of it
 * away. Where nobody asks what is proven (null), every reading shows everything.
 */
export function wayTaken(
  procedure: Procedure,
  world: World,
  step: Step,
  outcome: Outcome | null,
  proves: Proves | null,
): World {
  if (step.verb === 'prove-dead') {
    const { [step.source]: before = [], ...others } = world.proven;
    if (outcome?.name !== 'dead') return { ...world, proven: others };
    const after = testProven(procedure, world, step);
    if (!canBeProven(procedure, world, step.source)) return { ...after, proven: others };
    const shown = [...proofPoints(procedure, world, step), ...polesShown(procedure, world, step)];
    const points = [...new Set([...before, ...shown])].sort();
    const all = Object.entries({ ...others, [step.source]: points });
    return { ...after, proven: Object.fromEntries(all.sort(([a], [b]) => (a < b ? -1 : 1))) };
  }
  if (outcome === null) return world;
  if (step.verb !== 'read' && step.verb !== 'measure') return world;
  // Of insulation what is open is sound, as what is broken is; of a current no window is known here.
  if (step.verb === 'measure' && (step.quantity === 'insulation' || step.quantity === 'current'))
    return world;
  if (proves === null) return { ...world, pending: [], opened: [] };
  const within = (step.verb === 'read' ? step.loops : [step.of]).flatMap((of) => {
    const held = proves(step, of, outcome);
    return held === null ? [] : [{ of, held }];
  });
  const isSound = (id: Id): boolean =>
    within.some(({ held }) => isVerified(procedure, world, step, held, id));
  const isShut = ({ of, held }: (typeof within)[number]): boolean => {
    const loop = procedure.loops.get(of);
    if (loop === undefined || openConnectors(world, loop).length > 0) return false;
    return loadsIn(world, loop).length === 0 && tellsOpen(held.accepted);
  };
  const shut = step.verb === 'read' ? within.filter(isShut).map(({ of }) => of) : [];
  return {
    ...world,
    pending: world.pending.filter((id) => !isSound(id)),
    opened: world.opened.filter((id) => !shut.includes(id)),
  };
}
