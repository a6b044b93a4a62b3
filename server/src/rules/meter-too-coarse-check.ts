import { guardedOf } from '../readings/guarded.ts';
import type { Reading } from '../readings/reading.ts';
import { ohmsInWords } from '../readings/shown-in-words.ts';
import type { Monitor } from '../text/procedure.ts';
import type { Context, Finder, Seen } from './rule.ts';
import { expects, known, seen } from './window-sides.ts';
import type { Side } from './window-sides.ts';

/* Instruments whose error is so large that no reading proves a circuit good. */

export const meterTooCoarseFinder: Finder = { check: tooCoarse };

function tooCoarse(context: Context): readonly Seen[] {
  const told = new Set<string>();
  return context.readings.readings.flatMap((reading): Seen[] => {
    const isStated = expects(context, reading);
    // What comes of the circuit and its monitor alone is the same at every step.
    if (!isStated && told.has(reading.loop.id)) return [];
    const side = known(reading).find(
      (one) => isWithoutLoads(reading, one) && guardedOf(reading, one) === 'empty',
    );
    if (side === undefined || reading.monitor === undefined) return [];
    if (!isStated) told.add(reading.loop.id);
    const underline = isStated ? ['expect'] : ['read'];
    return [
      seen(
        context,
        reading,
        'meter-too-coarse',
        message(reading, reading.monitor, side, isStated),
        [side],
        underline,
      ),
    ];
  });
}

function isWithoutLoads({ loop }: Reading, { arrival }: Side): boolean {
  return ![...arrival.state.hardware.loads.values()].some((place) => place.loop === loop.id);
}

function message({ loop, printed }: Reading, monitor: Monitor, { circuit }: Side, isStated: boolean): string {
  const good =
    isStated || circuit === 'open' || circuit === 'unknown'
      ? `is to lie in ${printed}`
      : `is ${ohmsInWords(circuit.least)} to ${ohmsInWords(circuit.most)}`;
  return (
    `No reading of ${monitor.id} proves ${loop.id} good: a sound one ${good}, ` +
    'and after its error every number that it shows there can also come from outside.'
  );
}
