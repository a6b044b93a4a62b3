import type { Hop, Taken, Trace } from '../text/finding.ts';
import type { Procedure } from '../text/procedure.ts';
import type { StepRef } from '../text/where.ts';
import { refTo } from './graph.ts';
import type { Edge, StepGraph } from './graph.ts';

/** A path by indices of steps; `by` is the way out of each, null where the path stops. */
export type Hops = readonly { readonly index: number; readonly by: Edge | null }[];

export function traceOf(procedure: Procedure, graph: StepGraph, hops: Hops): Trace {
  return { hops: hops.flatMap(({ index, by }) => hopOf(procedure, graph, index, by)) };
}

export function stepAt(procedure: Procedure, graph: StepGraph, index: number): StepRef | undefined {
  const step = graph.steps[index];
  return step === undefined ? undefined : refTo(step, procedure.file);
}

function hopOf(procedure: Procedure, graph: StepGraph, index: number, by: Edge | null): Hop[] {
  const step = stepAt(procedure, graph, index);
  return step === undefined ? [] : [{ step, taken: by?.taken ?? null }];
}

/** A path as people say it, with the outcomes taken: `1 to 6 (else), 9, 10`. */
export function pathInWords(trace: Trace): string {
  const runs: { first: number; last: number; outcome: string | null }[] = [];
  for (const { step, taken } of trace.hops) {
    const run = runs.at(-1);
    const outcome = taken?.kind === 'outcome' ? outcomeInWords(taken) : null;
    if (run?.outcome === null && step.number === run.last + 1) {
      run.last = step.number;
      run.outcome = outcome;
    } else runs.push({ first: step.number, last: step.number, outcome });
  }
  const words = runs.map(inWords);
  const left = words.length - shownRuns.first - shownRuns.last;
  if (left <= 1) return words.join(', ');
  return [
    ...words.slice(0, shownRuns.first),
    `... ${left} stretches ...`,
    ...words.slice(-shownRuns.last),
  ].join(', ');
}

/** Of a long path the stretches at its start and end are told. */
const shownRuns = { first: 8, last: 6 };

function outcomeInWords(taken: Taken & { kind: 'outcome' }): string {
  return taken.of === undefined ? taken.outcome : `${taken.of} ${taken.outcome}`;
}

function inWords({ first, last, outcome }: { first: number; last: number; outcome: string | null }): string {
  const steps =
    first === last ? String(first) : last === first + 1 ? `${first}, ${last}` : `${first} to ${last}`;
  return outcome === null ? steps : `${steps} (${outcome})`;
}
