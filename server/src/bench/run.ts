import { explore } from './explore.ts';
import type { Bounds, Reported, Watcher } from './explore.ts';
import type { StepGraph } from './graph.ts';
import type { Work } from './work.ts';

export interface Watched {
  readonly reported: readonly Reported[];
  readonly complete: boolean;
}

/** A watcher with its states hidden, so that unlike ones can stand in one list. */
export type Run = (graph: StepGraph, bounds: Bounds) => Work<Watched>;

export function running<S>(watcher: Watcher<S>): Run {
  return (graph, bounds) => explore(graph, watcher, bounds);
}

export function* runAll(graph: StepGraph, runs: readonly Run[], bounds: Bounds): Work<Watched> {
  const reported: Reported[] = [];
  let complete = true;
  for (const run of runs) {
    const watched = yield* run(graph, bounds);
    reported.push(...watched.reported);
    complete &&= watched.complete;
  }
  return { reported, complete };
}
