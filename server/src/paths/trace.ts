import type { Finding, Hop, Taken, Trace } from '../model/finding.ts';
import { refTo, stepNumber } from '../model/where.ts';
import type { StepRef } from '../model/where.ts';
import type { Edge, StepGraph } from './graph.ts';
import type { Issue } from './issue.ts';

/** A path by indices of steps; `by` is the way out of each, null where the path stops. */
export type Hops = readonly { readonly index: number; readonly by: Edge | null }[];

/** A path that is only made when it is asked for: there may be thousands of findings, each behind thousands of steps. */
export interface Way {
  readonly hops: () => Hops;
  readonly length: () => number;
}

export function wayAlong(hops: Hops): Way {
  return wayOf(() => hops);
}

/** The same for hops that are only worked out when they are asked for. */
export function wayOf(hops: () => Hops): Way {
  // Calls do not count as steps.
  return { hops, length: () => hops().filter(({ by }) => by?.taken.kind !== 'run').length };
}

/** A trace whose hops are made each time they are asked for, with what else is known of it. */
export function traceOf(
  graph: StepGraph,
  way: Way,
  {
    repeatsFrom,
    owes,
  }: { readonly repeatsFrom?: number | undefined; readonly owes?: Issue['owes'] | undefined } = {},
): Trace {
  return {
    get hops() {
      const hops: Hop[] = [];
      const refs = refsOf(graph);
      for (const { index, by } of way.hops()) {
        const step = refs[index];
        if (step !== undefined) hops.push({ step, index, taken: by?.taken ?? null });
      }
      return hops;
    },
    get length() {
      return way.length();
    },
    ...(repeatsFrom === undefined ? {} : { repeatsFrom }),
    ...(owes === undefined ? {} : { owes }),
  };
}

export function traceLength(trace: Trace | undefined): number {
  return trace?.length ?? trace?.hops.filter(({ taken }) => taken?.kind !== 'run').length ?? 0;
}

export function stepAt(graph: StepGraph, index: number): StepRef | undefined {
  return refsOf(graph)[index];
}

/** Long paths name the same steps over and over. */
function refsOf(graph: StepGraph): readonly StepRef[] {
  const refs = known.get(graph) ?? graph.steps.map(refTo);
  known.set(graph, refs);
  return refs;
}

const known = new WeakMap<StepGraph, readonly StepRef[]>();

/** A path as people say it, with the outcomes taken: `1 to 6 (else), 9, 10`, in a routine `5.1 to 5.3`. */
export function pathInWords(trace: Trace): string {
  const runs: { first: StepRef; last: StepRef; outcome: string | null }[] = [];
  for (const { step, taken } of trace.hops) {
    const run = runs.at(-1);
    const outcome = taken?.kind === 'outcome' ? outcomeInWords(taken) : null;
    if (run?.outcome === null && follows(step, run.last)) {
      run.last = step;
      run.outcome = outcome;
    } else runs.push({ first: step, last: step, outcome });
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

/** A longer path than this is told in words by its length alone where it is not what the finding is about. */
export const longestInWords = 1000;

/** `by steps 1 to 6 (else), 9`. */
export function wayInWords(trace: Trace): string {
  const length = traceLength(trace);
  return length > longestInWords ? `by a way of ${length} steps` : `by steps ${pathInWords(trace)}`;
}

/** Whether a step stands behind another one in the same list, called by the same steps. */
export function follows(step: StepRef, before: StepRef): boolean {
  return (
    step.number === before.number + 1 &&
    step.calls.length === before.calls.length &&
    step.calls.every(({ number }, at) => number === before.calls[at]?.number)
  );
}

/** Of a long path the stretches at its start and end are told. */
const shownRuns = { first: 8, last: 6 };

/** `else`, or with its loop where it belongs to one of several: `stage-1-loop above`. */
export function outcomeInWords(taken: Taken & { kind: 'outcome' }): string {
  const name = taken.window ?? taken.outcome;
  return taken.of === undefined ? name : `${taken.of} ${name}`;
}

function inWords({
  first,
  last,
  outcome,
}: {
  first: StepRef;
  last: StepRef;
  outcome: string | null;
}): string {
  const [from, to] = [stepNumber(first), stepNumber(last)];
  const steps = from === to ? from : last.number === first.number + 1 ? `${from}, ${to}` : `${from} to ${to}`;
  return outcome === null ? steps : `${steps} (${outcome})`;
}

/** The message of a finding with its path, for where the path has no place of its own: `Path: steps 1 to 6 (else), 9.` */
export function messageWithPath({ message, trace }: Finding): string {
  if (trace === undefined) return message;
  const { hops, repeatsFrom } = trace;
  const again = repeatsFrom === undefined ? undefined : hops[repeatsFrom]?.step;
  if (again === undefined && hops.length < 2) return message;
  const back = again === undefined ? '' : `, and back to ${stepNumber(again)}`;
  return `${message} Path: steps ${pathInWords(trace)}${back}.`;
}
