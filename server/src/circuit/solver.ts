import { addConductance, eliminateAllBut } from './elimination.ts';
import type { Conductances } from './elimination.ts';
import { nodeGroups } from './node-groups.ts';

/** A resistor between two nodes. 0 Ω joins them, Infinity is no connection. */
export interface Edge {
  readonly a: number;
  readonly b: number;
  readonly ohms: number;
}

/**
 * Resistance in ohms between two nodes of a network of `nodes` nodes, numbered from 0. Infinity: no path. 0: the same
 * node, or joined by 0 Ω.
 *
 * Star-mesh elimination, the node with the fewest neighbours first. It only adds, multiplies and divides positive
 * numbers, so nothing cancels and the relative error stays near that of one operation for any spread of values.
 */
export function resistanceBetween(edges: readonly Edge[], nodes: number, from: number, to: number): number {
  const joined = joinByZero(edges, nodes);
  const start = joined(from);
  const end = joined(to);
  if (start === end) return 0;
  const network: Conductances = Array.from({ length: nodes }, () => new Map<number, number>());
  for (const { a, b, ohms } of edges) {
    if (!isJoint(ohms) && ohms !== Infinity) addConductance(network, joined(a), joined(b), 1 / ohms);
  }
  eliminateAllBut(start, end, network);
  return 1 / (network[start]?.get(end) ?? 0);
}

/** So small a resistance has no finite conductance. */
export function isJoint(ohms: number): boolean {
  return 1 / ohms === Infinity;
}

/** Names one node for all that are joined by 0 Ω. */
function joinByZero(edges: readonly Edge[], nodes: number): (node: number) => number {
  const joined = nodeGroups(nodes);
  for (const { a, b, ohms } of edges) if (isJoint(ohms)) joined.join(a, b);
  return joined.of;
}
