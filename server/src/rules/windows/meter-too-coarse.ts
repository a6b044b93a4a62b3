import { guardedOf } from '../../readings/guarded.ts';
import type { Reading } from '../../readings/reading.ts';
import { amountInWords } from '../../readings/shown-in-words.ts';
import { showsAbsence } from '../../readings/shows.ts';
import { subjectInWords } from '../../readings/subject.ts';
import type { Id } from '../../model/procedure.ts';
import { quantityFacts } from '../../model/quantity-kinds.ts';
import { example } from '../examples.ts';
import type { Context, Rule, Seen } from '../rule.ts';
import { expects, known, seen } from './window-sides.ts';
import type { Side } from './window-sides.ts';

/* Instruments whose error is so large that no reading proves a circuit good. */

const readOnly = `
- ignition: on
- read-codes: control-unit
- clear-codes: control-unit
- read: driver-loop
`;

function withAccuracy(accuracy: string): { readonly instruments: string } {
  return {
    instruments: `instruments:
  control-unit: { kind: monitor, range: 0..10 Ω, accuracy: ${accuracy}, resolution: 0.01 Ω, test-current: 10 mA }
`,
  };
}

export const meterTooCoarse: Rule = {
  name: 'meter-too-coarse',
  severity: 'information',
  stage: 'windows',
  meaning: 'No reading with this instrument proves the circuit good.',
  why: 'A reading within its window then says only that the circuit may be sound. That may be enough, but should be known.',
  source: 'JCGM 106, guarded acceptance, with the whole error limit as guard band',
  finder: { check: tooCoarse },
  examples: {
    triggers: example('an error as wide as the tolerances', readOnly, withAccuracy('3 % + 0.5 Ω')),
    passes: example('an error that leaves room within them', readOnly, withAccuracy('3 % + 0.1 Ω')),
  },
};

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
