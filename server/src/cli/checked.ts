import { finish } from '../model/work.ts';
import type { Analysis } from '../project/analysis.ts';
import { isShown } from '../model/finding.ts';
import type { Finding } from '../model/finding.ts';
import type { Exit } from './terminal.ts';

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

/** A finding that the author takes upon himself is shown and never counted. */
export function isWaived({ waived }: Finding): boolean {
  return waived !== undefined;
}

/** How many findings of a severity there are that count. */
export function count(checked: readonly CheckedFile[], severity: Finding['severity']): number {
  return checked
    .flatMap(({ findings }) => findings)
    .filter((finding) => finding.severity === severity && !isWaived(finding) && isShown(finding)).length;
}

/** 1 where an error counts, under `strict` also a warning, or where a bound was met; 2 where Ohmwright itself failed. */
export function exitOf(checked: readonly CheckedFile[], strict: boolean): Exit {
  if (checked.some(({ analysis }) => analysis.failure() !== null)) return 2;
  const isComplete = checked.every(({ complete }) => complete);
  const failing = count(checked, 'error') + (strict ? count(checked, 'warning') : 0);
  return isComplete && failing === 0 ? 0 : 1;
}
