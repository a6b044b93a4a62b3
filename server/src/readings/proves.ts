import { quantityFacts } from '../model/quantity-kinds.ts';
import { askedBy } from '../bench/asked.ts';
import type { Proves } from '../bench/verification.ts';
import type { Id, Procedure, Step } from '../model/procedure.ts';
import type { Reading, Readings } from './reading.ts';
import { saysWithin } from './says-within.ts';
import { showsSound, tellsOpen } from './shows.ts';

/** What readings prove, each worked out once for a reading and a thing. */
export function provesBy(procedure: Procedure, readings: Readings): Proves {
  const known = new Map<Reading, Map<Id, boolean>>();
  const shows = (reading: Reading, thing: Id): boolean => {
    const ofReading = known.get(reading) ?? new Map<Id, boolean>();
    known.set(reading, ofReading);
    const value = ofReading.get(thing) ?? showsSound(procedure, reading, thing);
    ofReading.set(thing, value);
    return value;
  };
  return {
    within: (step, outcome, of) => {
      if (step.verb !== 'read' && step.verb !== 'measure') return false;
      const reading = readings.at(step.index, of);
      return reading === undefined ? outcome.name === 'within' : saysWithin(step, outcome, reading);
    },
    loop: (step, loop) => tellsOpen(readings.at(step.index, loop)),
    thing: (step, of, thing) => {
      const reading = readings.at(step.index, of);
      if (reading === undefined) return true;
      // A control unit that is replaced is shown by each reading that it takes itself.
      return procedure.monitors.has(thing) ? tellsOpen(reading) : shows(reading, thing);
    },
    around: (step, thing) => connectorsAround(procedure, readings, step, thing),
  };
}

/** The connectors of what is measured, where a thing stands in it; null: it does not, or nothing is measured. */
function connectorsAround(
  { network }: Procedure,
  readings: Readings,
  step: Step,
  thing: Id,
): readonly Id[] | null {
  // What is seen while something is moved shows what it does then, and no more.
  if (step.verb === 'wiggle') return null;
  const asked = askedBy(step);
  if (asked?.of !== 'points' || !quantityFacts[asked.step.quantity].showsCircuit) return null;
  const reading = readings.at(step.index, asked.step.of);
  // What could not be read may hold anything.
  if (reading === undefined) return [];
  const { elements, loops, connectors } = reading.island;
  const stands =
    elements.some(({ id }) => id === thing) ||
    loops.some((loop) => loop.elements.some(({ id }) => id === thing));
  return stands || !network.complete ? connectors : null;
}
