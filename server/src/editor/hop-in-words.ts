import type { Analysis } from '../project/analysis.ts';
import type { Hop } from '../text/finding.ts';
import { stepInWords } from './step-in-words.ts';

/** One step of a path as a line: `step 3, read stage-1-loop: else`. */
export function hopInWords(analysis: Analysis, { step, taken }: Hop): string {
  const written = analysis.procedure().value.steps[step.number - 1];
  const what = written === undefined ? '' : `, ${stepInWords(written)}`;
  if (taken?.kind !== 'outcome') return `step ${step.number}${what}`;
  const outcome = taken.of === undefined ? taken.outcome : `${taken.of} ${taken.outcome}`;
  return `step ${step.number}${what}: ${outcome}`;
}
