import type { Analysis } from '../project/analysis.ts';
import type { Hop } from '../text/finding.ts';
import { stepNumber } from '../text/where.ts';
import { stepInWords } from './step-in-words.ts';

/** One step of a path as a line: `step 3, read stage-1-loop: else`. */
export function hopInWords(analysis: Analysis, { step, index, taken }: Hop): string {
  const written = analysis.procedure().value.steps[index];
  const what = written === undefined ? '' : `, ${stepInWords(written)}`;
  if (taken?.kind !== 'outcome') return `step ${stepNumber(step)}${what}`;
  const outcome = taken.of === undefined ? taken.outcome : `${taken.of} ${taken.outcome}`;
  return `step ${stepNumber(step)}${what}: ${outcome}`;
}
