import { outcomesOf, targetsOfGood } from '../model/good-outcomes.ts';
import type { Procedure, Step } from '../model/procedure.ts';
import { stepNumber } from '../model/where.ts';
import { stepOf } from './along-trace.ts';
import type { Candidate, Mender } from './candidate.ts';

/**
 * What the step does not name can be anything but good, so it never goes where something good does: a reading that is
 * wrong would pass as right. It may go where the step sends something else, to a stop, or to another step behind it that
 * has an id. Which of them is for the author to say.
 */
export const addElse: Mender = (analysis, finding) => {
  const procedure = analysis.procedure().value;
  const step = stepOf(procedure, finding);
  if (step === null) return [];
  const ownGood = targetsOfGood([step]);
  const bad = outcomesOf(step).filter(({ target }) => !ownGood.has(target));
  const named = namedBeside(procedure, step);
  const anyGood = targetsOfGood(procedure.steps);
  const others = named.filter(({ index }) => !anyGood.has(index));
  const inOrder = [
    ...named.filter(({ index }) => bad.some(({ target }) => target === index)),
    ...others.filter(({ verb }) => verb === 'stop'),
    ...others.filter(({ index }) => index > step.index),
  ];
  return [...new Set(inOrder.map(({ id }) => id))].map((id): Candidate => ({
    title: `Lead everything else at step ${stepNumber(step)} to \`${id}\``,
    changes: [{ kind: 'outcome', index: step.index, outcome: `else: ${id}` }],
    isChoice: true,
  }));
};

/** The steps of the same list that have an id; of a routine those of the same call. */
function namedBeside(
  { steps }: Procedure,
  { routine, calls }: Step,
): readonly (Step & { readonly id: string })[] {
  const callOf = (all: Step['calls']): string => all.map(stepNumber).join();
  return steps.flatMap((step) =>
    step.id !== undefined && step.routine === routine && callOf(step.calls) === callOf(calls)
      ? [{ ...step, id: step.id }]
      : [],
  );
}
