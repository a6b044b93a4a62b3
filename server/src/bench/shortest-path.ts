import type { Edge, StepGraph } from './graph.ts';
import type { Hops } from './trace.ts';

/** The shortest way between two steps, both included; empty where there is none. */
export function shortestPath(
  graph: StepGraph,
  to: number,
  from = 0,
  follow: (index: number, edge: Edge) => boolean = () => true,
): Hops {
  const came = new Map<number, { index: number; by: Edge } | null>([[from, null]]);
  const queue = [from];
  for (const index of queue) {
    if (index === to) return unwind(came, to);
    for (const edge of graph.edges[index] ?? []) {
      if (typeof edge.to !== 'number' || came.has(edge.to) || !follow(index, edge)) continue;
      came.set(edge.to, { index, by: edge });
      queue.push(edge.to);
    }
  }
  return [];
}

function unwind(came: ReadonlyMap<number, { index: number; by: Edge } | null>, to: number): Hops {
  const hops: { index: number; by: Edge | null }[] = [{ index: to, by: null }];
  for (let before = came.get(to); before !== null && before !== undefined; before = came.get(before.index))
    hops.push(before);
  return hops.reverse();
}
