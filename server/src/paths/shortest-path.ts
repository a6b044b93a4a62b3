import type { Edge, StepGraph } from './graph.ts';
import type { Hops } from './trace.ts';

/** The shortest ways from one step to any, both included; empty where there is none. */
export function shortestPaths(
  graph: StepGraph,
  from = 0,
  follow: (index: number, edge: Edge) => boolean = () => true,
): (to: number) => Hops {
  const came = new Map<number, { index: number; by: Edge } | null>([[from, null]]);
  const queue: number[] = [];
  const arrive = (index: number, edge: Edge): number | null => {
    if (typeof edge.to !== 'number' || came.has(edge.to) || !follow(index, edge)) return null;
    came.set(edge.to, { index, by: edge });
    return edge.to;
  };
  // A call does not count as a step: its routine is entered at once. It has one way out.
  const enter = (index: number): void => {
    let at: number | null = index;
    while (at !== null && graph.steps[at]?.verb === 'run') {
      const [into]: readonly Edge[] = graph.edges[at] ?? [];
      at = into === undefined ? null : arrive(at, into);
    }
    if (at !== null) queue.push(at);
  };
  const leave = (index: number): void => {
    for (const edge of graph.edges[index] ?? []) {
      const to = arrive(index, edge);
      if (to !== null) enter(to);
    }
  };
  enter(from);
  for (const index of queue) leave(index);
  return (to) => (came.has(to) ? unwind(came, to) : []);
}

function unwind(came: ReadonlyMap<number, { index: number; by: Edge } | null>, to: number): Hops {
  const hops: { index: number; by: Edge | null }[] = [{ index: to, by: null }];
  for (let before = came.get(to); before !== null && before !== undefined; before = came.get(before.index))
    hops.push(before);
  return hops.reverse();
}
