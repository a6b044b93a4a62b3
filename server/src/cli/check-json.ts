import { withPaths } from '../bench/told-path.ts';
import type { Finding } from '../text/finding.ts';
import type { Where } from '../text/where.ts';
import type { CheckedFile } from './checked.ts';
import { count, isWaived } from './checked.ts';
import { jsonList, jsonTaken, placesOf } from './json.ts';
import type { JsonRange, Places } from './json.ts';
import { version } from './version.ts';

/** One document, in pieces, a line for each finding. */
export function* checkJson(checked: readonly CheckedFile[]): Generator<string> {
  const head = {
    document: 'check',
    version: 1,
    tool: version,
    complete: checked.every(({ complete }) => complete),
    summary: {
      errors: count(checked, 'error'),
      warnings: count(checked, 'warning'),
      waived: checked.flatMap(({ findings }) => findings).filter(isWaived).length,
    },
  };
  yield `${JSON.stringify(head).slice(0, -1)},"files":[`;
  for (const [index, { analysis, findings }] of checked.entries()) {
    const places = placesOf(analysis);
    yield `${index === 0 ? '' : ','}\n{"file":${JSON.stringify(analysis.file)},"findings":`;
    yield* jsonList(withPaths(findings), (finding) => jsonFinding(places, finding));
    yield '}';
  }
  yield ']}\n';
}

function jsonFinding(places: Places, finding: Finding): unknown {
  const { trace, step, waived } = finding;
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
    related: finding.related.map(({ at, message }) => ({ message, ...place(places, at) })),
    waived: waived === undefined ? null : { reason: waived.reason, ...place(places, waived.at) },
    key: finding.key,
  };
}

function place(places: Places, at: Where): { readonly file: string; readonly range: JsonRange } {
  return { file: at.file, range: places.range(at) };
}
