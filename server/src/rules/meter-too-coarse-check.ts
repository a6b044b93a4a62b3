import { quantityFacts } from '../text/quantity-kinds.ts';
import { guardedOf } from '../readings/guarded.ts';
import { amountInWords } from '../readings/shown-in-words.ts';
import type { Reading } from '../readings/reading.ts';
import { showsAbsence } from '../readings/shows.ts';
import { subjectInWords } from '../readings/subject.ts';
import type { Id } from '../text/procedure.ts';
import type { Context, Finder, Seen } from './rule.ts';
import { expects, known, seen } from './window-sides.ts';
import type { Side } from './window-sides.ts';

/* Instruments whose error is so large that no reading proves a circuit good. */

export const meterTooCoarseFinder: Finder = { check: tooCoarse };

function tooCoarse(context: Context): readonly Seen[] {
  const told = new Set<Id>();
  return context.readings.readings.flatMap((reading): Seen[] => {
    if (showsAbsence(reading) || !quantityFacts[reading.quantity].showsCircuit) return [];
    // The limits of a stated window are the author's; what comes of circuit and instrument is the same at every step.
    if (reading.instrument === null || expects(context, reading) || told.has(reading.of)) return [];
    const side = known(reading).find(
      (one) =>
        isWithoutLoads(reading, one) && (isBeyond(reading, one) || guardedOf(reading, one) === 'empty'),
    );
    if (side === undefined) return [];
    told.add(reading.of);
    const message = coarseInWords(reading, reading.instrument.id, side);
    return [seen(context, reading, 'meter-too-coarse', message, [side])];
  });
}

function isWithoutLoads({ loop }: Reading, { arrival }: Side): boolean {
  const { loads } = arrival.state.hardware;
  return ![...loads.values()].some((place) => loop === null || place.loop === loop.id);
}

/** A sound circuit that is always shown as open, as a broken one is. */
function isBeyond({ accepted, quantity }: Reading, { circuit }: Side): boolean {
  return quantityFacts[quantity].beyond === 'open' && accepted === 'open' && typeof circuit !== 'string';
}

function coarseInWords(reading: Reading, instrument: Id, side: Side): string {
  const { circuit } = side;
  const { quantity } = reading;
  const good =
    typeof circuit === 'string'
      ? ''
      : ` is ${amountInWords(circuit.least, quantity)} to ${amountInWords(circuit.most, quantity)}`;
  const because = isBeyond(reading, side)
    ? 'which is beyond its range: it reads open like a broken one.'
    : 'and by its error every number that it shows there can also come from outside.';
  return `No reading of ${instrument} proves ${subjectInWords(reading)} good: a sound one${good}, ${because}`;
}
