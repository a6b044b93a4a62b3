import type { Finding } from '../text/finding.ts';
import type { CheckedFile } from './check.ts';
import { count } from './check.ts';
import { jsonTaken, placesOf, printJson } from './json.ts';
import type { Places } from './json.ts';
import { version } from './version.ts';

export function checkJson(checked: readonly CheckedFile[]): string {
  return printJson({
    document: 'check',
    version: 1,
    tool: version,
    complete: checked.every(({ complete }) => complete),
    summary: { errors: count(checked, 'error'), warnings: count(checked, 'warning'), waived: 0 },
    files: checked.map(({ analysis, findings }) => {
      const places = placesOf(analysis);
      return { file: analysis.file, findings: findings.map((finding) => jsonFinding(places, finding)) };
    }),
  });
}

function jsonFinding(places: Places, finding: Finding): unknown {
  const { trace, step } = finding;
  return {
    rule: finding.rule,
    severity: finding.severity,
    stage: finding.stage,
    message: finding.message,
    subject: finding.subject ?? null,
    step: step === undefined ? null : places.step(step),
    range: places.range(finding.at),
    path: (trace?.hops ?? []).map((hop) => ({ step: places.step(hop.step), ...jsonTaken(hop.taken) })),
    'repeats-from': trace?.repeatsFrom ?? null,
    related: finding.related.map(({ at, message }) => ({ message, file: at.file, range: places.range(at) })),
    waived: null,
    key: finding.key,
  };
}
