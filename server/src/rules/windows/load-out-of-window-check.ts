import { isFarSide, placeInWords } from '../../bench/hardware.ts';
import { showsOnlyOpen } from '../../readings/accepted.ts';
import { bridgedLoads } from '../../readings/bridged.ts';
import { classesShown } from '../../readings/classes.ts';
import type { Reading } from '../../readings/reading.ts';
import { amountInWords, shownInWords } from '../../readings/shown-in-words.ts';
import { subjectInWords } from '../../readings/subject.ts';
import type { Id, Loop, Place } from '../../model/procedure.ts';
import type { Context, Finder, Seen } from '../rule.ts';
import { byReading, expects, known, seen } from './window-sides.ts';
import type { Side } from './window-sides.ts';
import { listed } from '../words.ts';

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
  const { accepted, instrument } = reading;
  const { hardware } = side.arrival.state;
  const loads = loadsOf(reading, side).map(([load]) => load);
  if (loads.length === 0) return null;
  if (bridgedLoads(context.procedure, hardware).some(({ load }) => loads.includes(load))) return 'bridged';
  // Without a stated window open is accepted, and what a broken circuit shows as well.
  if (!expects(context, reading)) return showsOnlyOpen(side.indication) ? 'out' : null;
  if (accepted === null) return null;
  return classesShown(side.indication, accepted, instrument?.resolution ?? 0).includes('within')
    ? null
    : 'out';
}

function outOfWindow(context: Context, reading: Reading): Seen | null {
  const side = known(reading).find((one) => judgedByLoad(context, reading, one) === 'out');
  if (side === undefined) return null;
  const isStated = expects(context, reading);
  const message = `${reason(context, reading, side)}${isStated ? ', and `expect` leaves that out' : ''}: ${advice(context, reading, side, isStated)}.`;
  const underline = isStated ? ['expect'] : undefined;
  return seen(context, reading, 'load-out-of-window', message, [side], underline);
}

function reason(context: Context, reading: Reading, side: Side): string {
  const { quantity, instrument } = reading;
  const loads = loadsOf(reading, side);
  const words = listed(loads.map(([load, place]) => `${load} at ${placeInWords(place)}`));
  const of = subjectInWords(reading);
  const sound = reading.loop === null ? of : `a sound ${of}`;
  if (!showsOnlyOpen(side.indication))
    return `With ${words} ${sound} shows ${shownInWords(side.indication, quantity)}`;
  const gap = gapBefore(context, reading, side);
  if (gap !== null) return `The reading of ${of} does not see ${words}, since ${gap} is unplugged`;
  const end = instrument?.range?.most;
  const range = end === undefined ? '' : ` of ${amountInWords(end, quantity)}`;
  return `With ${words} ${sound} is beyond the range${range} of ${instrument?.id ?? 'its instrument'} and shows open`;
}

function advice(context: Context, reading: Reading, side: Side, isStated: boolean): string {
  const gap = gapBefore(context, reading, side);
  const near = context.procedure.connectors.get(gap ?? '')?.sides[0] ?? 'monitor';
  const place =
    gap === null
      ? 'take a load that fits'
      : `fit ${listed(loadsOf(reading, side).map(([load]) => load))} at ${gap}.${near}`;
  if (isStated) return gap === null ? 'take another load or another window' : place;
  return showsOnlyOpen(side.indication) ? `${place}, or state \`expect: open\`` : place;
}

/** Of the loop; of what is measured by hand all that can matter to it. */
function loadsOf({ loop }: Reading, { arrival }: Side): readonly [Id, Place][] {
  return [...arrival.state.hardware.loads].filter(([, place]) => loop === null || place.loop === loop.id);
}

/** The unplugged connector that lies between the monitor and all loads of the loop; null: one of them is seen. */
function gapBefore({ procedure }: Context, reading: Reading, side: Side): Id | null {
  const { loop } = reading;
  if (loop === null) return null;
  const gaps = loadsOf(reading, side).map(([, place]) =>
    gapBeforePlace(loop, side, place, isFarSide(procedure, place.connector, place.side)),
  );
  return gaps.includes(null) ? null : (gaps[0] ?? null);
}

function gapBeforePlace(
  { elements }: Loop,
  { arrival }: Side,
  { connector }: Place,
  isFar: boolean,
): Id | null {
  const at = elements.findIndex(({ id }) => id === connector);
  const between = elements.slice(0, isFar ? at + 1 : at);
  return between.find(({ id }) => arrival.state.hardware.connectors.get(id) === 'unplugged')?.id ?? null;
}
