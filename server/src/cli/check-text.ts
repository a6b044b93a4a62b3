import { withPaths } from '../bench/told-path.ts';
import { gravestFirst } from '../rules/gravity.ts';
import { ruleMeaning } from './rule-meaning.ts';
import { endings, fileKindOf } from '../format/file-kinds.ts';
import type { PassedOver } from '../host/walk.ts';
import { isShown } from '../model/finding.ts';
import type { Finding } from '../model/finding.ts';
import { printable } from '../model/printable.ts';
import { stepNumber } from '../model/where.ts';
import type { FileId, StepRef } from '../model/where.ts';
import type { CheckedFile } from './checked.ts';
import { count, isWaived } from './checked.ts';
import { placesOf } from './json.ts';
import { namesOf, passedOverInWords } from './passed-over.ts';
import { pathText } from './path-text.ts';
import { plural } from './plural.ts';
import type { Places } from './json.ts';
import { paintFor } from './terminal.ts';
import type { Paint, Terminal } from './terminal.ts';
import { nothingUnwritten } from './unwritten.ts';
import type { Pieces } from './unwritten.ts';

/** Findings for people, of each file those by which somebody can be hurt first: where, what, the line itself with the place underlined, and the rule to read on. */
export function* checkText(
  terminal: Terminal,
  checked: readonly CheckedFile[],
  passedOver: readonly PassedOver[] = [],
): Pieces {
  const unwritten = nothingUnwritten();
  const paint = paintFor(terminal);
  for (const { analysis, findings } of checked) {
    const places = placesOf(analysis);
    const { value: procedure } = analysis.procedure();
    for (const finding of withPaths(gravestFirst(findings.filter(isShown)))) {
      const whole = unwritten.attempt(analysis.file, () =>
        block(paint, places, finding, pathText(paint, procedure, finding.trace)),
      );
      yield `${whole ?? withoutPlace(paint, finding)}\n`;
    }
  }
  yield [...hints(checked), summary(paint, checked)].join('\n');
  if (passedOver.length > 0) yield `Passed over: ${printable(passedOverInWords(passedOver))}.\n`;
  const unclear = checked.map(({ analysis }) => analysis.file).filter(saysNoKind);
  if (unclear.length > 0) yield `${readAsProcedures(unclear)}\n`;
  return unwritten.problems();
}

function saysNoKind(file: FileId): boolean {
  return fileKindOf(file.toLowerCase()) === null;
}

/** A folder or an editor would not have taken them, and a parts file among them is checked as something else. */
function readAsProcedures(files: readonly FileId[]): string {
  return `Read as a procedure, for the name does not say what it is: ${printable(namesOf(files))}. A name ends in ${endings.procedure[0] ?? ''} or ${endings.parts[0] ?? ''}.`;
}

function block(paint: Paint, places: Places, finding: Finding, path: readonly string[]): string {
  const { at, step, waived } = finding;
  const { start } = places.range(at);
  const number = step === undefined ? '' : paint.dim(`  step ${stepInWords(step)}`);
  const head = `${printable(at.file)}:${start.line + 1}:${start.character + 1}: ${severity(paint, finding)} ${paint.bold(finding.rule)}${number}`;
  const related = finding.related.map((one) => {
    const line = places.range(one.at).start.line + 1;
    const file = one.at.file === at.file ? '' : `${printable(one.at.file)} `;
    return `    ${paint.dim(`${file}line ${line}:`)} ${printable(one.message)}`;
  });
  const reason = waived === undefined ? [] : [`  ${paint.green('waived:')} ${printable(waived.reason)}`];
  return [
    head,
    `  ${printable(finding.message)}`,
    ...reason,
    ...excerpt(paint, places, finding),
    ...related,
    ...(path.length === 0 ? [] : [paint.dim('  The shortest way there:'), ...path]),
    '',
  ].join('\n');
}

/** What can always be said of a finding. */
function withoutPlace(paint: Paint, finding: Finding): string {
  const { at, rule, message } = finding;
  return `${printable(at.file)}: ${severity(paint, finding)} ${paint.bold(rule)}\n  ${printable(message)}\n`;
}

/** Its number; of a step in a routine that is not looked at from one of its calls, also the routine. */
function stepInWords(step: StepRef): string {
  const { routine, calls } = step;
  return routine === undefined || calls.length > 0 ? stepNumber(step) : `${stepNumber(step)} of ${routine}`;
}

function severity(paint: Paint, { severity: name }: Finding): string {
  switch (name) {
    case 'error':
      return paint.red(name);
    case 'warning':
      return paint.yellow(name);
    case 'information':
      return paint.cyan(name);
  }
}

/** No more of a line than this many characters is shown. */
const longest = 100;

function excerpt(paint: Paint, places: Places, finding: Finding): readonly string[] {
  const { start, end } = places.range(finding.at);
  const line = places
    .document(finding.at.file)
    .getText({ start: { line: start.line, character: 0 }, end: { line: start.line + 1, character: 0 } })
    .replace(/\r?\n?$/, '');
  if (line.trim() === '') return [];
  const from = Math.max(0, start.character - longest / 2);
  const to = Math.max(start.character + 1, Math.min(end.character, from + longest));
  const [before, marked, behind] = [
    line.slice(from, start.character),
    line.slice(start.character, to),
    line.slice(to, from + longest),
  ].map(printable) as [string, string, string];
  const gutter = String(start.line + 1);
  const mark = '^'.repeat(Math.max(1, marked.length));
  return [
    `  ${paint.dim(`${gutter} |`)} ${before}${marked}${behind}`,
    `  ${paint.dim(`${' '.repeat(gutter.length)} |`)} ${' '.repeat(before.length)}${paint.red(mark)}`,
  ];
}

/** One line for each rule that was met, so that a reader need not look it up for the first time. */
function hints(checked: readonly CheckedFile[]): readonly string[] {
  const names = [...new Set(checked.flatMap(({ findings }) => findings.map(({ rule }) => rule)))].sort();
  if (names.length === 0) return [];
  return [
    ...names.map((name) => `${name}: ${ruleMeaning(name)}`),
    'More of a rule: ohmwright rules NAME',
    '',
  ];
}

function summary(paint: Paint, checked: readonly CheckedFile[]): string {
  const errors = count(checked, 'error');
  const warnings = count(checked, 'warning');
  const informations = count(checked, 'information');
  const unfinished = checked.filter(({ complete }) => !complete).length;
  const toEnd = unfinished === 0 ? '' : `, ${unfinished} of them not to the end`;
  const files = `${plural(checked.length, 'file')} checked${toEnd}`;
  const waived = checked.flatMap(({ findings }) => findings).filter(isWaived).length;
  if (errors + warnings + informations + waived === 0) return paint.green(`${files}, no findings.\n`);
  const parts = [plural(errors, 'error'), plural(warnings, 'warning')];
  if (informations > 0) parts.push(`${informations} for information`);
  if (waived > 0) parts.push(`${waived} waived`);
  return paint.bold(`${files}: ${parts.join(', ')}.\n`);
}
