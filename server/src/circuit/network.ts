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

/** A window with whether both its ends are met by some values; else no values pass them. */
export interface FoundWindow {
  readonly window: Span | 'open';
  readonly exact: boolean;
}

export function networkWindow(
  network: Network,
  from: string,
  to: string,
  ranges: ConditionRanges,
): Span | 'open' {
  return findWindow(network, from, to, ranges).window;
}

/**
 * Resistance in ohms between two nodes, for every value that the parts and the temperatures may take. `open`: no path,
 * whatever the values.
 *
 * The resistance between two nodes rises with each part (Rayleigh), so the ends lie where all are least and where all
 * are most; two solves are exact. Only where parts that share a temperature go both ways with it is the temperature
 * searched.
 */
export function findWindow(network: Network, from: string, to: string, ranges: ConditionRanges): FoundWindow {
  const whole = numbered(network, from, to);
  const bothWays = sharedBothWays(network);
  const solve = (ohms: (part: PartModel) => number): number => {
    const edges = whole.edgesWith(({ part }) => ohms(part));
    return resistanceBetween(edges, whole.nodes, whole.from, whole.to);
  };
  const end = (name: 'least' | 'most'): { readonly ohms: number; readonly isMet: boolean } =>
    bothWays.length === 0
      ? { ohms: solve((part) => resistanceWithin(part, ranges)[name]), isMet: true }
      : extremeOver(bothWays, network, whole, ranges, name);
  const least = end('least');
  if (least.ohms === Infinity) return { window: 'open', exact: true };
  const nominal = solve((part) => resistanceWithin(part, ranges).nominal);
  const most = end('most');
  return {
    window: { least: least.ohms, nominal, most: most.ohms },
    exact: least.isMet && most.isMet,
  };
}
