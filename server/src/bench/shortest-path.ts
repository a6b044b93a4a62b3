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
  const queue: number[] = [];
  // A call does not count as a step: its routine is entered at once.
  const enter = (index: number): void => {
    if (graph.steps[index]?.verb === 'run') leave(index);
    else queue.push(index);
  };
  const leave = (index: number): void => {
    for (const edge of graph.edges[index] ?? []) {
      if (typeof edge.to !== 'number' || came.has(edge.to) || !follow(index, edge)) continue;
      came.set(edge.to, { index, by: edge });
      enter(edge.to);
    }
  };
  enter(from);
  for (const index of queue) {
    if (index === to) break;
    leave(index);
  }
  return came.has(to) ? unwind(came, to) : [];
}

function unwind(came: ReadonlyMap<number, { index: number; by: Edge } | null>, to: number): Hops {
  const hops: { index: number; by: Edge | null }[] = [{ index: to, by: null }];
  for (let before = came.get(to); before !== null && before !== undefined; before = came.get(before.index))
    hops.push(before);
  return hops.reverse();
}
