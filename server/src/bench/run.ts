import { explore } from './explore.ts';
import type { Bounds, EndJudge, Exploration, Reported, Watcher } from './explore.ts';
import type { StepGraph } from './graph.ts';
import type { Work } from './work.ts';

/** Explores the paths of one graph, with each watcher once: several questions may be asked of one. */
export interface Explorer {
  readonly graph: StepGraph;
  readonly explore: <S>(watcher: Watcher<S>) => Work<Exploration<S>>;
}

export function explorerOf(graph: StepGraph, bounds: Bounds): Explorer {
  const known = new WeakMap<object, unknown>();
  return {
    graph,
    *explore<S>(watcher: Watcher<S>) {
      const earlier = known.get(watcher) as Exploration<S> | undefined;
      const explored = earlier ?? (yield* explore(graph, watcher, bounds));
      known.set(watcher, explored);
      return explored;
    },
  };
}

export interface Watched {
  readonly reported: readonly Reported[];
  readonly complete: boolean;
}

/** A watcher with its states hidden, so that unlike ones can stand in one list. */
export type Run = (explorer: Explorer) => Work<Watched>;

/** What the watcher itself reports, and what is wrong where paths end. */
export function running<S>(watcher: Watcher<S>, end?: EndJudge<S>): Run {
  return function* ({ explore }) {
    const { reported, ends, complete } = yield* explore(watcher);
    return { reported: end === undefined ? reported : [...reported, ...ends(end)], complete };
  };
}

export function* runAll(explorer: Explorer, runs: readonly Run[]): Work<Watched> {
  const reported: Reported[] = [];
  let complete = true;
  for (const run of runs) {
    const watched = yield* run(explorer);
    for (const one of watched.reported) reported.push(one);
    complete &&= watched.complete;
  }
  return { reported, complete };
}
