import type { InlayHint, Range } from 'vscode-languageserver-types';
import type { Order } from '../project/analysis.ts';
import { formatWait } from '../quantity/quantity.ts';
import type { Readings } from '../readings/reading.ts';
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
  for (const [index, step] of steps.entries()) {
    const text = windowText(readings, index) ?? owedText(order, index, step);
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
  if (here.length === 1) return `reads ${first.printed}`;
  if (here.every(({ printed }) => printed === first.printed)) return `each reads ${first.printed}`;
  return here.map(({ loop, printed }) => `${loop.id} reads ${printed}`).join(', ');
}

function owedText({ owedAfter }: Order, index: number, step: Step): string | null {
  const seconds = Math.max(0, ...owedAfter.filter((one) => one.index === index).map((one) => one.seconds));
  if (seconds === 0) return null;
  return step.verb === 'wait'
    ? `${formatWait(seconds)} still owed`
    : `wait ${formatWait(seconds)} before hands`;
}
