import type { Id, Multimeter, Procedure } from '../../server/src/model/procedure.ts';
import { obstacle } from './network.ts';
import { overTrack } from './on-track.ts';
import type { OnTrack } from './on-track.ts';
import { ohmsBetween, potentialOf } from './solve.ts';
import type { Link } from './solve.ts';
import { shownBy } from './values.ts';
import type { Interval, Shown } from './values.ts';
import { allWays, asBuilt, between, hangingOn, isOn, joinedBySources, plain, pointsOf } from './ways.ts';
import type { Measuring, Way } from './ways.ts';
import type { World } from './world.ts';

/*
 * What a multimeter shows between two points of a sound circuit. Ohms rise with each part, so two sums are enough; volts
 * are tried at every corner of all that they rest on.
 */

const end = (ways: readonly Way[], which: keyof Interval): Link[] =>
  ways.map(({ a, b, ohms }) => ({ a, b, ohms: ohms?.[which] ?? 0 }));

/** Ohms between the probes, without the leads. null: not known. */
export function ohmsAcross(step: Measuring, ways: readonly Way[]): Interval | null {
  const [from, to] = pointsOf(step);
  const met = [...between(ways, from, to)];
  if (met.some(({ ohms }) => ohms === null)) return null;
  const sides = met.filter(({ onTrack }) => onTrack !== undefined);
  const others = met.filter(({ onTrack }) => onTrack === undefined);
  const over = (which: keyof Interval): Interval =>
    overTrack(end(others, which), onTracks(sides), (links) => ohmsBetween(links, from, to), sides);
  return { least: over('least').least, most: over('most').most };
}

const onTracks = (ways: readonly Way[]): OnTrack[] => ways.flatMap(({ onTrack }) => onTrack ?? []);

/** Every choice of one end for each way. */
function corners(ways: readonly Way[]): Link[][] {
  return ways.reduce<Link[][]>(
    (sofar, { a, b, ohms }) =>
      [...new Set([ohms?.least ?? 0, ohms?.most ?? 0])].flatMap((each) =>
        sofar.map((links) => [...links, { a, b, ohms: each }]),
      ),
    [[]],
  );
}

interface Held {
  readonly id: Id;
  readonly plus: string;
  /** What is inside of it, in ohms. */
  readonly inner: Interval | 'unstated';
  readonly volts: Interval;
}

/** The sources that are on, all with their minus at ground. null: not known. */
function heldBy(procedure: Procedure, world: World): Held[] | null {
  const on = procedure.network.elements.filter(
    ({ kind, id }) => kind === 'source' && isOn(procedure, world, id),
  );
  const held = on.map(({ id, between: [plus, minus] }): Held | null => {
    const { voltage: volts = null, resistance: inner = null } =
      procedure.sources.get(id) ?? procedure.regulated.get(id) ?? {};
    if (minus !== 'ground') throw new Error('The oracle knows sources with their minus at ground only.');
    return volts === null || inner === null ? null : { id, plus, volts, inner };
  });
  const known = held.filter((each) => each !== null);
  return known.length < held.length ? null : known;
}

/** Two sources are on side by side, with nothing between them: none of them can hold its voltage. */
const isConflict = (held: readonly Held[]): boolean => {
  const stiff = held.filter(({ inner }) => inner === 'unstated' || inner.least === 0);
  return new Set(stiff.map(({ plus }) => plus)).size < stiff.length;
};

const nothing: Interval = { least: 0, most: 0 };

/** So many ohms may be inside of a source of which nothing is stated. */
const WELL_INSIDE: Interval = { least: 0, most: 0.05 };

/** Whether a limit of the voltage would move by more than a display step if there were something inside of a source. */
export function needsInner(
  procedure: Procedure,
  world: World,
  step: Measuring,
  ways: readonly Way[] = allWays(procedure, world),
): boolean {
  const resolution = procedure.multimeters.get(step.with)?.voltage?.resolution ?? null;
  if (step.quantity !== 'voltage' || resolution === null || isInTheWay(procedure, world, step)) return false;
  const without = voltsWith(procedure, world, step, ways, null);
  if (without === null) return false;
  return (heldBy(procedure, world) ?? []).some(({ id, inner }) => {
    const other = inner === 'unstated' ? voltsWith(procedure, world, step, ways, id) : null;
    if (other === null) return false;
    const moved = Math.max(Math.abs(other.least - without.least), Math.abs(other.most - without.most));
    return moved > resolution * (1 + 1e-9);
  });
}

/** Volts of the first probe over the second, with the meter between them. null: not known. */
export function voltsAcross(
  procedure: Procedure,
  world: World,
  step: Measuring,
  ways: readonly Way[],
): Interval | null {
  return needsInner(procedure, world, step, ways) ? null : voltsWith(procedure, world, step, ways, null);
}

/** The same with something inside of a source of which nothing is stated. */
function voltsWith(
  procedure: Procedure,
  world: World,
  step: Measuring,
  bare: readonly Way[],
  assumed: Id | null,
): Interval | null {
  const input = procedure.multimeters.get(step.with)?.voltage?.input ?? null;
  const onTerminals = heldBy(procedure, world);
  if (input === null || onTerminals === null || isUndefined(procedure, world, step)) return null;
  const ohmsIn = ({ id, inner }: Held): Interval =>
    id === assumed ? WELL_INSIDE : inner === 'unstated' ? nothing : inner;
  const held = onTerminals.map((each) =>
    ohmsIn(each).most === 0 ? each : { ...each, plus: `inside ${each.id}` },
  );
  const inside = onTerminals.flatMap((each): Way[] =>
    ohmsIn(each).most === 0 ? [] : [{ ...plain, a: `inside ${each.id}`, b: each.plus, ohms: ohmsIn(each) }],
  );
  const ways = [...bare, ...inside];
  const [from, to] = pointsOf(step);
  const meter: Way = { ...plain, a: from, b: to, ohms: input };
  const conducting = [...ways.filter(({ source, monitor }) => source === null && monitor === null), meter];
  const points = [...new Set([from, to, 'ground', ...held.map(({ plus }) => plus)])];
  const met = new Set(
    points.flatMap((one, at) =>
      points.slice(at + 1).flatMap((other) => [...between(conducting, one, other)]),
    ),
  );
  if (![...met].some(({ a, b }) => held.some(({ plus }) => plus === a || plus === b)))
    return { least: 0, most: 0 };
  if ([...met].some(({ ohms }) => ohms === null)) return null;
  const volts = held.reduce<(readonly (readonly [string, number])[])[]>(
    (sofar, { plus, volts: { least, most } }) =>
      [...new Set([least, most])].flatMap((each) => sofar.map((held) => [...held, [plus, each] as const])),
    [[['ground', 0]]],
  );
  const sides = [...met].filter(({ onTrack }) => onTrack !== undefined);
  const others = [...met].filter(({ onTrack }) => onTrack === undefined);
  const found = corners(others).flatMap((links) =>
    volts.map((potentials) => {
      const drop = (all: readonly Link[]): number => {
        const at = (node: string) => potentialOf(all, new Map(potentials), node);
        const [one, other] = [at(from), at(to)];
        // What hangs on nothing but the meter has no voltage over its other probe.
        return one === null || other === null ? 0 : one - other;
      };
      return overTrack(links, onTracks(sides), drop, sides);
    }),
  );
  // Too many to be arguments of one call.
  return found.reduce<Interval>(
    (all, each) => ({ least: Math.min(all.least, each.least), most: Math.max(all.most, each.most) }),
    { least: Infinity, most: -Infinity },
  );
}

/** A voltmeter shows the same on either side of zero. */
function voltsShown({ voltage }: Multimeter, volts: Interval): Shown | null {
  const { range, accuracy, resolution } = voltage ?? {};
  if (!range || !accuracy || !resolution) return null;
  const { fraction, constant, digits } = accuracy;
  const error = (each: number) => Math.abs(each) * fraction + constant + digits * resolution;
  const least = volts.least - error(volts.least);
  const most = volts.most + error(volts.most);
  const end = range.most;
  if (least > end || most < -end) return { number: null, canBeOpen: true };
  return {
    number: { least: Math.max(least, -end), most: Math.min(most, end) },
    canBeOpen: least < -end || most > end,
  };
}

function isInTheWay(procedure: Procedure, world: World, step: Measuring): boolean {
  return obstacle(procedure, world, step) !== null;
}

/** Whether nothing can be computed of a voltage, since its sources are against each other. */
export function isUndefined(procedure: Procedure, world: World, step: Measuring): boolean {
  const held = step.quantity === 'voltage' ? heldBy(procedure, world) : null;
  if (held === null || !isConflict(held) || isInTheWay(procedure, world, step)) return false;
  const ways = [...allWays(procedure, asBuilt(world)), ...joinedBySources(procedure)];
  const near = pointsOf(step).map((point) => hangingOn(ways, point));
  return held.some(({ plus }) => near.some((points) => points.has(plus)));
}

/** Volts of a sound circuit, with the meter between the probes. null: not known, or something is in the way. */
export function soundVolts(procedure: Procedure, world: World, step: Measuring): Interval | null {
  if (isInTheWay(procedure, world, step)) return null;
  return voltsAcross(procedure, world, step, allWays(procedure, world));
}

/** What is shown where the bench conducts by these ways. null: not known, or something is in the way. */
export function shownAcross(
  procedure: Procedure,
  world: World,
  step: Measuring,
  ways: readonly Way[] = allWays(procedure, world),
): Shown | null {
  const meter = procedure.multimeters.get(step.with);
  if (meter === undefined || isInTheWay(procedure, world, step)) return null;
  if (step.quantity === 'voltage') {
    const volts = voltsAcross(procedure, world, step, ways);
    return volts === null ? null : voltsShown(meter, volts);
  }
  const ohms = ohmsAcross(step, ways);
  const isInsulation = step.quantity === 'insulation';
  const leads = meter.zeroed || isInsulation ? { least: 0, most: 0 } : meter.leads;
  const scale = isInsulation ? meter.insulation : meter.resistance;
  if (ohms === null || leads === null || scale === null) return null;
  return shownBy(scale, { least: ohms.least + leads.least, most: ohms.most + leads.most });
}
