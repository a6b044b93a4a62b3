import { finish } from '../bench/work.ts';
import type { Analysis } from '../project/analysis.ts';
import type { Finding } from '../text/finding.ts';

/** What was found in one file. */
export interface CheckedFile {
  readonly analysis: Analysis;
  readonly findings: readonly Finding[];
  readonly complete: boolean;
}

export function checkFile(analysis: Analysis): CheckedFile {
  const findings = finish(analysis.findings('order'));
  return { analysis, findings, complete: finish(analysis.order()).complete };
}

/** How many findings of a severity there are. */
export function count(checked: readonly CheckedFile[], severity: Finding['severity']): number {
  return checked.flatMap(({ findings }) => findings).filter((finding) => finding.severity === severity)
    .length;
}
