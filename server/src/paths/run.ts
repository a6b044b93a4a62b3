import { effortOf } from './effort.ts';
import type { Effort } from './effort.ts';
import { explore } from './explore.ts';
import type { Bounds, EndJudge, Exploration, Reported, Watcher } from './explore.ts';
import type { StepGraph } from './graph.ts';
import type { Work } from '../model/work.ts';

/**
 * Explores the paths of one graph, with each watcher once: several questions may be asked of one. What was explored
 * before is spent again, so that what is too much does not depend on what was asked earlier.
 */
export interface Explorer extends Effort {
  readonly graph: StepGraph;
  readonly explore: <S>(watcher: Watcher<S>) => Work<Exploration<S>>;
  /** The same for another stage, with nothing spent. */
  readonly renewed: () => Explorer;
}

export function explorerOf(graph: StepGraph, bounds: Bounds): Explorer {
  const known = new WeakMap<object, unknown>();
  const renewed = (): Explorer => {
    const effort = effortOf(bounds.work);
    return {
      ...effort,
      graph,
      renewed,
      *explore<S>(watcher: Watcher<S>) {
        const earlier = known.get(watcher) as Exploration<S> | undefined;
        if (earlier !== undefined) effort.spend(earlier.work);
        const explored = earlier ?? (yield* explore(graph, watcher, bounds, effort));
        known.set(watcher, explored);
        return explored;
      },
    };
  };
  return renewed();
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
