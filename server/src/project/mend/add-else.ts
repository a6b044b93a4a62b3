import { outcomeFacts } from '../../text/outcome-kinds.ts';
import type { Outcome, Procedure, Step } from '../../text/procedure.ts';
import { stepNumber } from '../../text/where.ts';
import { stepOf } from './along-trace.ts';
import type { Candidate, Mender } from './candidate.ts';
import { textOf } from './trial.ts';

/** Where what shows nothing wrong leads, nothing that the step does not name may lead. */
function isGood({ name }: Outcome): boolean {
  return outcomeFacts[name].isGood;
}

/**
 * What the step does not name goes where it sends everything else that is not good, if that is one place. Otherwise the
 * author has to say whether it goes to one of those places, to a stop that nothing good leads to, or on.
 */
export const addElse: Mender = (analysis, finding) => {
  const procedure = analysis.procedure().value;
  const step = stepOf(procedure, finding);
  if (step === null) return [];
  const outcomes = 'outcomes' in step ? (step.outcomes ?? []) : [];
  const written = (one: Outcome): string => {
    const { from, to } = analysis.range({ file: step.file, path: one.path, part: 'value' });
    return textOf(analysis).slice(from, to);
  };
  const bad = [...new Set(outcomes.filter((one) => !isGood(one)).map(written))];
  const stops = stopsBeside(procedure, step).filter((id) => !bad.includes(id));
  const way = (to: string, isChoice: boolean): Candidate => ({
    title: `Lead everything else at step ${stepNumber(step)} to \`${to}\``,
    changes: [{ kind: 'outcome', index: step.index, outcome: `else: ${to}` }],
    isChoice,
  });
  return [
    ...bad.map((to) => way(to, bad.length > 1)),
    ...stops.map((to) => way(to, true)),
    ...(bad.includes('next') ? [] : [way('next', true)]),
  ];
};

/** The ids of stops in the same list of steps that no good outcome leads to. */
function stopsBeside({ steps }: Procedure, { routine }: Step): readonly string[] {
  const spared = new Set(
    steps.flatMap((step) =>
      'outcomes' in step ? (step.outcomes ?? []).filter(isGood).map(({ target }) => target) : [],
    ),
  );
  const ids = steps
    .filter(({ verb, index, routine: itsOwn }) => verb === 'stop' && itsOwn === routine && !spared.has(index))
    .flatMap(({ id }) => id ?? []);
  return [...new Set(ids)];
}
