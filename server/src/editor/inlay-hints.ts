import { greatestOf } from '../quantity/extremes.ts';
import type { InlayHint, Range } from 'vscode-languageserver-types';
import type { Order } from '../project/analysis.ts';
import { formatWait } from '../quantity/quantity.ts';
import { printedProofs } from '../readings/proof.ts';
import { entriesInWords } from '../readings/by-entry-in-words.ts';
import type { Reading, Readings } from '../readings/reading.ts';
import type { Step } from '../text/procedure.ts';
import { endOfLine, rangeOf } from './document.ts';
import type { EditorDocument } from './document.ts';

/** What the hints say of steps, by what a step does: it outlives a text that is half typed. */
export type HintTexts = ReadonlyMap<string, string>;

/** The window of every reading step, and the wait owed where it begins or is cut short. */
export function hintTexts(document: EditorDocument, readings: Readings, order: Order): HintTexts {
  const { analysis } = document;
  const { steps } = analysis.procedure().value;
  const texts = new Map<string, string[]>();
  const proofs = printedProofs(analysis.procedure().value);
  for (const [index, step] of steps.entries()) {
    const limit = proofs.find((proof) => proof.index === index)?.limit;
    const dead = limit === undefined || limit === null ? null : `dead: ${limit}`;
    const text = windowText(readings, index) ?? dead ?? owedText(order, index, step);
    if (text === null) continue;
    const content = analysis.stepContent(step);
    const known = texts.get(content) ?? [];
    if (!known.includes(text)) texts.set(content, [...known, text]);
  }
  return new Map([...texts].map(([content, each]) => [content, joined(each)]));
}

/** A step of a routine may say something else as each call does it. */
function joined(each: readonly string[]): string {
  return each.length <= mostTexts ? each.join(' / ') : `${each.slice(0, mostTexts).join(' / ')} / …`;
}

const mostTexts = 3;

/** Hints for the lines asked for. `earlier` stands in for steps of which nothing is known while the text is broken. */
export function inlayHints(
  document: EditorDocument,
  range: Range,
  now: HintTexts,
  earlier: HintTexts,
): InlayHint[] {
  const { analysis } = document;
  const { steps } = analysis.procedure().value;
  const written = new Map(
    steps.filter(({ file }) => file === analysis.file).map((step) => [step.path.join('/'), step]),
  );
  return [...written.values()].flatMap((step): InlayHint[] => {
    const content = analysis.stepContent(step);
    const text = now.get(content) ?? earlier.get(content);
    if (text === undefined) return [];
    const { line } = rangeOf(document, {
      file: analysis.file,
      path: [...step.path, step.verb],
      part: 'key',
    }).start;
    if (line < range.start.line || line > range.end.line) return [];
    return [{ position: endOfLine(document, line), label: text, paddingLeft: true }];
  });
}

function windowText({ readings }: Readings, index: number): string | null {
  const here = readings.filter((reading) => reading.index === index && reading.printed !== '');
  const [first] = here;
  if (first === undefined) return null;
  if (here.length === 1) return `reads ${printedWith(first)}`;
  if (here.every((one) => printedWith(one) === printedWith(first))) return `each reads ${printedWith(first)}`;
  return here.map((one) => `${one.of} reads ${printedWith(one)}`).join(', ');
}

/** The whole window, and what narrows it. */
function printedWith(reading: Reading): string {
  const entries = entriesInWords(reading);
  return entries === '' ? reading.printed : `${reading.printed}, by ${entries}`;
}

function owedText({ owedAfter }: Order, index: number, step: Step): string | null {
  const here = owedAfter.filter((one) => one.index === index);
  const seconds = greatestOf(
    here.map((one) => one.seconds),
    0,
  );
  if (seconds === 0) return null;
  if (step.verb === 'wait') return `${formatWait(seconds)} still owed`;
  const proof = here.some(({ highVoltage }) => highVoltage.length > 0) ? ' and the proof' : '';
  return `wait ${formatWait(seconds)}${proof} before hands`;
}
