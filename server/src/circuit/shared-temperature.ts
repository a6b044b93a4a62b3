import type { Span } from '../quantity/quantity.ts';
import type { ConditionRanges, Conditions } from './conditions.ts';
import { curvatureOf } from './curvature.ts';
import { flowBetween } from './flow.ts';
import type { Network } from './network.ts';
import type { Numbered } from './numbered.ts';
import { dependenceOf, resistanceAt, resistanceWithin } from './parts.ts';
import { resistanceBetween } from './solver.ts';

/*
 * The extremes of a resistance over a temperature that parts share which go both ways with it, such as copper beside a
 * sensor that falls. They can lie inside the range, and lie far within what each part alone could do.
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

/** Relative: the bound returned is no farther from the true extreme. */
const closeEnough = 1e-10;

/** No search has come near to this many halves. */
const mostHalves = 20_000;

/** A stretch of each temperature that is searched, °C, in the order of `Search.keys`. */
type Box = readonly (readonly [from: number, to: number])[];

interface Search {
  readonly network: Network;
  readonly whole: Numbered;
  readonly ranges: ConditionRanges;
  readonly keys: readonly string[];
  /** The number of the searched temperature that each element follows; -1: none of them. */
  readonly follows: readonly number[];
}

/** The temperatures that parts share which go both ways with it: `ambient`, or `entry` and its id. */
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
 * A bound of the resistance in ohms over the shared temperatures `keys`, every part at its `end`, that is passed by no
 * value and met to 1e-10 of itself.
 */
export function extremeOver(
  keys: readonly string[],
  network: Network,
  whole: Numbered,
  ranges: ConditionRanges,
  end: End,
): number {
  const follows = network.map(({ part }) => {
    const dependence = dependenceOf(part);
    return dependence === null ? -1 : keys.indexOf(keyOf(dependence.on));
  });
  const search: Search = { network, whole, ranges, keys, follows };
  // Greatest first: for the least value everything is reckoned with its sign turned.
  const sign = end === 'most' ? 1 : -1;
  const bound = (box: Box): number => (end === 'most' ? boundAbove(search, box) : -boundBelow(search, box));
  const reached = (at: readonly number[]): number => sign * resistanceOf(search, ohmsAt(search, at, end));
  const start = startingBoxes(search);
  let best = Math.max(...start.flatMap(cornersOf).map(reached));
  // What is open is so at every temperature.
  if (Math.abs(best) === Infinity) return Infinity;
  let boxes = start.map((box) => ({ box, bound: bound(box) }));
  for (let halves = 0; halves < mostHalves; halves += 2) {
    const open = boxes.reduce((one, other) => (other.bound > one.bound ? other : one));
    if (open.bound <= best + closeEnough * Math.abs(best)) return sign * Math.max(open.bound, best);
    // The middle of a half is the end of its halves: with it every end is tried once.
    const parts = halved(open.box).map((box) => ({ box, bound: Math.min(bound(box), open.bound) }));
    best = Math.max(best, reached(middleOf(open.box)));
    boxes = boxes.filter((one) => one !== open && one.bound > best).concat(parts);
  }
  return sign * Math.max(...boxes.map((one) => one.bound));
}

function keyOf(on: 'ambient' | { readonly entry: string }): string {
  return on === 'ambient' ? 'ambient' : `entry ${on.entry}`;
}

function rangeOf({ ambient, entered }: ConditionRanges, key: string): Span {
  return key === 'ambient' ? ambient : (entered.get(key.slice('entry '.length)) ?? ambient);
}

/** The whole ranges, cut at the kinks of the parts. */
function startingBoxes({ network, follows, keys, ranges }: Search): readonly Box[] {
  return keys.reduce<readonly Box[]>(
    (boxes, key, number) => {
      const { least, most } = rangeOf(ranges, key);
      const kinks = network.flatMap(({ part }, index) =>
        follows[index] === number ? curvatureOf(part).kinks : [],
      );
      const inside = [...new Set(kinks)].filter((kink) => kink > least && kink < most).sort((a, b) => a - b);
      const stops = [least, ...inside, most];
      const pieces = stops.slice(1).map((to, index) => [stops[index] ?? least, to] as const);
      return boxes.flatMap((box) => pieces.map((piece) => [...box, piece]));
    },
    [[]],
  );
}

/** In two, across the longest stretch. */
function halved(box: Box): readonly [Box, Box] {
  const lengths = box.map(([from, to]) => to - from);
  const longest = lengths.indexOf(Math.max(...lengths));
  const [from, to] = box[longest] ?? [0, 0];
  const middle = (from + to) / 2;
  return [box.with(longest, [from, middle]), box.with(longest, [middle, to])];
}

function cornersOf(box: Box): readonly (readonly number[])[] {
  return box.reduce<readonly (readonly number[])[]>(
    (corners, [from, to]) =>
      corners.flatMap((corner) => [
        [...corner, from],
        [...corner, to],
      ]),
    [[]],
  );
}

function middleOf(box: Box): readonly number[] {
  return box.map(([from, to]) => (from + to) / 2);
}

/** Ohms of each element, the searched temperatures as given and every other one where it makes the end. */
function ohmsAt(
  { network, follows, keys, ranges }: Search,
  at: readonly number[],
  end: End,
): readonly number[] {
  const searched = new Map(keys.map((key, number) => [key, at[number] ?? NaN]));
  const conditions: Conditions = {
    ambient: searched.get('ambient') ?? ranges.ambient.nominal,
    entered: new Map(
      [...ranges.entered].map(([id, { nominal }]) => [id, searched.get(`entry ${id}`) ?? nominal]),
    ),
  };
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
  return Math.min(...corners.map((ohms) => resistanceOf(search, ohms)));
}
