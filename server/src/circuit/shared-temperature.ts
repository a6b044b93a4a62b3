import { greatestOf, leastOf } from '../quantity/extremes.ts';
import type { ConditionRanges } from './conditions.ts';
import { curvatureOf } from './curvature.ts';
import { flowBetween } from './flow.ts';
import { cornersOf, cutAt, greatestOver, middleOf } from './halving.ts';
import type { Box, Greatest, Look } from './halving.ts';
import type { Network } from './network.ts';
import type { Numbered } from './numbered.ts';
import { dependenceOf, resistanceAt, resistanceWithin } from './parts.ts';
import { resistanceBetween } from './solver.ts';
import { conditionsAt, followedBy, keyOf, rangeOf } from './shared-quantities.ts';

/*
 * The extremes of a resistance over a temperature that parts share which go both ways with it, such as copper beside a
 * sensor that falls, or over the place of a wiper, which makes one side of its track longer and the other shorter. They can lie inside the range, and lie far within what each part alone could do.
 *
 * The range is halved again and again; halves that cannot hold the extreme are dropped. What a half can hold at most
 * follows from two facts. The resistance between two nodes rises with each part (Rayleigh), and it is a concave function
 * of all of them together, since it is the least loss of any unit flow, a minimum of linear functions (Thomson). So
 *
 *   above it lies its tangent plane at the middle of a half: the sum of each part times the square of its current;
 *   below it lies what it is at the ends of the half, each part lowered by as much as it sags below its chord.
 *
 * A part's curve between its kinks bends one way, so it is off its chord by at most twice what it is off in the middle.
 * Both bounds come nearer by a quarter with each halving.
 */

type End = 'least' | 'most';

/**
 * A search ends after so many. Five temperatures that each have their extreme inside their range need more, and so does a
 * part whose bend is not known.
 */
export const mostHalvings = 10_000;

/**
 * So many elements are looked at for one end of a window. A search that would need more stops there, with an outer bound:
 * what a network of some hundred elements does not come near to.
 */
const mostLooked = 2_000_000;

interface Search {
  readonly network: Network;
  readonly whole: Numbered;
  readonly ranges: ConditionRanges;
  readonly keys: readonly string[];
  /** The number of the searched temperature that each element follows; -1: none of them. */
  readonly follows: readonly number[];
}

/** The keys of temperatures and wipers that parts share which go both ways with them. */
export function sharedBothWays(network: Network): readonly string[] {
  const trends = new Map<string, Set<string>>();
  for (const { part } of network) {
    const dependence = dependenceOf(part);
    if (dependence === null) continue;
    const key = keyOf(dependence.on);
    trends.set(key, (trends.get(key) ?? new Set()).add(dependence.trend));
  }
  return [...trends].filter(([, found]) => found.size > 1).map(([key]) => key);
}

/**
 * So many temperatures that are shared can be searched at once in a network. Each has two ends, and one place where parts
 * change their law.
 */
function mostSearched(network: Network): number {
  return Math.max(1, Math.floor(Math.log2(mostLooked / 8 / network.length) / 2));
}

/**
 * A bound of the resistance in ohms over the shared temperatures, every part at its `end`, that is passed by no value, and
 * whether it is met to 1e-10 of itself. Where too many temperatures are shared, only some of them are searched, and what
 * follows another is taken as if it had a temperature of its own.
 */
export function extremeOver(
  shared: readonly string[],
  network: Network,
  whole: Numbered,
  ranges: ConditionRanges,
  end: End,
  halvings: number,
): Greatest {
  const keys = shared.slice(0, mostSearched(network));
  const follows = network.map(({ part }) => followedBy(part, keys));
  const search: Search = { network, whole, ranges, keys, follows };
  // Greatest first: for the least value everything is reckoned with its sign turned.
  const sign = end === 'most' ? 1 : -1;
  const reached = (at: readonly number[]): number => sign * resistanceOf(search, ohmsAt(search, at, end));
  const start = cutAt(
    keys.map((key) => rangeOf(ranges, network, key)),
    kinksOf(search),
  );
  const best = greatestOf(start.flatMap(cornersOf).map(reached));
  // What is open is so at every temperature.
  if (Math.abs(best) === Infinity) return { bound: Infinity, isMet: true };
  const look = (box: Box): Look => ({
    bound: end === 'most' ? boundAbove(search, box) : -boundBelow(search, box),
    reached: reached(middleOf(box)),
  });
  const most = Math.min(halvings, mostLooked / (network.length * (5 + 2 ** keys.length)));
  const { bound, isMet } = greatestOver(start, look, best, (looked) => looked < most);
  return { bound: sign * bound, isMet: isMet && keys.length === shared.length };
}

/** °C where parts that follow a searched temperature change their law, by temperature. */
function kinksOf({ network, follows, keys }: Search): readonly (readonly number[])[] {
  return keys.map((_, number) =>
    network.flatMap(({ part }, index) => (follows[index] === number ? curvatureOf(part).kinks : [])),
  );
}

/** Ohms of each element, the searched temperatures as given and every other one where it makes the end. */
function ohmsAt(
  { network, follows, keys, ranges }: Search,
  at: readonly number[],
  end: End,
): readonly number[] {
  const conditions = conditionsAt(ranges, keys, at);
  return network.map(({ part }, index) =>
    follows[index] === -1 ? resistanceWithin(part, ranges)[end] : resistanceAt(part, conditions)[end],
  );
}

function resistanceOf({ whole }: Search, ohms: readonly number[]): number {
  const edges = whole.edgesWith((_, index) => ohms[index] ?? NaN);
  return resistanceBetween(edges, whole.nodes, whole.from, whole.to);
}

/** Each element at both ends and in the middle of a box, and by how much it can be off its chord between them. */
interface Stretch {
  readonly from: readonly number[];
  readonly to: readonly number[];
  readonly middle: readonly number[];
  readonly above: readonly number[];
  readonly below: readonly number[];
}

function stretchOf(search: Search, box: Box, end: End): Stretch {
  const at = (place: (piece: readonly [number, number]) => number): readonly number[] =>
    ohmsAt(search, box.map(place), end);
  const [from, to, middle] = [
    at(([low]) => low),
    at(([, high]) => high),
    at(([low, high]) => (low + high) / 2),
  ];
  const off = search.network.map(({ part }, index) => {
    if (search.follows[index] === -1) return nothing;
    const [low = NaN, high = NaN, between = NaN] = [from[index], to[index], middle[index]];
    const sag = 2 * Math.abs((low + high) / 2 - between);
    switch (curvatureOf(part).shape) {
      case 'straight':
        return nothing;
      case 'hollow':
        return { above: 0, below: sag };
      case 'humped':
        return { above: sag, below: 0 };
      case 'unknown':
        return { above: Math.abs(high - low), below: Math.abs(high - low) };
    }
  });
  return { from, to, middle, above: off.map((one) => one.above), below: off.map((one) => one.below) };
}

const nothing = { above: 0, below: 0 };

/** The tangent plane at the middle, as high as it gets within the box. */
function boundAbove(search: Search, box: Box): number {
  const { from, to, middle, above } = stretchOf(search, box, 'most');
  const { whole, follows, keys } = search;
  const edges = whole.edgesWith((_, index) => middle[index] ?? NaN);
  const flow = flowBetween(edges, whole.nodes, whole.from, whole.to);
  if (flow === null) return resistanceOf(search, middle);
  let bound = flow.ohms;
  for (const number of keys.keys()) {
    let [cold, hot, off] = [0, 0, 0];
    for (const [index, own] of follows.entries()) {
      if (own !== number) continue;
      const weight = (flow.amperes[index] ?? 0) ** 2;
      cold += weight * ((from[index] ?? NaN) - (middle[index] ?? NaN));
      hot += weight * ((to[index] ?? NaN) - (middle[index] ?? NaN));
      off += weight * (above[index] ?? NaN);
    }
    bound += Math.max(cold, hot) + off;
  }
  return bound;
}

/** The least of the corners of the box, each element lowered by its sag. */
function boundBelow(search: Search, box: Box): number {
  const { from, to, below } = stretchOf(search, box, 'least');
  const { follows, keys } = search;
  const lowered = (ohms: readonly number[]): readonly number[] =>
    ohms.map((each, index) => each - (below[index] ?? 0));
  const [cold, hot] = [lowered(from), lowered(to)];
  // Lowered below zero a chord says nothing; each element at the least of its ends always does.
  if ([...cold, ...hot].some((ohms) => ohms < 0))
    return resistanceOf(
      search,
      from.map((ohms, index) => Math.min(ohms, to[index] ?? ohms)),
    );
  const corners = Array.from({ length: 2 ** keys.length }, (_, corner) =>
    follows.map((number, index) => (number >= 0 && (corner >> number) & 1 ? hot : cold)[index] ?? NaN),
  );
  return leastOf(corners.map((ohms) => resistanceOf(search, ohms)));
}
