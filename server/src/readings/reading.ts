import type { Circuits } from '../bench/circuits.ts';
import { defaultBounds, explore } from '../bench/explore.ts';
import type { Arrival, Bounds, Reported } from '../bench/explore.ts';
import type { StepGraph } from '../bench/graph.ts';
import type { Work } from '../bench/work.ts';
import type { Id, Loop, Monitor, Procedure, Step } from '../text/procedure.ts';
import { acceptedWindow, printedWindow } from './accepted.ts';
import type { Accepted } from './accepted.ts';
import { rowsByEntry } from './by-entry.ts';
import type { EntryRow } from './by-entry.ts';
import { codesSet, looks, mayLook } from './codes.ts';
import type { Code } from './codes.ts';
import { goodReadings } from './good.ts';
import type { Good, GoodReadings } from './good.ts';
import { loopAutomaton, loopBenchWatcher } from './loop-bench.ts';
import type { LoopAutomaton, LoopBench } from './loop-bench.ts';

/** A bench on which a step reads a loop, what a sound circuit reads there, and the shortest way to it. */
export interface GoodOnBench extends Good {
  readonly arrival: Arrival<LoopBench>;
}

/** What one step reads of one loop. */
export interface Reading {
  readonly index: number;
  readonly loop: Loop;
  readonly monitor: Monitor | undefined;
  /** null: nothing is stated, and nothing could be computed. */
  readonly accepted: Accepted | null;
  /** The accepted window with its unit; empty where there is none. */
  readonly printed: string;
  /** The same as a table over the temperatures that are entered; empty where they make no difference. */
  readonly byEntry: readonly EntryRow[];
  /** By bench, nearest first. Empty where no path reaches the step. */
  readonly good: readonly GoodOnBench[];
}

/** Codes that the bench itself can set at a step. */
export interface CodesAtStep {
  readonly index: number;
  readonly codes: readonly Code[];
}

export interface Readings {
  readonly readings: readonly Reading[];
  /** What the step at an index reads of a loop. */
  readonly at: (index: number, loop: Id) => Reading | undefined;
  readonly codes: readonly CodesAtStep[];
  readonly automata: ReadonlyMap<Id, LoopAutomaton>;
  readonly good: GoodReadings;
  /** Bounds that were met. */
  readonly reported: readonly Reported[];
  readonly complete: boolean;
}

/** Explores the bench of each loop alone, and reads it wherever a step does. */
export function* computeReadings(
  procedure: Procedure,
  graph: StepGraph,
  circuits: Circuits,
  bounds: Bounds = defaultBounds,
): Work<Readings> {
  const good = goodReadings(procedure);
  const automata = new Map<Id, LoopAutomaton>();
  const readings: Reading[] = [];
  const codes = new Map<number, Code[]>();
  const reported: Reported[] = [];
  let complete = true;
  const looking = [...graph.steps.entries()].filter(([, step]) => mayLook(step));
  const monitorOf = (id: Id): Id | null => procedure.loops.get(id)?.monitor ?? null;
  for (const loop of procedure.loops.values()) {
    const automaton = loopAutomaton(circuits, loop);
    automata.set(loop.id, automaton);
    const explored = yield* explore(graph, loopBenchWatcher(automaton), bounds);
    reported.push(...explored.reported);
    complete &&= explored.complete;
    const monitor = loop.monitor === null ? undefined : procedure.monitors.get(loop.monitor);
    const goodOn = rememberBy((bench: LoopBench) => good(loop, bench.hardware));
    const codesOn = rememberBy((bench: LoopBench) => codesSet(automaton, monitor, bench, good));
    const rowsOn = (arrivals: readonly Arrival<LoopBench>[], resolution: number): readonly EntryRow[] =>
      rowsByEntry(
        procedure,
        loop,
        arrivals.map(({ state }) => state.hardware),
        resolution,
      );
    for (const [index, step] of looking) {
      const arrivals = explored.arrivals(index);
      const reading = readingAt(index, step, loop, monitor, arrivals, goodOn, rowsOn);
      if (reading !== null) readings.push(reading);
      const set = looks(step, automaton, monitorOf) ? codesAt(loop, arrivals, codesOn) : [];
      if (set.length > 0) codes.set(index, [...(codes.get(index) ?? []), ...set]);
    }
  }
  readings.sort((a, b) => a.index - b.index || orderInStep(graph, a) - orderInStep(graph, b));
  const codesInOrder = [...codes].sort(([a], [b]) => a - b).map(([index, set]) => ({ index, codes: set }));
  const placed = new Map(readings.map((reading) => [`${reading.index} ${reading.loop.id}`, reading]));
  const at = (index: number, loop: Id): Reading | undefined => placed.get(`${index} ${loop}`);
  return { readings, at, codes: codesInOrder, automata, good, reported, complete };
}

function orderInStep(graph: StepGraph, reading: Reading): number {
  const step = graph.steps[reading.index];
  return step?.verb === 'read' ? step.loops.indexOf(reading.loop.id) : 0;
}

function readingAt(
  index: number,
  step: Step,
  loop: Loop,
  monitor: Monitor | undefined,
  arrivals: readonly Arrival<LoopBench>[],
  goodOn: (bench: LoopBench) => Good,
  rowsOn: (arrivals: readonly Arrival<LoopBench>[], resolution: number) => readonly EntryRow[],
): Reading | null {
  if (step.verb !== 'read' || !step.loops.includes(loop.id)) return null;
  const good = arrivals.map((arrival) => ({ arrival, ...goodOn(arrival.state) }));
  const indications = good.flatMap(({ indication }) => (indication === null ? [] : [indication]));
  const resolution = monitor?.resolution ?? null;
  const known = indications.length === good.length;
  const accepted =
    resolution === null || (!known && step.expect === null)
      ? null
      : acceptedWindow(step.expect, indications, resolution);
  const printed = accepted === null || resolution === null ? '' : printedWindow(accepted, resolution);
  const isComputed = accepted !== null && resolution !== null && step.expect === null;
  const byEntry = isComputed ? rowsOn(arrivals, resolution) : [];
  return { index, loop, monitor, accepted, printed, byEntry, good };
}

function codesAt(
  loop: Loop,
  arrivals: readonly Arrival<LoopBench>[],
  codesOn: (bench: LoopBench) => readonly Code[],
): readonly Code[] {
  const sets = [...new Set(arrivals.map(({ after }) => codesOn(after)))];
  const names = [...new Set(sets.flatMap((set) => set.map(({ code }) => code)))];
  return names.map((code) => ({
    loop: loop.id,
    code,
    certain: sets.every((set) => set.some((one) => one.code === code && one.certain)),
  }));
}

/** Computes once for each bench; the explorer has one object for equal ones. */
function rememberBy<T>(compute: (bench: LoopBench) => T): (bench: LoopBench) => T {
  const known = new Map<LoopBench, T>();
  return (bench) => {
    const value = known.get(bench) ?? compute(bench);
    known.set(bench, value);
    return value;
  };
}
