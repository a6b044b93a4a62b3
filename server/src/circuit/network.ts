import type { Span } from '../quantity/quantity.ts';
import type { ConditionRanges } from './conditions.ts';
import type { Greatest } from './halving.ts';
import { numbered } from './numbered.ts';
import type { PartModel } from './parts.ts';
import { resistanceWithin } from './parts.ts';
import { extremeOver, mostHalvings, sharedBothWays } from './shared-temperature.ts';
import { resistanceBetween } from './solver.ts';

/** A two-terminal element between two named nodes. */
export interface Element {
  readonly id: string;
  readonly between: readonly [string, string];
  readonly part: PartModel;
}

export type Network = readonly Element[];

export interface NetworkWindow {
  /** Ohms; `open`: no path, whatever the values. */
  readonly value: Span | 'open';
  /** Both ends are met by some values of the parts and the temperatures; else no values pass them. */
  readonly exact: boolean;
}

/**
 * Resistance between two nodes, for every value that the parts and the temperatures may take.
 *
 * The resistance between two nodes rises with each part (Rayleigh), so the ends lie where all are least and where all
 * are most; two solves are exact. Only where parts that share a temperature go both ways with it is the temperature
 * searched, with so many `halvings` of their ranges at most.
 */
export function networkWindow(
  network: Network,
  from: string,
  to: string,
  ranges: ConditionRanges,
  halvings = mostHalvings,
): NetworkWindow {
  const whole = numbered(network, from, to);
  const bothWays = sharedBothWays(network);
  const solve = (ohms: (part: PartModel) => number): number => {
    const edges = whole.edgesWith(({ part }) => ohms(part));
    return resistanceBetween(edges, whole.nodes, whole.from, whole.to);
  };
  const end = (name: 'least' | 'most'): Greatest =>
    bothWays.length === 0
      ? { bound: solve((part) => resistanceWithin(part, ranges)[name]), isMet: true }
      : extremeOver(bothWays, network, whole, ranges, name, halvings);
  const least = end('least');
  if (least.bound === Infinity) return { value: 'open', exact: true };
  const most = end('most');
  const nominal = solve((part) => resistanceWithin(part, ranges).nominal);
  return { value: { least: least.bound, nominal, most: most.bound }, exact: least.isMet && most.isMet };
}
