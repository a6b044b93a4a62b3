import { leastOf } from '../../quantity/extremes.ts';
import { leadsAstray } from '../../paths/graph.ts';
import { behindCalls } from '../../paths/numbered-graph.ts';
import type { Edge, StepGraph } from '../../paths/graph.ts';
import { wayOf } from '../../paths/trace.ts';
import type { Hops } from '../../paths/trace.ts';
import { shortestPaths } from '../../paths/shortest-path.ts';
import { strongComponents } from '../../paths/strong-components.ts';
import type { Step } from '../../model/procedure.ts';
import type { Path } from '../../model/where.ts';
import type { Context, Finder, Seen } from '../rule.ts';

/* Where the steps lead, whatever the bench: reached or not, to an end or not, round and round or not. */

export const unreachableFinder: Finder = { check: unreachable };
export const endlessFinder: Finder = { check: endless };
export const repeatsFinder: Finder = { check: repeats };

function unreachable({ graph, reached, astray }: Context): readonly Seen[] {
  if (astray) return [];
  // A step of a routine is reached as soon as one call reaches it; a call that is not stands for the steps behind it.
  const written = new Set(graph.steps.filter((_, index) => reached[index] === true).map(placeOf));
  return graph.steps.flatMap((step, index): Seen[] => {
    if (written.has(placeOf(step)) || step.verb === 'broken') return [];
    if (step.calls.some((call) => !written.has(placeOf(call)))) return [];
    return [{ index, issue: { rule: 'unreachable', message: 'No path leads to this step.' } }];
  });
}

/** Where a step is written; the same for every call. */
function placeOf({ path }: { readonly path: Path }): string {
  return path.join('/');
}

function endless({ graph, reached }: Context): readonly Seen[] {
  const ends = canEnd(graph);
  const entered = new Set<Edge['to']>([0]);
  for (const [from, edges] of graph.edges.entries())
    if (reached[from] === true && ends[from] === true) for (const { to } of edges) entered.add(to);
  const pathTo = shortestPaths(graph);
  return graph.steps.flatMap((_, index) =>
    reached[index] === true && ends[index] !== true && entered.has(index)
      ? [
          {
            index: behindCalls(graph.steps, index),
            issue: {
              rule: 'endless',
              message: 'From this step on no path leads to an end of the procedure.',
            },
            way: wayOf(() => pathTo(behindCalls(graph.steps, index))),
          },
        ]
      : [],
  );
}

/** By step: whether some path from it ends. A step whose ways out are not all known may end. */
function canEnd(graph: StepGraph): readonly boolean[] {
  const ends = graph.steps.map((_, index) => leadsAstray(graph, index));
  const before: number[][] = graph.steps.map(() => []);
  for (const [from, edges] of graph.edges.entries())
    for (const { to } of edges) {
      if (to === 'end') ends[from] = true;
      else if (to !== null) before[to]?.push(from);
    }
  const waiting = ends.flatMap((end, index) => (end ? [index] : []));
  for (let index = waiting.pop(); index !== undefined; index = waiting.pop())
    for (const from of before[index] ?? []) {
      if (ends[from] === true) continue;
      ends[from] = true;
      waiting.push(from);
    }
  return ends;
}

function repeats({ graph, reached }: Context): readonly Seen[] {
  const kept = (index: number): boolean => reached[index] === true && !changes(graph.steps[index]);
  const successors = graph.edges.map((edges, index) =>
    kept(index) ? edges.flatMap(({ to }) => (typeof to === 'number' && kept(to) ? [to] : [])) : [],
  );
  const pathTo = shortestPaths(graph);
  return strongComponents(successors).flatMap((component): Seen[] => {
    const members = new Set(component);
    const first = leastOf(component.filter((index) => graph.steps[index]?.verb !== 'run'));
    const cycles = component.length > 1 || (successors[first] ?? []).includes(first);
    if (!cycles) return [];
    const there = pathTo(first);
    const way = wayOf(() => [...there.slice(0, -1), ...shortestCycle(graph, first, members)]);
    const message =
      'From this step a path comes back to it without inspecting, replacing or doing anything: ' +
      'the second time round nothing can read differently.';
    return [{ index: first, issue: { rule: 'repeats', message }, way, repeatsFrom: there.length - 1 }];
  });
}

/** Whether the step can bring something new: what was seen or done by hand may differ each time. */
function changes(step: Step | undefined): boolean {
  switch (step?.verb) {
    case 'do':
    case 'inspect':
    case 'replace':
    case 'prove-dead':
    case 'wiggle':
      return true;
    case 'ignition':
    case 'disconnect':
    case 'reconnect':
    case 'wait':
    case 'unlock':
    case 'unplug':
    case 'plug':
    case 'fit':
    case 'move':
    case 'remove':
    case 'read':
    case 'measure':
    case 'read-codes':
    case 'clear-codes':
    case 'conclude':
    case 'go':
    case 'stop':
    case 'run':
    case 'broken':
    case undefined:
      return false;
  }
}

function shortestCycle(graph: StepGraph, first: number, members: ReadonlySet<number>): Hops {
  const within = (_: number, edge: Edge): boolean => typeof edge.to === 'number' && members.has(edge.to);
  const starts = (graph.edges[first] ?? []).filter((edge) => within(first, edge));
  const rounds = starts.map((edge): Hops => {
    const onward =
      edge.to === first ? [] : shortestPaths(graph, typeof edge.to === 'number' ? edge.to : 0, within)(first);
    return [{ index: first, by: edge }, ...onward.slice(0, -1)];
  });
  return rounds.reduce((best, round) => (round.length < best.length ? round : best), rounds[0] ?? []);
}
