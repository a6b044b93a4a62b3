import { gravityOf } from '../rules/gravity.ts';
import type { Finding } from '../model/finding.ts';
import type { Range, Where } from '../model/where.ts';

/** Findings by file and position; at one position errors first, and of these the gravest. */
export function inOrder(findings: readonly Finding[], range: (where: Where) => Range): readonly Finding[] {
  const severities = ['error', 'warning', 'information'];
  const placed = findings.map((finding) => ({ finding, range: range(finding.at) }));
  placed.sort(
    (a, b) =>
      byText(a.finding.at.file, b.finding.at.file) ||
      a.range.from - b.range.from ||
      a.range.to - b.range.to ||
      severities.indexOf(a.finding.severity) - severities.indexOf(b.finding.severity) ||
      gravityOf(a.finding) - gravityOf(b.finding) ||
      byText(a.finding.rule, b.finding.rule) ||
      byText(a.finding.subject ?? '', b.finding.subject ?? ''),
  );
  return placed.map(({ finding }) => finding);
}

function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
