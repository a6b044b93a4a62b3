import { outcomesOf } from '../text/good-outcomes.ts';
import type { Outcome } from '../text/procedure.ts';
import type { Context, Finder, Seen } from './rule.ts';
import { missingOutcomes } from './uncovered-check.ts';

/* Readings and inspections that name outcomes and go on in the same way whatever is found. */

export const noDifferenceFinder: Finder = { check: noDifference };

function noDifference(context: Context): readonly Seen[] {
  return context.graph.steps.flatMap((step, index): readonly Seen[] => {
    // A proof is no reading: what is live keeps hands away wherever it leads.
    if (step.verb === 'prove-dead' || !leadsToOne(outcomesOf(step))) return [];
    if (context.reached[index] !== true) return [];
    // Where an outcome is missing its place is still to be said, and may make the difference.
    if (missingOutcomes(context, step, index).length > 0) return [];
    const message =
      'Every outcome leads to the same step, so this step decides nothing. What is wrong goes on like what is good. ' +
      'Lead what is wrong to a step of its own, or take `outcomes` out.';
    return [{ index, issue: { rule: 'no-difference', underline: ['outcomes'], message } }];
  });
}

/** Whether all are known to lead to one place: `next` and the id of the step that follows are the same. */
function leadsToOne(outcomes: readonly Outcome[]): boolean {
  const [first] = outcomes;
  if (first === undefined || first.target === null) return false;
  return outcomes.every(({ target }) => target === first.target);
}
