import { greatestOf } from '../quantity/extremes.ts';
import type { LooseEdge } from './flow-bounds.ts';
import type { Interval } from './interval.ts';
import { negative, plus, times, zero } from './interval.ts';

/*
 * The two edges on either side of a wiper go together: what one has less of the track the other has more, and both are
 * more where the track is more. So neither is put to an end by itself. How the voltage goes with the place of the wiper,
 * and with the track, follows from how it goes with the two edges.
 */

/** Two edges that are one track, with a wiper between them. */
export interface LooseTrack {
  readonly first: number;
  readonly second: number;
  /** Of the whole track. */
  readonly ohms: Interval;
  /** Of the wiper, as a part of the track from the far end of the first edge. */
  readonly place: Interval;
}

/** Volt for the whole track, and volt per ohm of it. */
export interface TrackSlopes {
  readonly place: Interval;
  readonly ohms: Interval;
}

export function isLoose({ ohms, place }: LooseTrack): boolean {
  return ohms.low < ohms.high || place.low < place.high;
}

/** The edges with those of a track within what it leaves them. */
export function withTrack(edges: readonly LooseEdge[], track: LooseTrack): readonly LooseEdge[] {
  const { first, second, ohms, place } = track;
  const rest = { low: 1 - place.high, high: 1 - place.low };
  const part: ReadonlyMap<number, Interval> = new Map([
    [first, times(ohms, place)],
    [second, times(ohms, rest)],
  ]);
  return edges.map((edge, at) => ({ ...edge, ohms: part.get(at) ?? edge.ohms }));
}

/** What a track is seen with over a whole box: the currents of a circuit and of its adjoint, edge by edge. */
export interface Seen {
  readonly edges: readonly LooseEdge[];
  readonly actual: readonly Interval[];
  readonly adjoint: readonly Interval[];
  /** What all current sources together add to the voltage. */
  readonly bySources: Interval;
  /** What flows out of the wiper, in the circuit and in its adjoint; null: not known. */
  readonly fromWiper: readonly [actual: Interval, adjoint: Interval] | null;
}

/**
 * The voltage goes with an edge as the product of its two currents (Tellegen), but sums of such products hide what cancels.
 * Two identities show it. What one side of the wiper does less the other is what the current of the wiper does, which is
 * next to nothing under a meter. And where everything of a circuit has twice the resistance, and its current sources half
 * the current, every voltage is what it was (Euler, of functions of degree 0): what the track does is what all else leaves.
 */
export function slopesOf({ first, second, ohms }: LooseTrack, seen: Seen): TrackSlopes {
  const { edges, actual, adjoint, bySources, fromWiper } = seen;
  const of = (currents: readonly Interval[], at: number): Interval => currents[at] ?? zero;
  const push = (at: number): Interval => times(of(actual, at), of(adjoint, at));
  const weighted = (at: number): Interval => times(edges[at]?.ohms ?? zero, push(at));
  const others = edges.reduce(
    (sum, _, at) => (at === first || at === second ? sum : plus(sum, weighted(at))),
    negative(bySources),
  );
  const difference = plus(push(first), negative(push(second)));
  const byWiper =
    fromWiper === null
      ? difference
      : plus(times(of(actual, first), fromWiper[1]), times(fromWiper[0], of(adjoint, second)));
  const whole = inBoth(negative(others), plus(weighted(first), weighted(second)));
  return {
    place: times(ohms, inBoth(byWiper, difference)),
    ohms: times(whole, { low: 1 / ohms.high, high: 1 / ohms.low }),
  };
}

/** Where rounding leaves nothing in both, the first. */
function inBoth(one: Interval, other: Interval): Interval {
  const both = { low: Math.max(one.low, other.low), high: Math.min(one.high, other.high) };
  return both.low <= both.high ? both : one;
}

/** How far a voltage can be above that of the middle of a track (mean value theorem). */
export function reachOf({ ohms, place }: LooseTrack, slopes: TrackSlopes): number {
  const reach = ({ low, high }: Interval, slope: Interval): number =>
    low < high ? (greatestOf([slope.high, -slope.low]) * (high - low)) / 2 : 0;
  return reach(ohms, slopes.ohms) + reach(place, slopes.place);
}

/** With its wiper in the middle of where it may be, on a track of middling resistance. */
export function atMiddle(track: LooseTrack): LooseTrack {
  const middle = ({ low, high }: Interval): Interval => ({ low: (low + high) / 2, high: (low + high) / 2 });
  return { ...track, ohms: middle(track.ohms), place: middle(track.place) };
}
