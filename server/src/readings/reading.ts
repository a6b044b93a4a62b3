import type { Circuits } from '../bench/circuits.ts';
import { defaultBounds, explore } from '../bench/explore.ts';
import type { Arrival, Bounds, Exploration, Reported } from '../bench/explore.ts';
import type { StepGraph } from '../bench/graph.ts';
import type { Work } from '../bench/work.ts';
import type { Id, Loop, Monitor, Procedure } from '../text/procedure.ts';
import { acceptedWindow, printedWindow } from './accepted.ts';
import type { Accepted } from './accepted.ts';
import { codesSet, looks } from './codes.ts';
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
  for (const loop of procedure.loops.values()) {
    const automaton = loopAutomaton(circuits, loop);
    automata.set(loop.id, automaton);
    const explored = yield* explore(graph, loopBenchWatcher(automaton), bounds);
    reported.push(...explored.reported);
    complete &&= explored.complete;
    for (const index of graph.steps.keys()) {
      const reading = readingAt(procedure, graph, index, automaton, explored, good);
      if (reading !== null) readings.push(reading);
      const set = codesAt(procedure, graph, index, automaton, explored, good);
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
  procedure: Procedure,
  graph: StepGraph,
  index: number,
  automaton: LoopAutomaton,
  { arrivals }: Exploration<LoopBench>,
  goodOf: GoodReadings,
): Reading | null {
  const step = graph.steps[index];
  const { loop } = automaton;
  if (step?.verb !== 'read' || !step.loops.includes(loop.id)) return null;
  const monitor = loop.monitor === null ? undefined : procedure.monitors.get(loop.monitor);
  const good = arrivals(index).map((arrival) => ({ arrival, ...goodOf(loop, arrival.state.hardware) }));
  const indications = good.flatMap(({ indication }) => (indication === null ? [] : [indication]));
  const resolution = monitor?.resolution ?? null;
  const known = indications.length === good.length;
  const accepted =
    resolution === null || (!known && step.expect === null)
      ? null
      : acceptedWindow(step.expect, indications, resolution);
  const printed = accepted === null || resolution === null ? '' : printedWindow(accepted, resolution);
  return { index, loop, monitor, accepted, printed, good };
}

function codesAt(
  procedure: Procedure,
  graph: StepGraph,
  index: number,
  automaton: LoopAutomaton,
  { arrivals }: Exploration<LoopBench>,
  good: GoodReadings,
): readonly Code[] {
  const step = graph.steps[index];
  const monitorOf = (loop: Id): Id | null => procedure.loops.get(loop)?.monitor ?? null;
  if (step === undefined || !looks(step, automaton, monitorOf)) return [];
  const monitor =
    automaton.loop.monitor === null ? undefined : procedure.monitors.get(automaton.loop.monitor);
  const sets = arrivals(index).map(({ state }) =>
    codesSet(automaton, monitor, automaton.after(state, step), good),
  );
  const names = [...new Set(sets.flatMap((set) => set.map(({ code }) => code)))];
  return names.map((code) => ({
    loop: automaton.loop.id,
    code,
    certain: sets.every((set) => set.some((one) => one.code === code && one.certain)),
  }));
}
