import { nameGroups } from '../bench/name-groups.ts';
import type { Reading } from '../readings/reading.ts';
import { subjectInWords } from '../readings/subject.ts';
import type { Context, Finder, Seen } from './rule.ts';
import { byReading, known, seen } from './window-sides.ts';
import type { Side } from './window-sides.ts';

/* Drops of voltage that are measured where no current flows: they are zero, whatever the resistance is. */

export const nothingFlowsFinder: Finder = { check: (context) => byReading(context, nothingFlows) };

function nothingFlows(context: Context, reading: Reading): Seen | null {
  if (reading.quantity !== 'voltage') return null;
  const sides = known(reading);
  const [nearest] = sides;
  if (nearest === undefined || !sides.every((side) => carriesNothing(reading, side))) return null;
  const message =
    `No current flows through what lies between the probes here, so ${subjectInWords(reading)} is zero whatever resistance there is. ` +
    'Switch on first what draws current through it.';
  return seen(context, reading, 'nothing-flows', message, [nearest], ['across']);
}

/** Less than this many volts is nothing but the rounding of sums. */
const noVoltage = 1e-9;

/**
 * Whether the probes are joined by parts and contacts, a source that is on hangs there, and there is no drop. Ground is
 * taken out: it joins a dead wire to every source, and that such a wire has no voltage is often what shall be seen.
 */
function carriesNothing(reading: Reading, { arrival, circuit }: Side): boolean {
  if (circuit === 'open' || circuit === 'unknown') return false;
  if (Math.max(Math.abs(circuit.least), Math.abs(circuit.most)) > noVoltage) return false;
  const seen = reading.seen(arrival.state);
  if (seen === null) return false;
  const [one, other] = seen.probes;
  const apart = [...seen.network].filter(({ between }) => !between.includes('ground'));
  const piece = nameGroups(apart).of;
  const isHere = (node: string): boolean => node !== 'ground' && piece(node) === piece(one);
  return isHere(other) && seen.sources.some(({ between }) => between.some(isHere));
}
