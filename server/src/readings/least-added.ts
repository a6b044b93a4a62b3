import { resistanceWithin } from '../circuit/circuit.ts';
import type { ConditionRanges, Network } from '../circuit/circuit.ts';
import { leastOf } from '../quantity/extremes.ts';
import { partFacts } from '../model/part-kinds.ts';
import type { Loop, Procedure } from '../model/procedure.ts';
import { ownerOf } from './loop-network.ts';

/** In a loop that a control unit reads, less than this many ohms counts as tolerance. Common practice, no source. */
const leastInLoop = 1;

/**
 * The least added resistance that counts as a fault, in ohms: a tenth of the least nominal one of the loads, sensors and
 * end parts of a circuit, and in a loop that a control unit reads 1 Ω at least. null: nothing there has a resistance to
 * hold it against. Common practice, no source.
 */
export function leastAdded(
  { parts, loads }: Procedure,
  loop: Loop | null,
  network: Network,
  ranges: ConditionRanges,
): number | null {
  const nominals = network.flatMap((element): number[] => {
    const id = ownerOf(element);
    const part = parts.get(id);
    const counts = part === undefined ? loads.has(id) : partFacts[part.kind].sizesFaults;
    if (!counts) return [];
    // Of a potentiometer the whole track.
    if (element.part.kind === 'track') return [element.part.track.nominal];
    return part?.kind === 'potentiometer' ? [] : [resistanceWithin(element.part, ranges).nominal];
  });
  if (nominals.length === 0) return loop === null ? null : leastInLoop;
  return Math.max(leastOf(nominals) / 10, loop === null ? 0 : leastInLoop);
}
