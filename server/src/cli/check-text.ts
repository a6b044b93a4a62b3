import { withPaths } from '../bench/told-path.ts';
import { ruleMeaning } from './rule-meaning.ts';
import type { Finding } from '../text/finding.ts';
import { printable } from '../text/printable.ts';
import { stepNumber } from '../text/where.ts';
import type { StepRef } from '../text/where.ts';
import type { CheckedFile } from './checked.ts';
import { count, isWaived } from './checked.ts';
import { placesOf } from './json.ts';
import { pathText } from './path-text.ts';
import { plural } from './plural.ts';
import type { Places } from './json.ts';
import { paintFor } from './terminal.ts';
import type { Paint, Terminal } from './terminal.ts';

/** Findings for people: where, what, the line itself with the place underlined, and the rule to read on. */
export function* checkText(terminal: Terminal, checked: readonly CheckedFile[]): Generator<string> {
  const paint = paintFor(terminal);
  for (const { analysis, findings } of checked) {
    const places = placesOf(analysis);
    const { value: procedure } = analysis.procedure();
    for (const finding of withPaths(findings)) {
      const path = pathText(paint, procedure, finding.trace);
      yield `${block(paint, places, finding, path)}\n`;
    }
  }
  yield [...hints(checked), summary(paint, checked)].join('\n');
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
  const shown = printable(line.slice(from, from + longest));
  const width = Math.max(1, Math.min(end.character, line.length) - start.character);
  const gutter = String(start.line + 1);
  const mark = '^'.repeat(Math.min(width, longest - (start.character - from)));
  return [
    `  ${paint.dim(`${gutter} |`)} ${shown}`,
    `  ${paint.dim(`${' '.repeat(gutter.length)} |`)} ${' '.repeat(start.character - from)}${paint.red(mark)}`,
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
  const files = plural(checked.length, 'file');
  const waived = checked.flatMap(({ findings }) => findings).filter(isWaived).length;
  if (errors + warnings + informations + waived === 0) return paint.green(`${files} checked, no findings.\n`);
  const parts = [plural(errors, 'error'), plural(warnings, 'warning')];
  if (informations > 0) parts.push(`${informations} for information`);
  if (waived > 0) parts.push(`${waived} waived`);
  return paint.bold(`${files} checked: ${parts.join(', ')}.\n`);
}
