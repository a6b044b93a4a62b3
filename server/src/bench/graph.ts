import type { Taken } from '../text/finding.ts';
import type { Outcome, Procedure, Step, Target } from '../text/procedure.ts';
import type { StepRef } from '../text/where.ts';

/** One way out of a step. `to` is an index into the steps, or `end`; null where the id it names does not exist. */
export interface Edge {
  readonly taken: Taken;
  readonly to: Target;
  readonly outcome?: Outcome;
}

/** The steps of a procedure and every way from one to the next that order has to reckon with. */
export interface StepGraph {
  readonly steps: readonly Step[];
  readonly edges: readonly (readonly Edge[])[];
}

/**
 * Every outcome that a step names is a way out, whatever the circuit would show. A step that could not be read leads
 * nowhere: what lies behind it is held back.
 */
export function stepGraph(procedure: Procedure): StepGraph {
  const { steps } = procedure;
  return {
    steps,
    edges: steps.map((step, index) => edgesOf(step, steps[index + 1])),
  };
}

function edgesOf(step: Step, next: Step | undefined): readonly Edge[] {
  switch (step.verb) {
    case 'broken':
      return [];
    case 'go':
      return [{ taken: { kind: 'go' }, to: step.to }];
    case 'stop':
      return [{ taken: { kind: 'end' }, to: 'end' }];
    case 'read':
    case 'read-codes':
    case 'inspect':
      return step.outcomes === null ? [onward(step, next)] : step.outcomes.map(byOutcome);
    default:
      return [onward(step, next)];
  }
}

function onward(step: Step, next: Step | undefined): Edge {
  if (next === undefined) return { taken: { kind: 'end' }, to: 'end' };
  if (step.verb === 'run') return { taken: { kind: 'run' }, to: next.index };
  const returns = next.calls.length < step.calls.length;
  return { taken: { kind: returns ? 'return' : 'next' }, to: next.index };
}

function byOutcome(outcome: Outcome): Edge {
  const of = outcome.of === undefined ? {} : { of: outcome.of };
  return { taken: { kind: 'outcome', outcome: outcome.name, ...of }, to: outcome.target, outcome };
}

/** Which steps some path reaches, from the first one, over the edges that `follow` lets through. */
export function reachable(
  graph: StepGraph,
  follow: (index: number, edge: Edge) => boolean = () => true,
): boolean[] {
  const reached = graph.steps.map(() => false);
  const waiting: number[] = [];
  const reach = (target: Target): void => {
    if (typeof target !== 'number' || reached[target] !== false) return;
    reached[target] = true;
    waiting.push(target);
  };
  reach(graph.steps.length > 0 ? 0 : 'end');
  for (let index = waiting.pop(); index !== undefined; index = waiting.pop())
    for (const edge of graph.edges[index] ?? []) if (follow(index, edge)) reach(edge.to);
  return reached;
}

/** Whether a step's ways out are not all known: it could not be read, or names a step that does not exist. */
export function leadsAstray(graph: StepGraph, index: number): boolean {
  return graph.steps[index]?.verb === 'broken' || (graph.edges[index] ?? []).some((edge) => edge.to === null);
}

export function refTo({ file, path, number, id, routine, calls }: Step): StepRef {
  return {
    file,
    path,
    number,
    ...(id === undefined ? {} : { id }),
    ...(routine === undefined ? {} : { routine }),
    calls,
  };
}
