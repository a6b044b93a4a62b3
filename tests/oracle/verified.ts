import type { Id, Procedure, Step } from '../../server/src/model/procedure.ts';
import { possible } from './accepted.ts';
import type { Accepted } from './accepted.ts';
import { connectorsAround } from './around-probes.ts';
import { leastAddedAt, leastAddedIn } from './least-added.ts';
import { shownAcross } from './measured.ts';
import { namedIn } from './node-names.ts';
import type { Read } from './reads.ts';
import { circuitOf, shownBy } from './values.ts';
import type { Interval, Shown } from './values.ts';
import { allWays, asBuilt, between, hangingOn, isOn, joinedBySources, pointsOf } from './ways.ts';
import type { Measuring, Way } from './ways.ts';
import { loadsAt, loadsIn, openConnectors } from './world.ts';
import type { World } from './world.ts';

/*
 * What a reading that comes out within shows to be sound: that of which it leaves out each fault that changes it, an open
 * circuit and ten times the least added resistance that counts.
 */

/** A reading of one thing, with the window that it is held against. null: not known, which is not held against it. */
export interface HeldAgainst {
  readonly read: Read;
  readonly accepted: Accepted | null;
  /** It shows that there is no voltage, as a broken circuit does. */
  readonly isAbsence: boolean;
}

/** Whether a voltage stands for nothing being there: nought is accepted, and is what a sound circuit has on every bench. */
export function showsAbsence(
  { step, display }: { readonly step: Step; readonly display: Read['display'] },
  accepted: Accepted | null,
  volts: readonly (Interval | null)[],
): boolean {
  if (step.verb !== 'measure' || step.quantity !== 'voltage') return false;
  if (accepted === null || accepted === 'open' || display?.resolution == null) return false;
  if ((accepted.least ?? -Infinity) > 0 || (accepted.most ?? Infinity) < 0) return false;
  const resolution = display.resolution * (1 + 1e-9);
  const known = volts.filter((each) => each !== null);
  return known.length > 0 && known.every(({ least, most }) => least >= -resolution && most <= resolution);
}

/** Whether a fault makes any difference to what is shown. */
function isChanged(good: Shown, bad: Shown): boolean {
  if (good.canBeOpen !== bad.canBeOpen || (good.number === null) !== (bad.number === null)) return true;
  if (good.number === null || bad.number === null) return false;
  const differ = (a: number, b: number): boolean => Math.abs(a - b) > 1e-10 * Math.max(1, Math.abs(a));
  return differ(good.number.least, bad.number.least) || differ(good.number.most, bad.number.most);
}

/** Whether each fault that changes the reading is left out, and there is one. null: nothing is known of a fault. */
function areLeftOut(
  accepted: Accepted,
  resolution: number,
  good: Shown,
  faults: readonly (Shown | null)[],
): boolean | null {
  const changing = faults.filter((bad) => bad !== null && isChanged(good, bad));
  if (changing.some((bad) => possible(accepted, bad, resolution).has('within'))) return false;
  return faults.includes(null) ? null : changing.length > 0;
}

const ages = ({ parts }: Procedure, id: Id): boolean =>
  !['thermistor', 'rtd', 'potentiometer'].includes(parts.get(id)?.kind ?? 'connector');

const more = ({ least, most }: Interval, added: number): Interval => ({
  least: least + added,
  most: most + added,
});

const OPEN: Interval = { least: Infinity, most: Infinity };

function verifiedInLoop(procedure: Procedure, world: World, held: HeldAgainst, id: Id): boolean {
  const { accepted, read } = held;
  const { loop, display } = read;
  if (loop === null || openConnectors(world, loop).length > 0 || loadsIn(world, loop).length > 0)
    return false;
  const isMonitor = loop.monitor === id;
  if (!isMonitor && !loop.elements.some((element) => element.id === id)) return false;
  const circuit = circuitOf(procedure, world, loop);
  const good = read.shown(world);
  if (accepted === null || display?.resolution == null || circuit === null || good === null) return true;
  // Over all of an entry the window is too wide to tell; row by row the oracle has no window, and asks for the open circuit.
  const isByRow = loop.elements.some((element) => followsEntry(procedure, element.id));
  const isAging = !isMonitor && !isByRow && ages(procedure, id);
  const added = isAging ? [more(circuit, 10 * leastAddedIn(procedure, loop.id))] : [];
  const faults = [OPEN, ...added].map((each) => shownBy(display, each));
  return areLeftOut(accepted, display.resolution, good, faults) ?? true;
}

function followsEntry({ parts }: Procedure, id: Id): boolean {
  const resistance = parts.get(id)?.resistance ?? null;
  if (resistance === null || !('temperature' in resistance)) return false;
  return typeof resistance.temperature !== 'string' && 'entry' in resistance.temperature;
}

/** Open, and with resistance added, each way of the thing by itself. */
function faultyWays(procedure: Procedure, ways: readonly Way[], id: Id): Way[][] {
  const named = namedIn(procedure);
  return ways.flatMap((way): Way[][] => {
    if (way.thing !== id || way.isRung === true) return [];
    const others = ways.filter((one) => one !== way);
    const least =
      way.loop === null
        ? leastAddedAt(procedure, [named(way.a), named(way.b)])
        : leastAddedIn(procedure, way.loop);
    if (!ages(procedure, id) || least === null || way.ohms === null) return [others];
    return [others, [...others, { ...way, ohms: more(way.ohms, 10 * least) }]];
  });
}

/** Where nothing is known of what is shown: whatever is on a way between the probes, or to what supplies them. */
function isOnTheWay(procedure: Procedure, world: World, step: Measuring, id: Id): boolean {
  const ways = allWays(procedure, asBuilt(world));
  const [from, to] = pointsOf(step);
  const sources =
    step.quantity === 'resistance'
      ? []
      : procedure.network.elements.filter((one) => one.kind === 'source' && isOn(procedure, world, one.id));
  const ends = [...new Set([from, to, ...sources.flatMap((source) => source.between)])];
  return ends.some((one, at) =>
    ends.slice(at + 1).some((other) => [...between(ways, one, other)].some(({ thing }) => thing === id)),
  );
}

function verifiedByHand(
  procedure: Procedure,
  world: World,
  step: Measuring,
  { accepted, read, isAbsence }: HeldAgainst,
  id: Id,
): boolean {
  if (isAbsence) return false;
  const around = connectorsAround(procedure, world, step);
  if (around.some((one) => world.connectors[one] !== 'mated' || loadsAt(world, one).length > 0)) return false;
  const joined = [...allWays(procedure, asBuilt(world)), ...joinedBySources(procedure)];
  const near = pointsOf(step).map((point) => hangingOn(joined, point));
  const isNear = joined.some(({ thing, a }) => thing === id && near.some((points) => points.has(a)));
  if (!isNear) return false;
  const good = read.shown(world);
  const resolution = read.display?.resolution ?? null;
  if (accepted === null || good === null || resolution === null)
    return isOnTheWay(procedure, world, step, id);
  const faults = faultyWays(procedure, allWays(procedure, world), id).map((ways) =>
    shownAcross(procedure, world, step, ways),
  );
  return areLeftOut(accepted, resolution, good, faults) ?? isOnTheWay(procedure, world, step, id);
}

/** Whether a reading, left by an outcome that says within, shows that a thing is sound. */
export function isVerified(
  procedure: Procedure,
  world: World,
  step: Step,
  held: HeldAgainst,
  id: Id,
): boolean {
  return step.verb === 'measure'
    ? verifiedByHand(procedure, world, step, held, id)
    : verifiedInLoop(procedure, world, held, id);
}
