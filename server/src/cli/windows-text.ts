import { windowAt, windowsOver } from '../readings/at-entered.ts';
import { benchInWords } from '../readings/bench-in-words.ts';
import { rowInWords } from '../readings/by-entry-in-words.ts';
import type { Explanation } from '../readings/explain.ts';
import { assumedInWords, likelyInWords, shareBars } from '../readings/explanation-in-words.ts';
import { amountInWords, remarksInWords, shownInWords } from '../readings/shown-in-words.ts';
import type { Code } from '../readings/codes.ts';
import { guardedInWords } from '../readings/guarded.ts';
import type { GoodOnBench, Reading, Readings } from '../readings/reading.ts';
import type { Analysis } from '../project/analysis.ts';
import type { Finding } from '../model/finding.ts';
import { printable } from '../model/printable.ts';
import { stepInWords } from '../model/step-in-words.ts';
import type { Procedure, Quantity } from '../model/procedure.ts';
import { stepNumber } from '../model/where.ts';
import { isStandingError } from '../model/finding.ts';
import type { Entered } from './entered.ts';
import { plural } from './plural.ts';
import { paintFor } from './terminal.ts';
import { readingsAsked } from './windows-asked.ts';
import type { Asked } from './windows-asked.ts';
import type { Paint, Terminal } from './terminal.ts';

/** A block for each reading step: the window, then what a sound circuit shows on each bench. */
export function windowsText(
  terminal: Terminal,
  analysis: Analysis,
  readings: Readings,
  findings: readonly Finding[],
  asked: Asked,
): string {
  const paint = paintFor(terminal);
  const procedure = analysis.procedure().value;
  const all = readingsAsked(readings, asked);
  const blocks = procedure.steps.flatMap((step, index) => {
    if (!asked.steps.has(index)) return [];
    const here = all.filter((reading) => reading.index === index);
    const codes = readings.codes.find((one) => one.index === index)?.codes ?? [];
    if (here.length === 0 && codes.length === 0) return [];
    const id = step.id === undefined ? '' : paint.dim(`  ${step.id}`);
    return [
      `${paint.bold(`Step ${stepNumber(step)}`)}  ${printable(stepInWords(step))}${id}`,
      ...here.flatMap((reading) => [
        ...readingLines(paint, reading),
        ...enteredLines(paint, procedure, reading, asked.entered),
        ...goodLines(paint, reading),
        ...whyLines(paint, reading, asked.explanation(reading)),
      ]),
      ...codes.map((code) => paint.dim(`  ${codeInWords(code)}`)),
      '',
    ];
  });
  const errors = findings.filter(isStandingError).length;
  const closing =
    errors === 0 ? [] : [`${plural(errors, 'error')} in this file: see \`ohmwright check\`.`, ''];
  if (blocks.length === 0) return ['No step reads or measures anything.', '', ...closing].join('\n');
  return [...blocks, ...closing].join('\n');
}

function readingLines(paint: Paint, reading: Reading): readonly string[] {
  const { instrument, of } = reading;
  const by = instrument === null ? '' : ` on ${instrument.id}`;
  const printed = reading.printed === '' ? 'not known' : reading.printed;
  const from = reading.accepted !== null && reading.accepted !== 'open' && reading.accepted.from === 'expect';
  const head = `  ${of}${by}  ${paint.green(printed)}${from ? paint.dim('  as stated') : ''}`;
  return [head];
}

/** The window at what was entered, else at some values that may be. */
function enteredLines(
  paint: Paint,
  procedure: Procedure,
  reading: Reading,
  entered: Entered,
): readonly string[] {
  const entries = reading.byEntry[0]?.bands.map(({ entry }) => entry) ?? [];
  if (entries.length === 0) return [];
  const row = windowAt(procedure, reading, entered);
  if (row !== null) return [`    ${paint.green(rowInWords(row))}`];
  const how = entries.map((entry) => `--entry ${entry}=VALUE`).join(' ');
  return [
    ...windowsOver(procedure, reading).map((one) => `    ${rowInWords(one)}`),
    paint.dim(`    between these and to the degree: ${how}`),
  ];
}

function goodLines(paint: Paint, { good, quantity }: Reading): readonly string[] {
  return good.map((one) => paint.dim(`    ${goodInWords(one, quantity)}`));
}

function whyLines(paint: Paint, reading: Reading, explanation: Explanation | null): readonly string[] {
  if (explanation === null) return [];
  const guarded = guardedInWords(reading);
  const where = reading.good.length > 1 ? ` (${benchInWords(explanation.bench)})` : '';
  const bars = shareBars(explanation);
  return [
    ...likelyInWords(explanation).map((line) => `    ${line}${where}`),
    ...(guarded === null ? [] : [`    ${guarded}${where}`]),
    ...(bars.length === 0 ? [] : [`    its width comes from`, ...bars.map((line) => `      ${line}`)]),
    '    assumed',
    ...assumedInWords(explanation).map((line) => paint.dim(`      ${line}`)),
  ];
}

function goodInWords(good: GoodOnBench, quantity: Quantity): string {
  const { arrival, indication } = good;
  const nominal = indication?.value?.nominal;
  const middle = nominal === undefined ? '' : `, nominal ${amountInWords(nominal, quantity)}`;
  return `${benchInWords(arrival.state)}: ${shownInWords(indication, quantity)}${middle}${remarksInWords(good)}`;
}

function codeInWords({ loop, code, certain }: Code): string {
  return `${certain ? 'expect' : 'possible:'} a code for ${loop}: ${code}`;
}
