import { outcomesOf } from '../../model/good-outcomes.ts';
import type { Outcome } from '../../model/procedure.ts';
import { example } from '../examples.ts';
import type { Context, Rule, Seen } from '../rule.ts';
import { missingOutcomes } from './uncovered.ts';

/* Readings and inspections that name outcomes and go on in the same way whatever is found. */

const read = `
- ignition: on
- read-codes: control-unit
- clear-codes: control-unit
- read: driver-loop
`;

export const noDifference: Rule = {
  name: 'no-difference',
  severity: 'warning',
  stage: 'order',
  meaning: 'A reading or an inspection of which all outcomes lead to one step.',
  why: 'What is found then changes nothing: a fault is seen, and the work goes on as if there were none. A reading that is only to be written down has no `outcomes`.',
  source: 'a guard of this program',
  finder: { check: findUndecided },
  examples: {
    triggers: example(
      'a loop that reads wrong goes on like a good one',
      `${read}  outcomes: { within: next, else: next }
`,
    ),
    passes: example(
      'a loop that reads wrong ends the work',
      `${read}  outcomes: { within: next, else: faulty }
- stop: The loop is sound.
- stop: The loop is not sound. Ask the workshop lead.
  id: faulty
`,
    ),
  },
};

function findUndecided(context: Context): readonly Seen[] {
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
