import { askedBy } from '../bench/asked.ts';
import { hardwareAtStart } from '../bench/hardware.ts';
import type { Proves, ShownByHand } from '../bench/verification.ts';
import type { Procedure, Step } from '../text/procedure.ts';
import { quantityFacts } from '../text/quantity-kinds.ts';
import { openIsWithin } from './accepted.ts';
import { islandNetwork } from './island-network.ts';
import { ownersBetween } from './obstacles.ts';
import type { Reading, Readings } from './reading.ts';
import { saysWithin } from './says-within.ts';

/**
 * A reading proves nothing where an open circuit is within its window. A window that is not known is not held against it,
 * nor is a measurement of what could not be read.
 */
export function provesBy(procedure: Procedure, readings: Readings): Proves {
  return {
    within: (step, outcome, of) => {
      if (step.verb !== 'read' && step.verb !== 'measure') return false;
      const reading = readings.at(step.index, of);
      return reading === undefined ? outcome.name === 'within' : saysWithin(step, outcome, reading);
    },
    loop: (step, loop) => tellsOpen(readings.at(step.index, loop)),
    measured: (step) => measuredBy(procedure, readings, step),
  };
}

function tellsOpen(reading: Reading | undefined): boolean {
  const accepted = reading?.accepted ?? null;
  return accepted === null || !openIsWithin(accepted);
}

/** Of a resistance: all that lies on some way between the probes as built, every source taken away. */
function measuredBy(procedure: Procedure, readings: Readings, step: Step): ShownByHand | null {
  const asked = askedBy(step);
  if (asked?.of !== 'points' || !quantityFacts[asked.step.quantity].showsCircuit) return null;
  const reading = readings.at(step.index, asked.step.of);
  if (!tellsOpen(reading)) return null;
  if (reading === undefined) return { things: 'unknown', connectors: [] };
  const { island, probes } = reading;
  const power = { ignitionOn: false, disconnected: island.sources };
  const built = islandNetwork(procedure, island, { power, hardware: hardwareAtStart });
  if (built === null || probes === null) return { things: 'unknown', connectors: island.connectors };
  return { things: ownersBetween(island, built, probes), connectors: island.connectors };
}
