import type { Step } from '../text/procedure.ts';
import type { Edge, StepGraph } from './graph.ts';
import type { Issue } from './issue.ts';
import type { Work } from './work.ts';

/** How a path ends: behind the last step, or at a `stop`. */
export type Ending = 'finished' | 'stop';

export type Report = (issue: Issue) => void;

/**
 * A small automaton over the verbs and outcomes of a path, that sees only its own part of the bench. Because the way
 * taken never depends on the bench, running each one alone finds just what the product of all of them would find.
 */
export interface Watcher<S> {
  /** What varies in its state, for the reader who is told that there is too much of it. */
  readonly watches: string;
  readonly start: S;
  /** Equal states have equal keys. */
  readonly key: (state: S) => string;
  /** Whether all that can go wrong from `state` goes wrong from `seen` too: then `state` need not be followed. */
  readonly covers?: (seen: S, state: S) => boolean;
  /** The state after the step's verb; the very same object where the step does not concern it. */
  readonly step: (state: S, step: Step, report: Report) => S;
  /** The state after one way out has been taken. */
  readonly take?: (state: S, step: Step, edge: Edge) => S;
  readonly end?: (state: S, step: Step, ending: Ending, report: Report) => void;
}

/** One configuration that a path reaches: the state in which a step is entered, and where it came from. */
export interface Arrival<S> {
  readonly index: number;
  readonly state: S;
  readonly key: string;
  readonly from: Arrival<S> | null;
  /** The way out of `from` that led here. */
  readonly by: Edge | null;
}

export interface Reported {
  readonly issue: Issue;
  readonly index: number;
  /** The shortest path, by indices of steps, with the way out of each; the last way out is null. */
  readonly hops: readonly { readonly index: number; readonly by: Edge | null }[];
}

/** The most that one exploration may hold; reaching either is reported, never passed over. */
export interface Bounds {
  readonly statesPerStep: number;
  readonly configurations: number;
}

export const defaultBounds: Bounds = { statesPerStep: 64, configurations: 200_000 };

export interface Exploration<S> {
  readonly reported: readonly Reported[];
  /** By step: every state in which it is entered, nearest first. */
  readonly arrivals: readonly (readonly Arrival<S>[])[];
  readonly complete: boolean;
}

/** Runs a watcher over every path, breadth first, so that the first path found to anything is the shortest. */
export function* explore<S>(
  graph: StepGraph,
  watcher: Watcher<S>,
  bounds: Bounds = defaultBounds,
): Work<Exploration<S>> {
  const arrivals: Arrival<S>[][] = graph.steps.map(() => []);
  const seen: (Set<string> | undefined)[] = [];
  const queue: Arrival<S>[] = [];
  const reported: Reported[] = [];
  const known = new Set<string>();
  let complete = true;

  const record = (arrival: Arrival<S>, issue: Issue, by: Edge | null = null): void => {
    const identity = `${issue.rule}\n${arrival.index}\n${issue.subject ?? ''}\n${issue.severity ?? ''}`;
    if (known.has(identity)) return;
    known.add(identity);
    reported.push({ issue, index: arrival.index, hops: hopsTo(arrival, by) });
  };

  const arrive = (index: number, state: S, key: string, from: Arrival<S> | null, by: Edge | null): void => {
    const keys = (seen[index] ??= new Set());
    if (keys.has(key)) return;
    const here = arrivals[index];
    if (here === undefined) return;
    const { covers } = watcher;
    if (covers !== undefined && here.some((other) => covers(other.state, state))) return;
    const arrival: Arrival<S> = { index, state, key, from, by };
    if (here.length >= bounds.statesPerStep || queue.length >= bounds.configurations) {
      if (complete) record(arrival, tooMany(watcher.watches, here.length >= bounds.statesPerStep, bounds));
      complete = false;
      return;
    }
    keys.add(key);
    here.push(arrival);
    // A call does nothing and does not count as a step: its routine is entered at once.
    const step = graph.steps[index];
    if (step?.verb !== 'run') queue.push(arrival);
    else
      for (const call of graph.edges[index] ?? [])
        if (typeof call.to === 'number') arrive(call.to, state, key, arrival, call);
  };

  if (graph.steps.length > 0) arrive(0, watcher.start, watcher.key(watcher.start), null, null);
  for (let done = 0; done < queue.length; done++) {
    if (done % 2000 === 1999) yield { stage: 'order', done };
    const arrival = queue[done];
    const step = arrival === undefined ? undefined : graph.steps[arrival.index];
    if (arrival === undefined || step === undefined || step.verb === 'broken') continue;
    const report: Report = (issue) => {
      record(arrival, issue);
    };
    const after = watcher.step(arrival.state, step, report);
    const keyAfter = after === arrival.state ? arrival.key : watcher.key(after);
    for (const edge of graph.edges[arrival.index] ?? []) {
      const taken = watcher.take === undefined ? after : watcher.take(after, step, edge);
      if (edge.to === 'end')
        watcher.end?.(taken, step, step.verb === 'stop' ? 'stop' : 'finished', (issue) => {
          record(arrival, issue, edge);
        });
      else if (edge.to !== null)
        arrive(edge.to, taken, taken === after ? keyAfter : watcher.key(taken), arrival, edge);
    }
  }
  return { reported, arrivals, complete };
}

/** The way to an arrival, and where it matters the way out of it. */
export function hopsTo<S>(
  arrival: Arrival<S>,
  out: Edge | null = null,
): { index: number; by: Edge | null }[] {
  const hops: { index: number; by: Edge | null }[] = [];
  let by = out;
  for (let at: Arrival<S> | null = arrival; at !== null; at = at.from) {
    hops.push({ index: at.index, by });
    by = at.by;
  }
  return hops.reverse();
}

function tooMany(watches: string, atOneStep: boolean, bounds: Bounds): Issue {
  const limit = atOneStep ? `${bounds.statesPerStep} at one step` : `${bounds.configurations} in all`;
  return {
    rule: 'too-many-states',
    subject: watches,
    message:
      `The paths that come here leave ${watches} in more combinations than are followed (${limit}): ` +
      'restore in each branch what it opens, before the branches meet. What lies behind is not checked for it.',
  };
}
