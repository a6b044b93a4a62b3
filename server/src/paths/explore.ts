import type { Step } from '../model/procedure.ts';
import { effortOf, mostWork } from './effort.ts';
import type { Effort } from './effort.ts';
import { endingOf } from './graph.ts';
import type { Edge, Ending, StepGraph } from './graph.ts';
import type { Issue } from './issue.ts';
import { atEnd, behindCalls, nowhere, numberedGraph } from './numbered-graph.ts';
import { wayAlong } from './trace.ts';
import type { Way } from './trace.ts';
import {
  addArrival,
  cellsEach,
  emptyTrail,
  hopsTo,
  nextCell,
  none,
  stateCell,
  stepCell,
  wayTo,
} from './trail.ts';
import type { Work } from '../model/work.ts';

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
  /**
   * The state after the step's verb; the very same object where the step does not concern it. It depends on what the
   * step does, never on where it stands or leads: it is asked once for all steps that do the same.
   */
  readonly step: (state: S, step: Step, report: Report) => S;
  /** The state after an outcome has been taken; any other way out leaves it as it is. */
  readonly take?: (state: S, step: Step, edge: Edge) => S;
}

/** What is wrong with a state in which a path ends. */
export type EndJudge<S> = (state: S, step: Step, ending: Ending, report: Report) => void;

/** A state in which a step is entered, and that after the step. Equal states are one object. */
export interface Around<S> {
  readonly state: S;
  readonly after: S;
}

/** The same with the shortest way there. */
export interface Arrival<S> extends Around<S> {
  readonly way: Way;
}

export interface Reported {
  readonly issue: Issue;
  readonly index: number;
  /** The shortest one; its last way out is null where that does not matter. */
  readonly way: Way;
}

/** The most that is done; reaching any of it is reported, never passed over. */
export interface Bounds {
  /** Of one exploration. */
  readonly statesPerStep: number;
  readonly configurations: number;
  /** Of one stage, in the unit of `Effort`. */
  readonly work: number;
}

export const defaultBounds: Bounds = { statesPerStep: 64, configurations: 200_000, work: mostWork };

export interface Exploration<S> {
  readonly reported: readonly Reported[];
  /** Every state in which a step is entered, nearest first. */
  readonly around: (index: number) => readonly Around<S>[];
  readonly arrivals: (index: number) => readonly Arrival<S>[];
  /** Judges every state in which a path ends. */
  readonly ends: (judge: EndJudge<S>) => readonly Reported[];
  readonly complete: boolean;
  /** What it took. */
  readonly work: number;
}

interface Recorder {
  readonly reported: Reported[];
  readonly record: (at: number, issue: Issue, by: number) => void;
}

/** Runs a watcher over every path, breadth first, so that the first path found to anything is the shortest. */
export function* explore<S>(
  graph: StepGraph,
  watcher: Watcher<S>,
  bounds: Bounds = defaultBounds,
  effort: Effort = effortOf(bounds.work),
): Work<Exploration<S>> {
  const { act, acts, firstWay, ways, byOutcome, to, ending } = numberedGraph(graph);
  const { take } = watcher;
  const { stateOf, numberOf, covers, afterAct, issues, workOfStates } = numberedStates(watcher, graph);
  const trail = emptyTrail(graph.steps.length);
  let complete = true;

  /** Of what is told several times of a step the nearest is kept. */
  const recorder = (): Recorder => {
    const reported: Reported[] = [];
    const known = new Set<string>();
    const record = (at: number, issue: Issue, by: number): void => {
      const index = trail.cells[at + stepCell] ?? 0;
      const identity = `${issue.rule}\n${index}\n${issue.subject ?? ''}\n${issue.severity ?? ''}`;
      if (known.has(identity)) return;
      known.add(identity);
      reported.push({ issue, index, way: wayTo(trail, graph, ways, at, by) });
    };
    return { reported, record };
  };
  const { reported, record } = recorder();

  const refuse = (index: number, from: number, by: number, atOneStep: boolean): void => {
    const way = wayAlong([...hopsTo(trail, graph, ways, from, by), { index, by: null }]);
    if (complete) reported.push({ issue: tooMany(watcher.watches, atOneStep, bounds), index, way });
    complete = false;
  };

  const arrive = (index: number, state: number, from: number, by: number): void => {
    const { cells, first, end } = trail;
    let there = 0;
    let last = none;
    for (let at = first[index] ?? none; at !== none; at = cells[at + nextCell] ?? none) {
      const other = cells[at + stateCell] ?? 0;
      if (other === state || covers(other, state)) return;
      there += 1;
      last = at;
    }
    const atOneStep = there >= bounds.statesPerStep;
    if (atOneStep || end >= bounds.configurations * cellsEach) refuse(index, from, by, atOneStep);
    else addArrival(trail, index, last, state, from, by);
  };

  const takenBy = (after: number, index: number, way: number): number => {
    const [step, edge] = [graph.steps[index], ways[way]];
    if (take === undefined || step === undefined || edge === undefined) return after;
    return numberOf(take(stateOf(after), step, edge), after);
  };

  const leave = (from: number, until: number): number => {
    let at = from;
    for (; at < trail.end && at < until; at += cellsEach) {
      const index = trail.cells[at + stepCell] ?? 0;
      const entered = trail.cells[at + stateCell] ?? 0;
      const doing = act[index] ?? none;
      if (doing === none) continue;
      const after = afterAct(entered, doing, index);
      if (issues.size > 0)
        for (const issue of issues.get(entered * acts + doing) ?? nothing) record(at, issue, none);
      const behind = firstWay[index + 1] ?? 0;
      for (let way = firstWay[index] ?? 0; way < behind; way++) {
        const target = to[way] ?? nowhere;
        const taken = take === undefined || byOutcome[way] === 0 ? after : takenBy(after, index, way);
        if (target >= 0) arrive(target, taken, at, way);
      }
    }
    return at;
  };

  if (graph.steps.length > 0) arrive(behindCalls(graph.steps, 0), numberOf(watcher.start), none, none);
  let work = 0;
  for (let at = 0; at < trail.end;) {
    at = leave(at, at + 2000 * cellsEach);
    const before = work;
    work = at / cellsEach + workOfStates();
    effort.spend(work - before);
    if (at < trail.end) yield { stage: 'order', done: at / cellsEach };
  }

  const arrivalsAs = <T>(index: number, as: (around: Around<S>, at: number) => T): readonly T[] => {
    const found: T[] = [];
    const { cells, first } = trail;
    const doing = act[index] ?? none;
    for (let at = first[index] ?? none; at !== none; at = cells[at + nextCell] ?? none) {
      const entered = cells[at + stateCell] ?? 0;
      const after = doing === none ? entered : afterAct(entered, doing, index);
      found.push(as({ state: stateOf(entered), after: stateOf(after) }, at));
    }
    return found;
  };
  const around = (index: number): readonly Around<S>[] => arrivalsAs(index, (states) => states);
  const arrivals = (index: number): readonly Arrival<S>[] =>
    arrivalsAs(index, (states, at) => ({ ...states, way: wayTo(trail, graph, ways, at, none) }));

  const ends = (judge: EndJudge<S>): readonly Reported[] => {
    const found = recorder();
    for (const [index, step] of ending) {
      const { cells, first } = trail;
      for (let at = first[index] ?? none; at !== none; at = cells[at + nextCell] ?? none) {
        const after = afterAct(cells[at + stateCell] ?? 0, act[index] ?? 0, index);
        for (let way = firstWay[index] ?? 0; way < (firstWay[index + 1] ?? 0); way++) {
          const edge = ways[way];
          if (to[way] !== atEnd || edge === undefined) continue;
          const taken = byOutcome[way] === 0 ? after : takenBy(after, index, way);
          judge(stateOf(taken), step, endingOf(step, edge), (issue) => {
            found.record(at, issue, way);
          });
        }
      }
    }
    return found.reported;
  };
  return { reported, around, arrivals, ends, complete, work };
}

/** The states of a watcher, numbered as they are met, with what each act makes of them. */
interface NumberedStates<S> {
  readonly stateOf: (number: number) => S;
  /** `known` is a state that may be the very same. */
  readonly numberOf: (state: S, known?: number) => number;
  readonly covers: (seen: number, state: number) => boolean;
  readonly afterAct: (number: number, act: number, index: number) => number;
  readonly issues: ReadonlyMap<number, readonly Issue[]>;
  /** What the states took so far: each is asked for, told from the others by its key, and remembered with all acts. */
  readonly workOfStates: () => number;
}

const nothing: readonly Issue[] = [];

function numberedStates<S>(watcher: Watcher<S>, graph: StepGraph): NumberedStates<S> {
  const { acts } = numberedGraph(graph);
  const states: S[] = [];
  const numbers = new Map<string, number>();
  /** By state and act: the state after it. */
  const after: Int32Array[] = [];
  const issues = new Map<number, readonly Issue[]>();
  let work = 0;

  /** By state: which others it stands for, as far as that was asked. */
  const covering: Map<number, boolean>[] = [];

  const stateOf = (number: number): S => states[number] as S;
  const covers = (seen: number, state: number): boolean => {
    if (watcher.covers === undefined) return false;
    const asked = (covering[seen] ??= new Map<number, boolean>());
    const earlier = asked.get(state);
    if (earlier !== undefined) return earlier;
    const found = watcher.covers(stateOf(seen), stateOf(state));
    asked.set(state, found);
    return found;
  };
  const numberOf = (state: S, same = none): number => {
    if (same !== none && state === stateOf(same)) return same;
    const key = watcher.key(state);
    work += 1 + key.length / 5;
    const earlier = numbers.get(key);
    if (earlier !== undefined) return earlier;
    numbers.set(key, states.length);
    work += acts / 8;
    after.push(new Int32Array(acts).fill(none));
    return states.push(state) - 1;
  };
  const afterAct = (number: number, act: number, index: number): number => {
    const ofState = after[number];
    const earlier = ofState?.[act] ?? none;
    if (earlier !== none) return earlier;
    const step = graph.steps[index];
    if (step === undefined) return number;
    work += 1;
    const told: Issue[] = [];
    const state = watcher.step(stateOf(number), step, (issue) => void told.push(issue));
    if (told.length > 0) issues.set(number * acts + act, told);
    const found = numberOf(state, number);
    if (ofState !== undefined) ofState[act] = found;
    return found;
  };
  return { stateOf, numberOf, covers, afterAct, issues, workOfStates: () => work };
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
