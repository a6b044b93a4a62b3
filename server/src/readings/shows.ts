import type { ConditionRanges, Element, Network } from '../circuit/circuit.ts';
import { fragmentsOf } from '../bench/fragments.ts';
import { fragmentsMoved } from '../bench/moved.ts';
import { partFacts } from '../model/part-kinds.ts';
import type { Id, Moved, Procedure } from '../model/procedure.ts';
import { openIsWithin } from './accepted.ts';
import type { Accepted } from './accepted.ts';
import { conditionsFor } from './by-entry.ts';
import { classesShown } from './classes.ts';
import { conditionsOf } from './conditions.ts';
import { readingOf } from './good.ts';
import type { Good } from './good.ts';
import { leastAdded } from './least-added.ts';
import type { LoopBench } from './loop-bench.ts';
import { ownerOf } from './loop-network.ts';
import type { GoodOnBench, Reading } from './reading.ts';
import type { Seen } from './subject.ts';

/*
 * Which readings show that something is sound: their window leaves out what the circuit would show with it open, and with
 * the greatest resistance that is usually added in it.
 */

/** Whether the window of a reading can tell a sound circuit from one that is open: then open is no `within`. */
export function tellsOpen(reading: Reading | undefined): boolean {
  const accepted = reading?.accepted ?? null;
  return accepted === null || !openIsWithin(accepted);
}

/**
 * Whether a reading that is within its window, with everything mated and no load fitted, shows a part or connector to be
 * sound. What is not known is not held against it: its own finding stands. A reading that shows the absence of voltage
 * shows nothing of a circuit.
 */
export function showsSound(procedure: Procedure, reading: Reading, thing: Id): boolean {
  const benches = reading.good.filter(({ arrival }) => isBare(arrival.state));
  if (reading.accepted === null || benches.length === 0) return true;
  if (showsAbsence(reading)) return false;
  const rows = rowsOf(procedure, reading);
  return benches.every(({ arrival }) => {
    const seen = reading.seen(arrival.state);
    if (seen === null) return true;
    return rows.every(
      ({ accepted, ranges }) =>
        accepted === null || leavesOut(procedure, reading, seen, accepted, ranges, thing),
    );
  });
}

/** What is accepted, and the conditions that it holds for: one row, or those of the table by entry. */
function rowsOf(
  procedure: Procedure,
  reading: Reading,
): readonly { readonly accepted: Accepted | null; readonly ranges: ConditionRanges }[] {
  const conditions = conditionsOf(procedure);
  if (reading.byEntry.length === 0) return [{ accepted: reading.accepted, ranges: conditions }];
  return reading.byEntry.map(({ bands, accepted }) => ({
    accepted,
    ranges: conditionsFor(procedure, conditions, bands),
  }));
}

/** Everything mated, and no load fitted. */
function isBare({ hardware }: LoopBench): boolean {
  return hardware.connectors.size === 0 && hardware.loads.size === 0;
}

/**
 * Whether a reading shows that there is no voltage: zero is accepted, and a sound circuit shows zero, within one step of
 * the display, on every bench.
 */
export function showsAbsence({ quantity, accepted, good, instrument }: Reading): boolean {
  if (quantity !== 'voltage' || accepted === null || accepted === 'open') return false;
  const holdsZero = (accepted.least ?? -Infinity) <= 0 && (accepted.most ?? Infinity) >= 0;
  const step = instrument?.resolution ?? 0;
  return holdsZero && good.every(({ circuit }) => isWithinStep(circuit, step));
}

function isWithinStep(circuit: GoodOnBench['circuit'], step: number): boolean {
  return (
    circuit !== 'open' &&
    circuit !== 'unknown' &&
    Math.abs(circuit.least) <= step &&
    Math.abs(circuit.most) <= step
  );
}

/** Faults of a thing that change nothing here do not count; one at least has to be left out. */
function leavesOut(
  procedure: Procedure,
  reading: Reading,
  seen: Seen,
  accepted: Accepted,
  ranges: ConditionRanges,
  thing: Id,
): boolean {
  const sound = readingOf(reading, seen, ranges);
  const own = seen.network.filter((element) => isOf(procedure, element, thing));
  const added = addsResistance(procedure, thing)
    ? leastAdded(procedure, reading.loop, seen.network, ranges)
    : null;
  let isSeen = false;
  for (const element of own) {
    const faults = [
      without(seen.network, element),
      ...(added === null ? [] : [withAdded(seen.network, element, 10 * added)]),
    ];
    for (const network of faults) {
      const faulty = readingOf(reading, { ...seen, network }, ranges);
      if (isAlike(sound, faulty)) continue;
      if (faulty.indication === null) return false;
      if (classesShown(faulty.indication, accepted, reading.instrument?.resolution ?? 0).includes('within'))
        return false;
      isSeen = true;
    }
  }
  return isSeen;
}

/**
 * Whether a reading on a bench can be `within` wherever what is moved opens, or has nothing of it in its circuit. What is
 * not known is not held against it.
 */
export function hidesOpen(procedure: Procedure, reading: Reading, bench: LoopBench, moved: Moved): boolean {
  const seen = reading.seen(bench);
  if (seen === null || reading.accepted === null) return false;
  const rows = rowsOf(procedure, reading);
  const things = thingsMoved(procedure, moved);
  return seen.network
    .filter((element) => things.some((thing) => isOf(procedure, element, thing)))
    .every((element) => {
      const faulty = { ...seen, network: without(seen.network, element) };
      return rows.some(({ accepted, ranges }) => {
        const { indication } = readingOf(reading, faulty, ranges);
        if (indication === null || accepted === null) return false;
        return classesShown(indication, accepted, reading.instrument?.resolution ?? 0).includes('within');
      });
    });
}

/** Of one half of a connector, its contact and the parts that hang on it. */
function thingsMoved(procedure: Procedure, moved: Moved): readonly Id[] {
  if (moved.side === undefined) return [moved.id];
  const fragments = fragmentsOf(procedure);
  return [
    moved.id,
    ...fragmentsMoved(fragments, moved).flatMap((index) => fragments.all[index]?.parts ?? []),
  ];
}

/** Bars and joins are no part of what is repaired. */
function isOf({ connectors }: Procedure, element: Element, thing: Id): boolean {
  if (ownerOf(element) !== thing) return false;
  return !connectors.has(thing) || element.id.split('.')[1] === 'contact';
}

function addsResistance({ parts }: Procedure, thing: Id): boolean {
  const part = parts.get(thing);
  return part === undefined || partFacts[part.kind].addsResistance;
}

function without(network: Network, element: Element): Network {
  return network.filter((other) => other !== element);
}

/** Ohms in series with an element, at its second end. */
function withAdded(network: Network, element: Element, ohms: number): Network {
  const [from, to] = element.between;
  const between = `added at ${to}`;
  const resistance = { least: ohms, nominal: ohms, most: ohms };
  return [
    ...without(network, element),
    { ...element, between: [from, between] },
    { id: 'added', between: [between, to], part: { kind: 'stated', resistance } },
  ];
}

/** Whether a fault makes no difference, but for the rounding of sums. */
function isAlike({ circuit: one }: Good, { circuit: other }: Good): boolean {
  if (typeof one === 'string' || typeof other === 'string') return one === other;
  const isNear = (a: number, b: number): boolean =>
    Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b));
  return isNear(one.least, other.least) && isNear(one.most, other.most);
}
