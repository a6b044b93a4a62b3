import type { Outcome, Procedure, Target } from '../../server/src/model/procedure.ts';

/* The steps as a plain graph: which outcome or succession leads where, whatever the circuit would show. */

export interface Way {
  readonly to: Target;
  readonly outcome: Outcome | null;
  /** Nothing is said of it and something is live: the work is left as it is. */
  readonly isLeft?: true;
}

export function waysOut(procedure: Procedure, index: number): Way[] {
  const step = procedure.steps[index];
  const next: Way = { to: index + 1 < procedure.steps.length ? index + 1 : 'end', outcome: null };
  if (step === undefined || step.verb === 'broken' || step.verb === 'stop') return [];
  if (step.verb === 'prove-dead') {
    const stated = step.outcomes.map((outcome): Way => ({ to: outcome.target, outcome }));
    const says = (name: string): boolean => step.outcomes.some((outcome) => outcome.name === name);
    if (!says('dead')) stated.push({ ...next, outcome: { name: 'dead', target: next.to, path: [] } });
    if (!says('live'))
      stated.push({ to: 'end', outcome: { name: 'live', target: 'end', path: [] }, isLeft: true });
    return stated;
  }
  if (step.verb === 'go') return [{ to: step.to, outcome: null }];
  if (
    step.verb === 'read' ||
    step.verb === 'measure' ||
    step.verb === 'wiggle' ||
    step.verb === 'read-codes' ||
    step.verb === 'inspect'
  )
    return step.outcomes?.map((outcome) => ({ to: outcome.target, outcome })) ?? [next];
  return [next];
}

const stepsAfter = (procedure: Procedure, index: number): number[] =>
  waysOut(procedure, index)
    .map((way) => way.to)
    .filter((to) => typeof to === 'number');

/** All that can be reached from a step, itself only by a way back to it. */
function reachedFrom(procedure: Procedure, from: number, without: (index: number) => boolean): Set<number> {
  const found = new Set<number>();
  const waiting = stepsAfter(procedure, from).filter((index) => !without(index));
  for (let index = waiting.pop(); index !== undefined; index = waiting.pop()) {
    if (found.has(index)) continue;
    found.add(index);
    waiting.push(...stepsAfter(procedure, index).filter((after) => !without(after)));
  }
  return found;
}

const nothing = (): boolean => false;

export function reachable(procedure: Procedure): Set<number> {
  if (procedure.steps.length === 0) return new Set();
  return reachedFrom(procedure, 0, nothing).add(0);
}

/** A path can end at this very step, or its continuation is not known. */
function canEndAt(procedure: Procedure, index: number): boolean {
  const verb = procedure.steps[index]?.verb;
  const ways = waysOut(procedure, index);
  return verb === 'stop' || verb === 'broken' || ways.some((way) => way.to === 'end' || way.to === null);
}

/** A reachable step that could not be read, or one that leads to an id that nothing carries. */
export function pathsAreCut(procedure: Procedure): boolean {
  return [...reachable(procedure)].some(
    (index) =>
      procedure.steps[index]?.verb === 'broken' || waysOut(procedure, index).some((way) => way.to === null),
  );
}

export function unreachableSteps(procedure: Procedure): number[] {
  if (pathsAreCut(procedure)) return [];
  const reached = reachable(procedure);
  return [...procedure.steps.keys()].filter((index) => !reached.has(index));
}

export function endlessSteps(procedure: Procedure): number[] {
  const reached = [...reachable(procedure)];
  const ends = (index: number): boolean =>
    [index, ...reachedFrom(procedure, index, nothing)].some((each) => canEndAt(procedure, each));
  return reached.filter(
    (index) =>
      !ends(index) &&
      (index === 0 ||
        reached.some((before) => stepsAfter(procedure, before).includes(index) && ends(before))),
  );
}

export function repeatingSteps(procedure: Procedure): number[] {
  const changes = (index: number): boolean =>
    ['do', 'inspect', 'replace', 'prove-dead', 'wiggle'].includes(procedure.steps[index]?.verb ?? '');
  const reached = [...reachable(procedure)].filter((index) => !changes(index));
  const ahead = new Map(reached.map((index) => [index, reachedFrom(procedure, index, changes)]));
  const inCycle = reached.filter((index) => ahead.get(index)?.has(index));
  const sameCycle = (a: number, b: number): boolean =>
    ahead.get(a)?.has(b) === true && ahead.get(b)?.has(a) === true;
  return inCycle.filter((index) => inCycle.every((other) => other >= index || !sameCycle(index, other)));
}
