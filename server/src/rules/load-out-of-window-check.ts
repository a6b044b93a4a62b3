import { placeInWords } from '../bench/hardware.ts';
import { showsOnlyOpen } from '../readings/accepted.ts';
import { bridgedLoads } from '../readings/bridged.ts';
import { classesShown } from '../readings/classes.ts';
import type { Reading } from '../readings/reading.ts';
import { ohmsInWords, shownInWords } from '../readings/shown-in-words.ts';
import type { Id, Loop, Place } from '../text/procedure.ts';
import type { Context, Finder, Seen } from './rule.ts';
import { byReading, expects, known, seen } from './window-sides.ts';
import type { Side } from './window-sides.ts';
import { listed } from './words.ts';

/*
 * Loads that a reading cannot tell: it does not see them, they are beyond the range of its instrument, or the author
 * expects what no sound circuit shows with them.
 */

export const loadOutOfWindowFinder: Finder = { check: (context) => byReading(context, outOfWindow) };

/**
 * What is wrong with the loads of a loop on a bench, whatever else is: `bridged` is told where the bar closes. null:
 * nothing, or none is fitted.
 */
export function judgedByLoad(context: Context, reading: Reading, side: Side): 'bridged' | 'out' | null {
  const { accepted, monitor, loop } = reading;
  const { hardware } = side.arrival.state;
  const loads = loadsOf(loop, side).map(([load]) => load);
  if (loads.length === 0) return null;
  if (bridgedLoads(context.procedure, hardware).some(({ load }) => loads.includes(load))) return 'bridged';
  // Without a stated window open is accepted, and what a broken circuit shows as well.
  if (!expects(context, reading)) return showsOnlyOpen(side.indication) ? 'out' : null;
  if (accepted === null) return null;
  return classesShown(side.indication, accepted, monitor?.resolution ?? 0).includes('within') ? null : 'out';
}

function outOfWindow(context: Context, reading: Reading): Seen | null {
  const side = known(reading).find((one) => judgedByLoad(context, reading, one) === 'out');
  if (side === undefined) return null;
  const isStated = expects(context, reading);
  const message = `${reason(reading, side)}${isStated ? ', and `expect` leaves that out' : ''}: ${advice(reading.loop, side, isStated)}.`;
  const underline = isStated ? ['expect'] : ['read'];
  return seen(context, reading, 'load-out-of-window', message, [side], underline);
}

function reason({ loop, monitor }: Reading, side: Side): string {
  const loads = loadsOf(loop, side);
  const words = listed(loads.map(([load, place]) => `${load} at ${placeInWords(place)}`));
  if (!showsOnlyOpen(side.indication))
    return `With ${words} a sound ${loop.id} shows ${shownInWords(side.indication)}`;
  const gap = gapBefore(loop, side);
  if (gap !== null) return `The reading of ${loop.id} does not see ${words}, since ${gap} is unplugged`;
  const end = monitor?.range?.most;
  const range = end === undefined ? '' : ` of ${ohmsInWords(end)}`;
  return `With ${words} a sound ${loop.id} is beyond the range${range} of ${monitor?.id ?? 'its monitor'} and shows open`;
}

function advice(loop: Loop, side: Side, isStated: boolean): string {
  const gap = gapBefore(loop, side);
  const place =
    gap === null
      ? 'take a load that fits'
      : `fit ${listed(loadsOf(loop, side).map(([load]) => load))} at ${gap}.monitor`;
  if (isStated) return gap === null ? 'take another load or another window' : place;
  return showsOnlyOpen(side.indication) ? `${place}, or state \`expect: open\`` : place;
}

function loadsOf(loop: Loop, { arrival }: Side): readonly [Id, Place][] {
  return [...arrival.state.hardware.loads].filter(([, place]) => place.loop === loop.id);
}

/** The unplugged connector that lies between the monitor and all loads of the loop; null: one of them is seen. */
function gapBefore(loop: Loop, side: Side): Id | null {
  const gaps = loadsOf(loop, side).map(([, place]) => gapBeforePlace(loop, side, place));
  return gaps.includes(null) ? null : (gaps[0] ?? null);
}

function gapBeforePlace({ elements }: Loop, { arrival }: Side, { connector, side }: Place): Id | null {
  const at = elements.findIndex(({ id }) => id === connector);
  const between = elements.slice(0, side === 'end' ? at + 1 : at);
  return between.find(({ id }) => arrival.state.hardware.connectors.get(id) === 'unplugged')?.id ?? null;
}
