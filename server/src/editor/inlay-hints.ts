import { greatestOf } from '../quantity/extremes.ts';
import type { InlayHint, Range } from 'vscode-languageserver-types';
import type { Order } from '../project/analysis.ts';
import { formatWait } from '../quantity/quantity.ts';
import { entriesInWords } from '../readings/by-entry-in-words.ts';
import type { Reading, Readings } from '../readings/reading.ts';
import { printable } from '../model/printable.ts';
import type { Step } from '../model/procedure.ts';
import { grouped } from '../model/remembered.ts';
import { endOfLine, rangeOf } from './document.ts';
import type { EditorDocument } from './document.ts';

/** What the hints say of steps, by what a step does: it outlives a text that is half typed. */
export type HintTexts = ReadonlyMap<string, string>;

/** The window of every reading step, and the wait owed where it begins or is cut short. */
export function hintTexts(document: EditorDocument, readings: Readings, order: Order): HintTexts {
  const { analysis } = document;
  const { steps } = analysis.procedure().value;
  const texts = new Map<string, string[]>();
  const limits = new Map(analysis.proofs().map(({ index, limit }) => [index, limit]));
  const shown = grouped(
    readings.readings.flatMap((one) => (one.printed === '' ? [] : [[one.index, one] as const])),
  );
  const owed = grouped(order.owedAfter.map((one) => [one.index, one] as const));
  for (const [index, step] of steps.entries()) {
    const limit = limits.get(index) ?? null;
    const dead = limit === null ? null : `without voltage: between -${limit} and +${limit}`;
    const text = windowText(shown.get(index) ?? []) ?? dead ?? owedText(owed.get(index) ?? [], step);
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

/**
 * Hints for the lines asked for. While the text is broken, `earlier` stands in for steps of which nothing is known, and
 * says so.
 */
export function inlayHints(
  document: EditorDocument,
  range: Range,
  now: HintTexts,
  earlier: HintTexts | null,
): InlayHint[] {
  const { analysis } = document;
  const { steps } = analysis.procedure().value;
  const written = new Map(
    steps.filter(({ file }) => file === analysis.file).map((step) => [step.path.join('/'), step]),
  );
  return [...written.values()].flatMap((step): InlayHint[] => {
    const content = analysis.stepContent(step);
    const hint = hintNow(now.get(content)) ?? hintEarlier(earlier?.get(content));
    if (hint === null) return [];
    const { line } = rangeOf(document, {
      file: analysis.file,
      path: [...step.path, step.verb],
      part: 'key',
    }).start;
    if (line < range.start.line || line > range.end.line) return [];
    return [{ position: endOfLine(document, line), paddingLeft: true, ...hint }];
  });
}

type Said = Pick<InlayHint, 'label' | 'tooltip'>;

function hintNow(text: string | undefined): Said | null {
  return text === undefined ? null : { label: printable(text) };
}

function hintEarlier(text: string | undefined): Said | null {
  if (text === undefined) return null;
  return {
    label: `earlier: ${printable(text)}`,
    tooltip: 'From the last text without errors. It is not checked now.',
  };
}

function windowText(here: readonly Reading[]): string | null {
  const [first] = here;
  if (first === undefined) return null;
  if (here.length === 1) return `reads ${printedWith(first)}`;
  if (here.every((one) => printedWith(one) === printedWith(first))) return `each reads ${printedWith(first)}`;
  return here.map((one) => `${one.of} reads ${printedWith(one)}`).join(', ');
}

/** The whole window, whether it is wider than need be, and what narrows it. */
function printedWith(reading: Reading): string {
  const entries = entriesInWords(reading);
  const window = reading.exact ? reading.printed : `${reading.printed}, an outer bound`;
  return entries === '' ? window : `${window}, by ${entries}`;
}

function owedText(here: Order['owedAfter'], step: Step): string | null {
  const seconds = greatestOf(
    here.map((one) => one.seconds),
    0,
  );
  if (seconds === 0) return null;
  if (step.verb === 'wait') return `${formatWait(seconds)} still owed`;
  const proof = here.some(({ highVoltage }) => highVoltage.length > 0) ? ', then verify no voltage,' : '';
  return `wait ${formatWait(seconds)}${proof} before hands`;
}
