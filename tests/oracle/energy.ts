import type { Id, Procedure, Regulated, Source } from '../../server/src/model/procedure.ts';
import { builtAround, isForever, piecesOn } from './pieces.ts';
import type { Piece } from './pieces.ts';
import { sharingTest } from './tested.ts';
import { discharge, isOff } from './world.ts';
import type { Charge, World } from './world.ts';

/* What is powered on a bench, what is charged after it was, and how time runs it down. */

/** Seconds that a source owes by itself after it is off. */
export const ownWait = (source: Source): number =>
  Math.max(typeof source.wait === 'number' ? source.wait : 0, discharge(source));

function supplyIsOn(procedure: Procedure, world: World, supply: Regulated): boolean {
  const root = procedure.sources.get(supply.from ?? '');
  const rootIsOff = root !== undefined && isOff(world, root);
  if (!supply.needsIgnition) return !rootIsOff;
  if (world.ignition) return true;
  if (rootIsOff && (world.sourceOwed[root.id] ?? 0) === 0) return false;
  return typeof supply.afterRun === 'number' ? (world.afterRun[supply.id] ?? 0) > 0 : true;
}

/** A source that powers a piece, and how it comes to. */
export interface Powering {
  readonly id: Id;
  readonly wait: number;
  /** The greatest there may be. */
  readonly volts: number;
  readonly isHigh: boolean;
  readonly through: 'drawn' | 'part' | 'monitor';
}

/** All that stands in a piece or feeds something in it, whether it is on or not. */
export function suppliersOf(procedure: Procedure, world: World, piece: Piece): Powering[] {
  const found: Powering[] = [];
  const built = builtAround(procedure, world, piece);
  for (const source of procedure.sources.values()) {
    const { id, voltage, kind, feeds } = source;
    const made = { id, wait: ownWait(source), volts: voltage?.most ?? 0, isHigh: kind === 'high-voltage' };
    if (piece.drawn.has(id)) found.push({ ...made, through: 'drawn' });
    if (feeds.some((fed) => piece.monitors.has(fed))) found.push({ ...made, through: 'monitor' });
    // What is drawn decides where the circuit as built holds the source.
    const isDrawn = built.some(({ drawn }) => drawn.has(id));
    const feedsHere = feeds.some((fed) => piece.parts.has(fed) || piece.connectors.has(fed));
    if (feedsHere && !isDrawn) found.push({ ...made, through: 'part' });
  }
  for (const { id, voltage } of procedure.regulated.values())
    if (piece.drawn.has(id))
      found.push({ id, wait: 0, volts: voltage?.most ?? 0, isHigh: false, through: 'drawn' });
  return found;
}

export function poweredBy(procedure: Procedure, world: World, piece: Piece): Powering[] {
  return suppliersOf(procedure, world, piece).filter(({ id, through }) => {
    const supply = procedure.regulated.get(id);
    if (supply !== undefined) return supplyIsOn(procedure, world, supply);
    const source = procedure.sources.get(id);
    if (source === undefined) return false;
    return (through === 'drawn' && isForever(procedure, source)) || !isOff(world, source);
  });
}

type Held = World['charges'];

/** All that powers, or of what is above 30 V the batteries and supplies. High voltage has rules of its own. */
const levels = {
  charges: (): boolean => true,
  arcs: ({ volts, isHigh }: Powering): boolean => volts > 30 && !isHigh,
} as const;

/** What a piece holds: of all that it is made of the longest. null: nothing. */
export function chargeOf(held: Held, { points }: Piece): Charge | null {
  const here = [...points].flatMap((point) => held[point] ?? []);
  if (here.length === 0) return null;
  return {
    left: Math.max(...here.map(({ left }) => left)),
    whole: Math.max(...here.map(({ whole }) => whole)),
  };
}

export const drawsArcs = levels.arcs;

/** Everything charged by what powers it now, and what hangs together sharing what it holds. */
function filled(
  procedure: Procedure,
  world: World,
  level: keyof typeof levels,
  pieces: readonly Piece[],
): Held {
  const found: [string, Charge][] = [];
  for (const piece of pieces) {
    const before = chargeOf(world[level], piece);
    const powers = poweredBy(procedure, world, piece).filter(levels[level]);
    const whole = Math.max(before?.whole ?? 0, ...powers.map(({ wait }) => wait));
    const after: Charge = { left: powers.length > 0 ? whole : (before?.left ?? 0), whole };
    if (after.left > 0) found.push(...[...piece.points].map((point): [string, Charge] => [point, after]));
  }
  return Object.fromEntries(found.sort(([a], [b]) => (a < b ? -1 : 1)));
}

export function settled(
  procedure: Procedure,
  world: World,
  pieces: readonly Piece[] = piecesOn(procedure, world),
): World {
  const after = {
    ...world,
    charges: filled(procedure, world, 'charges', pieces),
    arcs: filled(procedure, world, 'arcs', pieces),
  };
  return sharingTest(after, pieces);
}

/** What has run down after some seconds in which nothing is switched. */
function runDown(procedure: Procedure, world: World, level: keyof typeof levels, seconds: number): Held {
  const powered = new Set(
    piecesOn(procedure, world).flatMap((piece) =>
      poweredBy(procedure, world, piece).some(levels[level]) ? [...piece.points] : [],
    ),
  );
  const after = Object.entries(world[level]).map(([point, charge]): [string, Charge] =>
    powered.has(point) ? [point, charge] : [point, { ...charge, left: charge.left - seconds }],
  );
  return Object.fromEntries(after.filter(([, { left }]) => left > 1e-6));
}

/** After a source or the ignition was switched: what is on owes all of its wait again. */
export function wound(procedure: Procedure, world: World): World {
  const sourceOwed = Object.fromEntries(
    [...procedure.sources.values()].map((source) => [
      source.id,
      isOff(world, source) ? (world.sourceOwed[source.id] ?? 0) : ownWait(source),
    ]),
  );
  const afterRun = Object.fromEntries(
    [...procedure.regulated.values()].map(({ id, afterRun: stated }) => [
      id,
      typeof stated !== 'number' ? 0 : world.ignition ? stated : (world.afterRun[id] ?? 0),
    ]),
  );
  return { ...world, sourceOwed, afterRun };
}

const less = (owed: Readonly<Record<Id, number>>, seconds: number, runs: (id: Id) => boolean) =>
  Object.fromEntries(
    Object.entries(owed).map(([id, left]) => [id, runs(id) ? Math.max(0, left - seconds) : left]),
  );

/** Time goes by, in pieces that end where a supply may go off. */
export function waited(procedure: Procedure, world: World, seconds: number): World {
  let now = settled(procedure, world);
  for (let left = seconds; left > 0;) {
    const isRunning = (id: Id): boolean => {
      const source = procedure.sources.get(id);
      return source !== undefined && isOff(now, source);
    };
    const ends = [
      ...Object.entries(now.sourceOwed).flatMap(([id, owed]) => (isRunning(id) ? [owed] : [])),
      ...(now.ignition ? [] : Object.values(now.afterRun)),
    ].filter((end) => end > 0);
    const dt = Math.min(left, ...ends);
    const ignition = now.ignition;
    now = settled(procedure, {
      ...now,
      sourceOwed: less(now.sourceOwed, dt, isRunning),
      afterRun: less(now.afterRun, dt, () => !ignition),
      charges: runDown(procedure, now, 'charges', dt),
      arcs: runDown(procedure, now, 'arcs', dt),
    });
    left -= dt;
  }
  return now;
}
