import type { Span } from '../quantity/quantity.ts';
import type { ConditionRanges } from './conditions.ts';
import type { Network } from './network.ts';
import { resistanceWithin } from './parts.ts';

/** A whole track of a network, by the places of its two sides. */
export interface Track {
  readonly first: number;
  readonly second: number;
  readonly ohms: Span;
  readonly place: Span;
}

/**
 * A wiper at an end of its track leaves this part of it: far below the last digit of anything, and no joint, since both
 * sides are never joints at once.
 */
const leastLeft = 1e-12;

/** Those of which both sides are there. */
export function tracksIn(network: Network): readonly Track[] {
  const seconds = new Map(
    network.flatMap(({ part }, at) =>
      part.kind === 'track' && part.end === 'second' ? [[part.wiper.id, at] as const] : [],
    ),
  );
  return network.flatMap(({ part }, first) => {
    const second = part.kind === 'track' && part.end === 'first' ? seconds.get(part.wiper.id) : undefined;
    if (part.kind !== 'track' || second === undefined) return [];
    const { least, nominal, most } = part.wiper.place;
    const on = (place: number): number => Math.min(Math.max(place, leastLeft), 1 - leastLeft);
    return [
      { first, second, ohms: part.track, place: { least: on(least), nominal: on(nominal), most: on(most) } },
    ];
  });
}

/** Of each element what it has at one end of its range, or nominally. No side of a whole track is a joint. */
export function ohmsOfElements(
  network: Network,
  ranges: ConditionRanges,
  end: keyof Span,
): readonly number[] {
  const sides = new Map(
    tracksIn(network).flatMap(({ first, second, ohms }) =>
      [first, second].map((at) => [at, ohms[end] * leastLeft] as const),
    ),
  );
  return network.map(({ part }, at) => Math.max(resistanceWithin(part, ranges)[end], sides.get(at) ?? 0));
}
