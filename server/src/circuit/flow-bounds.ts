import type { Interval } from './interval.ts';
import { negative, plus, times, within, zero } from './interval.ts';

/** A resistor that may be anything within its interval, in ohms. 0 Ω throughout is a joint. */
export interface LooseEdge {
  readonly a: number;
  readonly b: number;
  readonly ohms: Interval;
}

/** A node that was taken out: as `Star`, with intervals in place of values. */
interface LooseStar {
  readonly node: number;
  readonly neighbours: readonly number[];
  /** What the star added and what stood there before, for each pair of neighbours. */
  readonly pairs: readonly {
    readonly a: number;
    readonly b: number;
    readonly before: Interval;
    readonly over: Interval;
  }[];
}

/** Conductance of a joint beside resistors of workshop size, in siemens: so great that no digit of theirs shows. */
const joint = 1e40;

/**
 * Bounds of the current through each edge, from its `a` to its `b`, when 1 A goes in at one node and comes out at another,
 * for every choice of the resistances. null: no path.
 *
 * The same elimination as `flowBetween`, step by step in intervals. Each step is as narrow as it can be (a conductance
 * over a node rises with its own two legs and falls with the others), but steps forget what they share, so the bounds are
 * outer ones. No branch of resistors carries more than what goes in.
 */
export function flowBounds(
  edges: readonly LooseEdge[],
  nodes: number,
  from: number,
  to: number,
): readonly Interval[] | null {
  const siemens = edges.map(({ ohms }) => ({
    low: Math.min(1 / ohms.high, joint),
    high: Math.min(1 / ohms.low, joint),
  }));
  const network = Array.from({ length: nodes }, () => new Map<number, Interval>());
  for (const [index, { a, b }] of edges.entries()) add(network, a, b, siemens[index] ?? zero);
  const whole = network.map((beside) => new Map(beside));
  const stars = takeOut(network, from, to);
  if (network[from]?.has(to) !== true) return null;
  const flow = Array.from({ length: nodes }, () => new Map<number, Interval>());
  set(flow, from, to, { low: 1, high: 1 });
  for (const star of stars.toReversed()) putBack(star, flow);
  return edges.map(({ a, b }, index) => {
    if (a === b) return zero;
    const own = siemens[index] ?? zero;
    const all = whole[a]?.get(b) ?? own;
    const others = { low: Math.max(0, all.low - own.low), high: Math.max(0, all.high - own.high) };
    return within(times(flow[a]?.get(b) ?? zero, partOf(own, others)), -1, 1);
  });
}

type Intervals = readonly Map<number, Interval>[];

function add(network: Intervals, a: number, b: number, siemens: Interval): void {
  if (a === b) return;
  const sum = plus(network[a]?.get(b) ?? zero, siemens);
  network[a]?.set(b, sum);
  network[b]?.set(a, sum);
}

/** A current from `a` to `b`. */
function set(flow: Intervals, a: number, b: number, amperes: Interval): void {
  flow[a]?.set(b, amperes);
  flow[b]?.set(a, negative(amperes));
}

/** Takes out every node but two, the one with the fewest neighbours first. */
function takeOut(network: Intervals, from: number, to: number): readonly LooseStar[] {
  const left = new Set(network.keys());
  left.delete(from);
  left.delete(to);
  const stars: LooseStar[] = [];
  while (left.size > 0) {
    let node = -1;
    for (const each of left)
      if (node < 0 || (network[each]?.size ?? 0) < (network[node]?.size ?? 0)) node = each;
    left.delete(node);
    stars.push(starAt(node, network));
  }
  return stars;
}

function starAt(node: number, network: Intervals): LooseStar {
  const legs = [...(network[node] ?? [])];
  const neighbours = legs.map(([neighbour]) => neighbour);
  for (const neighbour of neighbours) network[neighbour]?.delete(node);
  // Sums of the legs before and behind each: without differences, which would widen what is left.
  const behind = legs.map(() => zero);
  for (let at = legs.length - 1; at > 0; at -= 1)
    behind[at - 1] = plus(behind[at] ?? zero, legs[at]?.[1] ?? zero);
  let before = zero;
  const pairs = legs.flatMap(([a, one], first) => {
    let between = before;
    before = plus(before, one);
    return legs.slice(first + 1).map(([b, other], next) => {
      const rest = plus(between, behind[first + 1 + next] ?? zero);
      between = plus(between, other);
      const over = {
        low: meshed(one.low, other.low, rest.high),
        high: meshed(one.high, other.high, rest.low),
      };
      return { a, b, before: network[a]?.get(b) ?? zero, over };
    });
  });
  for (const { a, b, over } of pairs) add(network, a, b, over);
  return { node, neighbours, pairs };
}

/** The conductance between two neighbours over a node, by its legs to them and the sum of its other legs. */
function meshed(one: number, other: number, rest: number): number {
  const sum = one + other + rest;
  return sum === 0 ? 0 : one * (other / sum);
}

function putBack({ node, neighbours, pairs }: LooseStar, flow: Intervals): void {
  const into = new Map<number, Interval>(neighbours.map((neighbour) => [neighbour, zero]));
  for (const { a, b, before, over } of pairs) {
    const both = flow[a]?.get(b) ?? zero;
    const overNode = times(both, partOf(over, before));
    set(flow, a, b, times(both, partOf(before, over)));
    into.set(a, plus(into.get(a) ?? zero, overNode));
    into.set(b, plus(into.get(b) ?? zero, negative(overNode)));
  }
  for (const [neighbour, amperes] of into) set(flow, neighbour, node, amperes);
}

/** The part of a current that one of two ways side by side takes. */
function partOf(own: Interval, other: Interval): Interval {
  return { low: ratio(own.low, other.high), high: ratio(own.high, other.low) };
}

function ratio(own: number, other: number): number {
  return own === 0 ? 0 : own / (own + other);
}
