import type { Id, Loop, MeterRange, Procedure, Side } from '../../server/src/model/procedure.ts';
import { ohmsOf } from './resistance.ts';
import { isPowered, loadsAt } from './world.ts';
import type { World } from './world.ts';

/*
 * What a sound loop measures on a bench. Seen from its end back to the monitor a loop is a ladder: a rung (a load, a
 * closed shorting bar, the end part) lies in parallel with what is behind it, a rail (a conductor or contact of each
 * side) in series. Resistance rises with each element, so the least and the most are two separate sums.
 */

export interface Interval {
  readonly least: number;
  readonly most: number;
}

const OPEN: Interval = { least: Infinity, most: Infinity };

function parallelOf(a: number, b: number): number {
  if (a === Infinity) return b;
  if (b === Infinity) return a;
  return a + b === 0 ? 0 : (a * b) / (a + b);
}
const parallel = (a: Interval, b: Interval): Interval => ({
  least: parallelOf(a.least, b.least),
  most: parallelOf(a.most, b.most),
});
const pairInSeries = (conductor: Interval, behind: Interval): Interval => ({
  least: 2 * conductor.least + behind.least,
  most: 2 * conductor.most + behind.most,
});

/** What lies across the loop's pins on one side of a connector: loads and a closed bar. null: not known. */
export function rungs(procedure: Procedure, world: World, loop: Loop, id: Id, side: Side): Interval[] | null {
  const here = loadsAt(world, id).filter((load) => world.loads[load]?.side === side);
  const found: (Interval | null)[] = here
    .filter((load) => world.loads[load]?.loop === loop.id)
    .map((load) => ohmsOf(procedure, procedure.loads.get(load)?.resistance ?? null));
  if (here.some((load) => world.loads[load]?.loop === null)) return null;
  const bar = procedure.connectors.get(id)?.shortingBar;
  if (bar?.side === side) {
    const state = world.connectors[id];
    const closed = state === 'unplugged' || (state === 'unlocked' && bar.closes === 'unlocked');
    const heldOpen = here.some((load) => procedure.loads.get(load)?.opensShortingBar === true);
    const pins: readonly string[] = loop.pins.get(id) ?? [];
    const bridges = bar.pins === null || bar.pins.every((pin) => pins.includes(pin));
    if (closed && !heldOpen && bridges) found.push(bar.resistance);
  }
  return found.includes(null) ? null : (found as Interval[]);
}

function lookingOut(procedure: Procedure, world: World, loop: Loop, from: number): Interval | null {
  const element = loop.elements[from];
  if (element === undefined) return OPEN;
  if (element.kind === 'part') {
    const part = procedure.parts.get(element.id);
    const own = ohmsOf(procedure, part?.resistance ?? null);
    if (own === null || part === undefined) return null;
    if (part.form === 'end') return own;
    const behind = lookingOut(procedure, world, loop, from + 1);
    return behind === null ? null : pairInSeries(own, behind);
  }
  const behind = lookingOut(procedure, world, loop, from + 1);
  const atEnd = rungs(procedure, world, loop, element.id, 'end');
  const atMonitor = rungs(procedure, world, loop, element.id, 'monitor');
  const contact = procedure.connectors.get(element.id)?.contact ?? null;
  if (behind === null || atEnd === null || atMonitor === null || contact === null) return null;
  const endSide = atEnd.reduce<Interval>(parallel, behind);
  const through = world.connectors[element.id] === 'unplugged' ? OPEN : pairInSeries(contact, endSide);
  return atMonitor.reduce<Interval>(parallel, through);
}

/** Ohms between the monitor's terminals, infinite where there is no path. null: not known. */
export function circuitOf(procedure: Procedure, world: World, loop: Loop): Interval | null {
  return loop.complete ? lookingOut(procedure, world, loop, 0) : null;
}

/** What an instrument shows for a sound circuit, before its display step. */
export interface Shown {
  /** The numbers that it can show. null: it must show open. */
  readonly number: Interval | null;
  readonly canBeOpen: boolean;
}

export function shownBy({ accuracy, range, resolution }: MeterRange, circuit: Interval): Shown | null {
  if (accuracy === null || range === null || (accuracy.digits !== 0 && resolution === null)) return null;
  const constant = accuracy.constant + (accuracy.digits === 0 ? 0 : accuracy.digits * (resolution ?? 0));
  const least = Math.max(0, circuit.least * (1 - accuracy.fraction) - constant);
  const most = Math.max(0, circuit.most * (1 + accuracy.fraction) + constant);
  if (least > range.most) return { number: null, canBeOpen: true };
  return { number: { least, most: Math.min(most, range.most) }, canBeOpen: most > range.most };
}

/** What the loop's monitor shows on a bench. null: not known. */
export function shownOf(procedure: Procedure, world: World, loop: Loop): Shown | null {
  const monitor = loop.monitor === null ? undefined : procedure.monitors.get(loop.monitor);
  const circuit = circuitOf(procedure, world, loop);
  return monitor === undefined || circuit === null ? null : shownBy(monitor, circuit);
}

export interface ForetoldCode {
  readonly loop: Id;
  readonly code: 'open' | 'too-low' | 'too-high' | 'leak';
  readonly certain: boolean;
}

/** The codes that a loop of a powered monitor can or must set on a bench. A sound loop has no path to ground: no leak. */
function codesOf(procedure: Procedure, world: World, loop: Loop): ForetoldCode[] {
  const monitor = loop.monitor === null ? undefined : procedure.monitors.get(loop.monitor);
  const shown = shownOf(procedure, world, loop);
  if (monitor === undefined || shown === null) return [];
  const found: ForetoldCode[] = [];
  const { number, canBeOpen } = shown;
  if (canBeOpen) found.push({ loop: loop.id, code: 'open', certain: number === null });
  for (const [code, limit] of [
    ['too-low', monitor.tooLow],
    ['too-high', monitor.tooHigh],
  ] as const) {
    if (limit === null || number === null) continue;
    const can = 'below' in limit ? number.least < limit.below : number.most > limit.above;
    const must = 'below' in limit ? number.most < limit.below : number.least > limit.above;
    if (can) found.push({ loop: loop.id, code, certain: must && !canBeOpen });
  }
  return found;
}

/** The codes set at once in every loop of these monitors, as far as they are powered. */
export function codesSet(procedure: Procedure, world: World, monitors: readonly Id[]): ForetoldCode[] {
  return monitors
    .filter((monitor) => isPowered(procedure, world, monitor))
    .flatMap((monitor) => [...procedure.loops.values()].filter((loop) => loop.monitor === monitor))
    .flatMap((loop) => codesOf(procedure, world, loop));
}
