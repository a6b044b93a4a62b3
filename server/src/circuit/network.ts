import type { Span } from '../quantity/quantity.ts';
import type { ConditionRanges } from './conditions.ts';
import type { PartModel } from './parts.ts';
import { resistanceWithin } from './parts.ts';
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
 * are most. It is exact where all parts that share a temperature go the same way with it, else an outer bound.
 */
export function networkWindow(
  network: Network,
  from: string,
  to: string,
  ranges: ConditionRanges,
): Span | 'open' {
  const solve = numbered(network, from, to);
  const least = solve((part) => resistanceWithin(part, ranges).least);
  if (least === Infinity) return 'open';
  return {
    least,
    nominal: solve((part) => resistanceWithin(part, ranges).nominal),
    most: solve((part) => resistanceWithin(part, ranges).most),
  };
}

type Solve = (ohms: (part: PartModel) => number) => number;

/** Gives every node a number; a probe that touches nothing is a node of its own. */
function numbered(network: Network, from: string, to: string): Solve {
  const numbers = new Map<string, number>();
  const numberOf = (node: string): number => {
    const known = numbers.get(node);
    if (known !== undefined) return known;
    numbers.set(node, numbers.size);
    return numbers.size - 1;
  };
  const start = numberOf(from);
  const end = numberOf(to);
  const joints = network.map(({ between: [a, b], part }) => ({ a: numberOf(a), b: numberOf(b), part }));
  return (ohms) => {
    const edges = joints.map(({ a, b, part }) => ({ a, b, ohms: ohms(part) }));
    return resistanceBetween(edges, numbers.size, start, end);
  };
}
