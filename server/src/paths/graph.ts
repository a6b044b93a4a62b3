import type { Taken } from '../model/finding.ts';
import type { Outcome, Procedure, Step, Target } from '../model/procedure.ts';

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
    case 'measure':
    case 'wiggle':
    case 'read-codes':
    case 'inspect':
      return step.outcomes === null ? [onward(step, next)] : step.outcomes.map(byOutcome);
    case 'prove-dead':
      return [
        found(step.outcomes, 'dead', next === undefined ? 'end' : next.index),
        found(step.outcomes, 'live', 'end'),
      ];
    case 'ignition':
    case 'disconnect':
    case 'reconnect':
    case 'wait':
    case 'unlock':
    case 'unplug':
    case 'plug':
    case 'fit':
    case 'move':
    case 'remove':
    case 'clear-codes':
    case 'do':
    case 'replace':
    case 'conclude':
    case 'run':
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
  const { name, window, of, target } = outcome;
  const named = window === undefined ? {} : { window };
  const ofLoop = of === undefined ? {} : { of };
  return { taken: { kind: 'outcome', outcome: name, ...named, ...ofLoop }, to: target, outcome };
}

/** The way out by an outcome that leads on although nothing is written of it. */
function found(outcomes: readonly Outcome[], outcome: 'dead' | 'live', unwritten: Target): Edge {
  const written = outcomes.find(({ name }) => name === outcome);
  return written === undefined ? { taken: { kind: 'outcome', outcome }, to: unwritten } : byOutcome(written);
}

/** How a path ends: behind the last step, at a `stop`, or because something was found live and the work is left. */
export type Ending = 'finished' | 'stop' | 'left-live';

/** How a path ends that leads to the end this way. */
export function endingOf(step: Step, edge: Edge): Ending {
  if (step.verb === 'stop') return 'stop';
  const { outcome, taken } = edge;
  const isLive = outcome === undefined && taken.kind === 'outcome' && taken.outcome === 'live';
  return isLive ? 'left-live' : 'finished';
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
