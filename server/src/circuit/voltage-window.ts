import { greatestOf, leastOf } from '../quantity/extremes.ts';
import type { Span } from '../quantity/quantity.ts';
import type { ConditionRanges } from './conditions.ts';
import { cutAt, greatestOver, middleOf } from './halving.ts';
import type { Box, Greatest, Look } from './halving.ts';
import type { LooseEdge } from './flow-bounds.ts';
import type { Interval } from './interval.ts';
import { zero } from './interval.ts';
import type { Network } from './network.ts';
import { numbered } from './numbered.ts';
import type { Numbered } from './numbered.ts';
import { conflictsOf, voltageBetween } from './operating-point.ts';
import type { Drive } from './operating-point.ts';
import type { PartModel } from './parts.ts';
import { dependenceOf, resistanceAt, resistanceWithin } from './parts.ts';
import { branchesOf } from './series-parallel.ts';
import type { LooseTrack } from './loose-track.ts';
import { withTrack } from './loose-track.ts';
import { conditionsAt, followedBy, keyOf, rangeOf } from './shared-quantities.ts';
import { ohmsOfElements, tracksIn } from './tracks.ts';
import { greatestVoltage } from './voltage-corner.ts';

/** An ideal source between its plus and its minus. What is inside a real one stands beside it as a part. */
export interface Source {
  readonly id: string;
  readonly between: readonly [plus: string, minus: string];
  readonly kind: 'voltage' | 'current';
  /** Volt, or ampere out of the plus. */
  readonly value: Span;
}

export type VoltageWindow =
  | {
      readonly kind: 'number';
      /** Volt. */
      readonly value: Span;
      /** Both ends are met by some circuit within the limits; else no circuit passes them. */
      readonly exact: boolean;
    }
  /** Nothing connects the two nodes. */
  | { readonly kind: 'floating' }
  /** Sources with their terminals joined, by 0 Ω or by each other, or with no way back for their current. */
  | { readonly kind: 'conflict'; readonly sources: readonly string[] };

/** The search over temperatures that parts share stops after this many halvings, with an outer bound. */
const mostHalvings = 40;

/** The same of tracks with a wiper, of which bounds come nearer by a quarter with each halving. */
const mostHalvingsOfTracks = 160;

/** For each end of a window, in the unit of `Patience`: what a network of some hundred nodes does not come near to. */
const mostSearched = 5_000_000;

/**
 * The voltage of one node above another, for every value that parts, sources and temperatures may take. Lamps count as
 * they are cold: `voltageWindow` is for what is under power.
 */
export function fixedVoltageWindow(
  network: Network,
  sources: readonly Source[],
  from: string,
  to: string,
  ranges: ConditionRanges,
): VoltageWindow {
  const whole = numbered(network, from, to, sources);
  const nominal = drivesOf(sources, whole, ({ value }) => value.nominal);
  // Where an element may be 0 Ω it counts as that: a window that ends in a short has no end.
  const leastOhms = ohmsOfElements(network, ranges, 'least');
  const least = whole.edgesWith((_, index) => leastOhms[index] ?? NaN);
  const { joined, stranded } = conflictsOf(least, nominal, whole.nodes);
  if (joined.length + stranded.length > 0)
    return { kind: 'conflict', sources: [...joined, ...stranded].map((index) => sources[index]?.id ?? '') };
  const nominalOhms = ohmsOfElements(network, ranges, 'nominal');
  const volts = voltageBetween(
    whole.edgesWith((_, index) => nominalOhms[index] ?? NaN),
    nominal,
    whole.nodes,
    whole.from,
    whole.to,
  );
  if (Number.isNaN(volts)) return { kind: 'floating' };
  const most = greatest(network, sources, whole, ranges, 'forward');
  const opposite = greatest(network, sources, whole, ranges, 'backward');
  return {
    kind: 'number',
    value: { least: -opposite.volts + 0, nominal: volts, most: most.volts },
    exact: most.exact && opposite.exact,
  };
}

function drivesOf<T>(
  sources: readonly Source[],
  { numberOf }: Numbered,
  value: (source: Source) => T,
): readonly (Omit<Drive, 'value'> & { readonly value: T })[] {
  return sources.map((source) => ({
    a: numberOf(source.between[0]),
    b: numberOf(source.between[1]),
    kind: source.kind,
    value: value(source),
  }));
}

/** Of the voltage from the first probe to the second, or back. */
function greatest(
  network: Network,
  sources: readonly Source[],
  whole: Numbered,
  ranges: ConditionRanges,
  direction: 'forward' | 'backward',
): { readonly volts: number; readonly exact: boolean } {
  const [from, to] = direction === 'forward' ? [whole.from, whole.to] : [whole.to, whole.from];
  const drives = drivesOf(sources, whole, ({ value }) => intervalOf(value));
  const tracks = tracksIn(network);
  const sides = tracks.flatMap(({ first, second }) => [first, second]);
  const all = whole.edgesWith(({ part }) => resistanceWithin(part, ranges).least);
  const sideEdges = sides.flatMap((side) => all[side] ?? []);
  const kept = new Set([from, to, ...[...drives, ...sideEdges].flatMap(({ a, b }) => [a, b])]);
  const connecting = all.flatMap(({ a, b, ohms }, element) =>
    ohms === Infinity || sides.includes(element) ? [] : [{ a, b, element }],
  );
  const { branches, elementsOf, ohms: ohmsOf } = branchesOf(connecting, kept);
  const keys = sharedKeys(network, ranges);
  const patience = { left: mostSearched };
  const look = (box: Box): Look => {
    const { bound, isMet } = cornerOf(box);
    if (isMet) return { bound, reached: bound };
    const middle = cornerOf(middleOf(box).map((place) => [place, place]));
    return { bound, reached: middle.isMet ? middle.bound : -Infinity };
  };
  const cornerOf = (box: Box): Greatest => {
    const spans = network.map(({ part }) => spansOver(part, box, keys, ranges));
    const ohms = spans.map((both) => ({
      low: leastOf(both.map(({ least }) => least)),
      high: greatestOf(both.map(({ most }) => most)),
    }));
    const low = ohmsOf((element) => ohms[element]?.low ?? NaN);
    const high = ohmsOf((element) => ohms[element]?.high ?? NaN);
    const edges = branches.map(({ a, b }, index) => ({
      a,
      b,
      ohms: { low: low[index] ?? NaN, high: high[index] ?? NaN },
    }));
    const loose = tracks.map((_, number): LooseTrack => {
      const [place = [NaN, NaN], track = [NaN, NaN]] = box.slice(keys.length + 2 * number);
      const first = branches.length + 2 * number;
      return { first, second: first + 1, ohms: stretchOf(track), place: stretchOf(place) };
    });
    const allEdges = loose.reduce<readonly LooseEdge[]>(withTrack, [
      ...edges,
      ...sideEdges.map(({ a, b }) => ({ a, b, ohms: zero })),
    ]);
    const corner = greatestVoltage(
      { edges: allEdges, drives, tracks: loose, nodes: whole.nodes, from, to },
      patience,
    );
    const wanted = branches.flatMap((branch, index) => {
      const [end, interval] = [corner.ohms[index] ?? NaN, edges[index]?.ohms];
      if (interval === undefined || Number.isNaN(end) || interval.low === interval.high) return [];
      return elementsOf(branch).flatMap((element) =>
        wantedOf(network[element]?.part, spans[element], end === interval.high),
      );
    });
    return { bound: corner.volts, isMet: corner.exact && isOneMoment(wanted) };
  };
  const { bound, isMet } = greatestOver(
    cutAt(
      [
        ...keys.map((key) => rangeOf(ranges, network, key)),
        ...tracks.flatMap(({ place, ohms }) => [place, ohms]),
      ],
      [],
    ),
    look,
    -Infinity,
    (halvings) => halvings < (tracks.length > 0 ? mostHalvingsOfTracks : mostHalvings) && patience.left >= 0,
  );
  return { volts: bound, exact: isMet };
}

function intervalOf({ least, most }: Span): Interval {
  return { low: least, high: most };
}

function stretchOf([low, high]: Box[number]): Interval {
  return { low, high };
}

/** Temperatures that are not exactly known and that parts follow. */
function sharedKeys(network: Network, ranges: ConditionRanges): readonly string[] {
  const followed = network.flatMap(({ part }) => {
    const dependence = dependenceOf(part);
    return dependence === null || part.kind === 'track' ? [] : [keyOf(dependence.on)];
  });
  return [...new Set(followed)].filter((key) => {
    const { least, most } = rangeOf(ranges, network, key);
    return least < most;
  });
}

/** A part at both ends of its temperature in a box; once where it follows none of them. */
function spansOver(
  part: PartModel,
  box: Box,
  keys: readonly string[],
  ranges: ConditionRanges,
): readonly Span[] {
  const stretch = box[followedBy(part, keys)];
  if (stretch === undefined) return [resistanceWithin(part, ranges)];
  const at = (celsius: number): Span =>
    resistanceAt(
      part,
      conditionsAt(
        ranges,
        keys,
        box.map(() => celsius),
      ),
    );
  return stretch.map(at);
}

/** Which end of its temperature a part needs to be at its greatest or its least. */
interface Wanted {
  readonly key: string;
  readonly hot: boolean;
}

function wantedOf(
  part: PartModel | undefined,
  spans: readonly Span[] | undefined,
  atMost: boolean,
): readonly Wanted[] {
  const dependence = part === undefined ? null : dependenceOf(part);
  const [cold, hot] = spans ?? [];
  if (dependence === null || cold === undefined || hot === undefined) return [];
  if (cold.least === hot.least && cold.most === hot.most) return [];
  return [{ key: keyOf(dependence.on), hot: atMost === (dependence.trend === 'rises') }];
}

/** Whether all parts that share a temperature need the same end of it. */
function isOneMoment(wanted: readonly Wanted[]): boolean {
  const ends = new Map<string, boolean>();
  return wanted.every(({ key, hot }) => {
    const known = ends.get(key) ?? hot;
    ends.set(key, known);
    return known === hot;
  });
}
