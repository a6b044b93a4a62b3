import type { Work } from '../model/work.ts';
import type { Finding } from '../model/finding.ts';
import type { StepRef } from '../model/where.ts';
import { analyse } from '../project/analysis.ts';
import type { Analysis } from '../project/analysis.ts';
import { applyEdits } from '../project/edit.ts';
import type { Edit } from '../project/edit.ts';

/** What a fix would do: it is tried on a copy before it is offered. */
export interface Trial {
  readonly text: string;
  readonly analysis: Analysis;
  /** Whether there is one less of the finding. */
  readonly gone: boolean;
  /** Findings that were not there before. */
  readonly fresh: readonly Finding[];
}

export function* tryEdits(analysis: Analysis, finding: Finding, edits: readonly Edit[]): Work<Trial> {
  return yield* tryText(analysis, finding, applyEdits(textOf(analysis), edits));
}

/** Holds a text that is to take the place of the analysed one against it. */
export function* tryText(analysis: Analysis, finding: Finding, text: string): Work<Trial> {
  const before = yield* analysis.findings('order');
  const tried = analyse(analysis.snapshot.with({ id: analysis.file, text }), analysis.file);
  const after = yield* tried.findings('order');
  const [nameBefore, nameAfter] = [namesIn(analysis), namesIn(tried)];
  const old = counted(before, nameBefore);
  const left = counted(after, nameAfter);
  const name = nameBefore(finding);
  // What is not found because it was not looked for is not gone.
  const isGone = tried.failure() === null && (left.get(name) ?? 0) < (old.get(name) ?? 0);
  const fresh = after.filter((one) => {
    // What could not be read was not looked at any further: it may well hold more, and that is told then.
    if (finding.stage === 'text' && one.stage !== 'text') return false;
    const known = old.get(nameAfter(one)) ?? 0;
    old.set(nameAfter(one), known - 1);
    return known <= 0;
  });
  return { text, analysis: tried, gone: isGone, fresh };
}

export function textOf(analysis: Analysis): string {
  return analysis.snapshot.files.get(analysis.file)?.text ?? '';
}

function counted(findings: readonly Finding[], nameOf: (finding: Finding) => string): Map<string, number> {
  const counts = new Map<string, number>();
  for (const finding of findings) {
    const name = nameOf(finding);
    counts.set(name, (counts.get(name) ?? 0) + 1);
  }
  return counts;
}

/**
 * Names that are equal for the same defect before and after steps were inserted. Steps are named by what they do: the id
 * that jumps lead to may move to another one. Where the procedure ends is left out, for it is another step then.
 */
function namesIn(analysis: Analysis): (finding: Finding) => string {
  const text = textOf(analysis);
  const acts = new Map<string, string>();
  const actAt = ({ file, path }: StepRef): string => acts.get(`${file} ${path.join()}`) ?? path.join();
  for (const { file, path, verb } of analysis.procedure().value.steps) {
    if (file !== analysis.file) continue;
    const { from, to } = analysis.range({ file, path: [...path, verb], part: 'value' });
    acts.set(`${file} ${path.join()}`, `${verb} ${text.slice(from, to)}`);
  }
  return ({ severity, rule, step, subject = '' }) => {
    const act = step === undefined || endRules.has(rule) ? '' : actAt(step);
    return `${severity} ${rule} ${act} ${subject}`;
  };
}

/** Rules about what a path leaves behind where it ends. */
export const endRules: ReadonlySet<string> = new Set([
  'not-restored',
  'codes-not-cleared',
  'repair-not-verified',
  'loop-not-verified',
]);
