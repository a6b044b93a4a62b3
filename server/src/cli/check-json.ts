import type { PassedOver } from '../host/walk.ts';
import { withPaths } from '../bench/told-path.ts';
import type { Finding } from '../model/finding.ts';
import type { Where } from '../model/where.ts';
import type { CheckedFile } from './checked.ts';
import { count, isWaived } from './checked.ts';
import { jsonList, jsonTaken, jsonText, placesOf } from './json.ts';
import type { JsonRange, Places } from './json.ts';
import { version } from '../project/version.ts';
import { nothingUnwritten } from './unwritten.ts';
import type { Pieces } from './unwritten.ts';

/** One document, in pieces, a line for each finding. What it says of all of them stands at its end. */
export function* checkJson(checked: readonly CheckedFile[], passedOver: readonly PassedOver[] = []): Pieces {
  const unwritten = nothingUnwritten();
  yield `${jsonText({ document: 'check', version: 1, tool: version }).slice(0, -1)},"files":[`;
  for (const [index, { analysis, findings }] of checked.entries()) {
    const { file } = analysis;
    const places = placesOf(analysis);
    yield `${index === 0 ? '' : ','}\n{"file":${jsonText(file)},"findings":`;
    yield* jsonList(withPaths(findings), (finding) =>
      unwritten.attempt(file, () => jsonFinding(places, finding)),
    );
    yield '}';
  }
  const end = {
    complete: checked.every(({ complete }) => complete) && unwritten.problems().length === 0,
    summary: {
      errors: count(checked, 'error'),
      warnings: count(checked, 'warning'),
      waived: checked.flatMap(({ findings }) => findings).filter(isWaived).length,
    },
    'passed-over': passedOver.map(({ path, why, problem }) => ({
      file: path,
      why,
      problem: problem ?? null,
    })),
  };
  yield `],${jsonText(end).slice(1)}\n`;
  return unwritten.problems();
}

function jsonFinding(places: Places, finding: Finding): string {
  const { trace, step, waived } = finding;
  return jsonText({
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
    consequences: finding.consequences ?? [],
    because: finding.because ?? null,
    key: finding.key,
  });
}

function place(places: Places, at: Where): { readonly file: string; readonly range: JsonRange } {
  return { file: at.file, range: places.range(at) };
}
