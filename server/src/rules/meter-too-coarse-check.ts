import { guardedOf } from '../readings/guarded.ts';
import { ohmsInWords } from '../readings/shown-in-words.ts';
import type { Id, Loop, Monitor } from '../text/procedure.ts';
import type { Context, Finder, Seen } from './rule.ts';
import { expects, known, seen } from './window-sides.ts';
import type { Side } from './window-sides.ts';

/* Instruments whose error is so large that no reading proves a circuit good. */

export const meterTooCoarseFinder: Finder = { check: tooCoarse };

function tooCoarse(context: Context): readonly Seen[] {
  const told = new Set<Id>();
  return context.readings.readings.flatMap((reading): Seen[] => {
    const { loop, monitor } = reading;
    // The limits of a stated window are the author's; what comes of circuit and monitor is the same at every step.
    if (monitor === undefined || expects(context, reading) || told.has(loop.id)) return [];
    const side = known(reading).find(
      (one) => isWithoutLoads(loop, one) && guardedOf(reading, one) === 'empty',
    );
    if (side === undefined) return [];
    told.add(loop.id);
    return [seen(context, reading, 'meter-too-coarse', message(loop, monitor, side), [side])];
  });
}

function isWithoutLoads(loop: Loop, { arrival }: Side): boolean {
  return ![...arrival.state.hardware.loads.values()].some((place) => place.loop === loop.id);
}

function message(loop: Loop, monitor: Monitor, { circuit }: Side): string {
  const good =
    typeof circuit === 'string' ? '' : ` is ${ohmsInWords(circuit.least)} to ${ohmsInWords(circuit.most)}`;
  return (
    `No reading of ${monitor.id} proves ${loop.id} good: a sound one${good}, ` +
    'and by its error every number that it shows there can also come from outside.'
  );
}
