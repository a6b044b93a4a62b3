import type { Work } from '../../bench/work.ts';
import type { Finding } from '../../text/finding.ts';
import { analyse } from '../analysis.ts';
import type { Analysis } from '../analysis.ts';
import { applyEdits } from '../edit.ts';
import type { Edit } from '../edit.ts';

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
  const old = counted(before);
  const left = counted(after);
  const name = nameOf(finding);
  const fresh = after.filter((one) => {
    // What could not be read was not looked at any further: it may well hold more, and that is told then.
    if (finding.stage === 'text' && one.stage !== 'text') return false;
    const known = old.get(nameOf(one)) ?? 0;
    old.set(nameOf(one), known - 1);
    return known <= 0;
  });
  return { text, analysis: tried, gone: (left.get(name) ?? 0) < (counted(before).get(name) ?? 0), fresh };
}

export function textOf(analysis: Analysis): string {
  return analysis.snapshot.files.get(analysis.file)?.text ?? '';
}

function counted(findings: readonly Finding[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const finding of findings) counts.set(nameOf(finding), (counts.get(nameOf(finding)) ?? 0) + 1);
  return counts;
}

/**
 * Equal for the same defect before and after steps were inserted: the count that tells like steps apart is left out, and
 * so is the step where the procedure ends, which is another one then.
 */
function nameOf({ key, severity, rule, subject = '' }: Finding): string {
  return `${severity} ${endRules.has(rule) ? `${rule} ${subject}` : key.replace(/ \(\d+\)/g, '')}`;
}

/** Rules about what a path leaves behind where it ends. */
export const endRules: ReadonlySet<string> = new Set([
  'not-restored',
  'codes-not-cleared',
  'repair-not-verified',
  'loop-not-verified',
]);
