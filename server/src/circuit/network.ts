import type { Span } from '../quantity/quantity.ts';
import type { ConditionRanges } from './conditions.ts';
import { numbered } from './numbered.ts';
import type { PartModel } from './parts.ts';
import { resistanceWithin } from './parts.ts';
import { extremeOver, sharedBothWays } from './shared-temperature.ts';
import { resistanceBetween } from './solver.ts';

/** A two-terminal element between two named nodes. */
export interface Element {
  readonly id: string;
  readonly between: readonly [string, string];
  readonly part: PartModel;
}

export type Network = readonly Element[];

/**
 * Resistance in ohms between two nodes, for every value that the parts and the temperatures may take. `open`: no path,
 * whatever the values.
 *
 * The resistance between two nodes rises with each part (Rayleigh), so the ends lie where all are least and where all
 * are most; two solves are exact. Only where parts that share a temperature go both ways with it is the temperature
 * searched.
 */
export function networkWindow(
  network: Network,
  from: string,
  to: string,
  ranges: ConditionRanges,
): Span | 'open' {
  const whole = numbered(network, from, to);
  const bothWays = sharedBothWays(network);
  const solve = (ohms: (part: PartModel) => number): number => {
    const edges = whole.edgesWith(({ part }) => ohms(part));
    return resistanceBetween(edges, whole.nodes, whole.from, whole.to);
  };
  const end = (name: 'least' | 'most'): number =>
    bothWays.length === 0
      ? solve((part) => resistanceWithin(part, ranges)[name])
      : extremeOver(bothWays, network, whole, ranges, name);
  const least = end('least');
  if (least === Infinity) return 'open';
  const nominal = solve((part) => resistanceWithin(part, ranges).nominal);
  return { least, nominal, most: end('most') };
}
