import { askedBy, loopsRead } from '../bench/asked.ts';
import type { Measuring } from '../bench/asked.ts';
import type { Circuits } from '../bench/circuits.ts';
import type { Around, Arrival, Exploration, Reported } from '../paths/explore.ts';
import { effortOf, mostWork } from '../paths/effort.ts';
import type { Effort } from '../paths/effort.ts';
import type { StepGraph } from '../paths/graph.ts';
import type { Explorer } from '../paths/run.ts';
import type { Work } from '../model/work.ts';
import type { Id, Loop, Procedure } from '../model/procedure.ts';
import { remembered } from '../model/remembered.ts';
import { acceptedWindow, printedWindow, stepShowing } from './accepted.ts';
import type { Accepted } from './accepted.ts';
import { rowsByEntry } from './by-entry.ts';
import type { EntryRow } from './by-entry.ts';
import { codesSet, looks, mayLook } from './codes.ts';
import type { Code } from './codes.ts';
import { goodReadings } from './good.ts';
import type { Good, GoodReadings } from './good.ts';
import { islandAutomaton, loopAutomaton, loopBenchWatcher } from './loop-bench.ts';
import type { BenchAutomaton, LoopAutomaton, LoopBench } from './loop-bench.ts';
import { loopSubject, measuredSubject } from './subject.ts';
import type { Subject } from './subject.ts';

/** A bench on which a step reads something, what a sound circuit reads there, and the shortest way to it. */
export interface GoodOnBench extends Good {
  readonly arrival: Arrival<LoopBench>;
}

/** What one step reads or measures. */
export interface Reading extends Subject {
  readonly index: number;
  /** null: nothing is stated, and nothing could be computed. */
  readonly accepted: Accepted | null;
  /** The accepted window with its unit; empty where there is none. */
  readonly printed: string;
  /** Both ends of what was computed are met by some circuit within the limits; else no circuit passes them. True of a stated window. */
  readonly exact: boolean;
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
  /** What the step at an index reads of a loop, or between two points. */
  readonly at: (index: number, of: string) => Reading | undefined;
  readonly codes: readonly CodesAtStep[];
  readonly automata: ReadonlyMap<Id, LoopAutomaton>;
  readonly subjectOf: (loop: Loop) => Subject;
  readonly good: GoodReadings;
  /** Bounds that were met. */
  readonly reported: readonly Reported[];
  readonly complete: boolean;
}

/** Explores the bench of each loop alone, and of each thing that is measured, and reads it wherever a step does. */
export function* computeReadings(
  procedure: Procedure,
  explorer: Explorer,
  circuits: Circuits,
): Work<Readings> {
  const { graph, explore, spend } = explorer;
  const good = goodReadings(procedure, explorer);
  const automata = new Map<Id, LoopAutomaton>();
  const readings: Reading[] = [];
  const codes = new Map<number, Code[]>();
  const reported: Reported[] = [];
  let complete = true;
  const looking = [...graph.steps.entries()].filter(([, step]) => mayLook(step));
  const monitorOf = (id: Id): Id | null => procedure.loops.get(id)?.monitor ?? null;
  const subjectOf = remembered((loop: Loop) => loopSubject(procedure, loop));
  function* explored(automaton: BenchAutomaton): Work<Exploration<LoopBench>> {
    const exploration = yield* explore(loopBenchWatcher(automaton));
    for (const one of exploration.reported) reported.push(one);
    complete &&= exploration.complete;
    return exploration;
  }
  for (const loop of procedure.loops.values()) {
    const subject = subjectOf(loop);
    const automaton = loopAutomaton(circuits, loop, subject.island);
    automata.set(loop.id, automaton);
    const { arrivals, around } = yield* explored(automaton);
    const monitor = loop.monitor === null ? undefined : procedure.monitors.get(loop.monitor);
    const goodOn = remembered((bench: LoopBench) => good(subject, bench));
    const codesOn = remembered((bench: LoopBench) => codesSet(automaton, monitor, bench, subject, good));
    spend(looking.length);
    for (const [index, step] of looking) {
      const asked = askedBy(step);
      if (asked?.of === 'loops' && asked.step.loops.includes(loop.id))
        readings.push(readingAt(procedure, index, asked.step, subject, arrivals(index), goodOn, explorer));
      const set = looks(step, automaton, monitorOf) ? codesAt(around(index), codesOn) : [];
      if (set.length > 0) codes.set(index, [...(codes.get(index) ?? []), ...set]);
    }
  }
  for (const { subject, steps } of measuredIn(procedure)) {
    const { arrivals } = yield* explored(islandAutomaton(subject.of, subject.island));
    const goodOn = remembered((bench: LoopBench) => good(subject, bench));
    for (const step of steps)
      readings.push(readingAt(procedure, step.index, step, subject, arrivals(step.index), goodOn, explorer));
  }
  readings.sort((a, b) => a.index - b.index || orderInStep(graph, a) - orderInStep(graph, b));
  const codesInOrder = [...codes].sort(([a], [b]) => a - b).map(([index, set]) => ({ index, codes: set }));
  const placed = new Map(readings.map((reading) => [`${reading.index} ${reading.of}`, reading]));
  const at = (index: number, of: string): Reading | undefined => placed.get(`${index} ${of}`);
  return { readings, at, codes: codesInOrder, automata, subjectOf, good, reported, complete };
}

/** What stands for the readings of a procedure where they could not be computed. */
export function noReadings(procedure: Procedure): Readings {
  return {
    readings: [],
    at: () => undefined,
    codes: [],
    automata: new Map(),
    subjectOf: (loop) => loopSubject(procedure, loop),
    good: goodReadings(procedure, effortOf(mostWork)),
    reported: [],
    complete: false,
  };
}

/** Steps that measure the same with the same instrument, together. */
function measuredIn(
  procedure: Procedure,
): readonly { readonly subject: Subject; readonly steps: readonly Measuring[] }[] {
  const bySubject = new Map<string, Measuring[]>();
  for (const asked of procedure.steps.map(askedBy)) {
    if (asked?.of !== 'points') continue;
    const { step } = asked;
    const key = `${step.quantity} ${step.of} ${step.with} ${step.drawing.join()}`;
    bySubject.set(key, [...(bySubject.get(key) ?? []), step]);
  }
  return [...bySubject.values()].flatMap((steps) => {
    const [first] = steps;
    return first === undefined ? [] : [{ subject: measuredSubject(procedure, first), steps }];
  });
}

function orderInStep(graph: StepGraph, reading: Reading): number {
  const step = graph.steps[reading.index];
  return step === undefined ? 0 : loopsRead(step).indexOf(reading.of);
}

function readingAt(
  procedure: Procedure,
  index: number,
  { expect }: Pick<Measuring, 'expect'>,
  subject: Subject,
  arrivals: readonly Arrival<LoopBench>[],
  goodOn: (bench: LoopBench) => Good,
  effort: Effort,
): Reading {
  const good = arrivals.map((arrival) => ({ arrival, ...goodOn(arrival.state) }));
  const indications = good.flatMap(({ indication }) => (indication === null ? [] : [indication]));
  const resolution = subject.instrument?.resolution ?? null;
  const known = indications.length === good.length;
  const accepted =
    resolution === null || (!known && expect === null)
      ? null
      : acceptedWindow(expect, indications, resolution);
  const isKnown = accepted !== null && resolution !== null;
  const printed = isKnown
    ? printedWindow(accepted, stepShowing(subject.instrument, accepted), subject.quantity)
    : '';
  const benches = arrivals.map(({ state }) => state);
  const byEntry =
    isKnown && expect === null ? rowsByEntry(procedure, subject, benches, resolution, effort) : [];
  const exact = expect !== null || [...good, ...byEntry].every((one) => one.exact);
  return { ...subject, index, accepted, printed, exact, byEntry, good };
}

function codesAt(
  around: readonly Around<LoopBench>[],
  codesOn: (bench: LoopBench) => readonly Code[],
): readonly Code[] {
  const sets = around.map(({ after }) => codesOn(after));
  const byName = new Map(sets.flat().map((code) => [code.code, code]));
  return [...byName.values()].map((code) => ({
    ...code,
    certain: sets.every((set) => set.some((one) => one.code === code.code && one.certain)),
  }));
}
