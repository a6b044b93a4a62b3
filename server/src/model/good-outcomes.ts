import { outcomeFacts } from './outcome-kinds.ts';
import type { Outcome, Step, Target } from './procedure.ts';

export function outcomesOf(step: Step): readonly Outcome[] {
  return 'outcomes' in step ? (step.outcomes ?? []) : [];
}

/**
 * The steps, by index, to which something good leads. What is wrong is never led there unasked: it would pass as right.
 * Where a step names no outcome for what is good, `else` is what is left for it.
 */
export function targetsOfGood(steps: readonly Step[]): ReadonlySet<Target> {
  const taken = steps.flatMap((step) => {
    const outcomes = outcomesOf(step);
    const named = outcomes.filter(({ name }) => outcomeFacts[name].isGood);
    return named.length > 0 ? named : outcomes.filter(({ name }) => name === 'else');
  });
  return new Set(taken.map(({ target }) => target));
}
