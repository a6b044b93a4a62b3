import type { Outcome, Procedure, Step, Target } from '../../text/procedure.ts';
import { stepNumber } from '../../text/where.ts';
import { stepOf } from './along-trace.ts';
import type { Candidate, Mender } from './candidate.ts';

/** What shows nothing wrong. */
const good: ReadonlySet<string> = new Set(['within', 'ok', 'none', 'dead']);

/**
 * What the step does not name can be anything but good, so it never goes where something good does: a reading that is
 * wrong would pass as right. It may go where the step sends something else, to a stop, or to another step behind it that
 * has an id. Which of them is for the author to say.
 */
export const addElse: Mender = (analysis, finding) => {
  const procedure = analysis.procedure().value;
  const step = stepOf(procedure, finding);
  if (step === null) return [];
  const spared = new Set<Target>(procedure.steps.flatMap(goodOf).map(({ target }) => target));
  const bad = new Set<Target>(outcomesOf(step).map(({ target }) => target));
  const named = namedBeside(procedure, step).filter(({ index }) => !spared.has(index));
  const inOrder = [
    ...named.filter(({ index }) => bad.has(index)),
    ...named.filter(({ index, verb }) => !bad.has(index) && verb === 'stop'),
    ...named.filter(({ index, verb }) => !bad.has(index) && verb !== 'stop' && index > step.index),
  ];
  return [...new Set(inOrder.map(({ id }) => id))].map((id): Candidate => ({
    title: `Lead everything else at step ${stepNumber(step)} to \`${id}\``,
    changes: [{ kind: 'outcome', index: step.index, outcome: `else: ${id}` }],
    isChoice: true,
  }));
};

function outcomesOf(step: Step): readonly Outcome[] {
  return 'outcomes' in step ? (step.outcomes ?? []) : [];
}

/** The outcomes that something good takes: where none is named for it, `else` is what is left. */
function goodOf(step: Step): readonly Outcome[] {
  const outcomes = outcomesOf(step);
  const named = outcomes.filter(({ name }) => good.has(name));
  return named.length > 0 ? named : outcomes.filter(({ name }) => name === 'else');
}

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
