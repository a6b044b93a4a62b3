import { MarkupKind } from 'vscode-languageserver-types';
import type { Hover, Position } from 'vscode-languageserver-types';
import type { Work } from '../model/work.ts';
import type { Analysis } from '../project/analysis.ts';
import type { Procedure, Step } from '../model/procedure.ts';
import { stepNumber } from '../model/where.ts';
import type { FileId, Path } from '../model/where.ts';
import { toRange } from './document.ts';
import type { EditorDocument } from './document.ts';
import { describeId } from './hover-id.ts';
import { describeKey } from './hover-key.ts';
import { describeReading } from './hover-reading.ts';
import { describeCodes, describeOwed } from './hover-step.ts';
import { markdown } from './markdown.ts';
import type { Markdown } from './markdown.ts';

/** A step of a routine is told for no more of its calls than this. */
const mostCalls = 6;

/** Whether a path leads to the verb of a step, or to what follows it. */
function isVerbOf(step: Step, path: Path, file: FileId): boolean {
  const verb = [...step.path, step.verb];
  return step.file === file && verb.every((key, at) => path[at] === key);
}

function* aboutStep(analysis: Analysis, step: Step): Work<readonly Markdown[]> {
  const blocks = [
    ...(yield* describeReading(analysis, step.index)),
    ...describeOwed((yield* analysis.order()).value, step.index, step),
    ...describeCodes((yield* analysis.windows()).value, step.index),
  ];
  if (step.calls.length === 0 || blocks.length === 0) return blocks;
  return [markdown`As step ${stepNumber(step)}:`, ...blocks];
}

function aboutId(procedure: Procedure, written: string): readonly Markdown[] {
  const words = describeId(procedure, written);
  return words === null ? [] : [markdown`**${written}**: ${words}`];
}

/** What is known of the key or value under the cursor, as Markdown. */
export function* hover(document: EditorDocument, position: Position): Work<Hover | null> {
  const { analysis, text } = document;
  const place = analysis.placeAt(text.offsetAt(position));
  if (place === null) return null;
  const procedure = analysis.procedure().value;
  const steps = procedure.steps.filter((step) => isVerbOf(step, place.path, analysis.file));
  const ofSteps: (readonly Markdown[])[] = [];
  for (const step of steps.slice(0, mostCalls)) ofSteps.push(yield* aboutStep(analysis, step));
  const blocks = [
    ...ofSteps.flat(),
    ...(place.part === 'value' ? aboutId(procedure, place.text ?? '') : []),
    ...(place.part === 'key' ? describeKey(analysis.schemaOf(place.path), place.text ?? '') : []),
    ...(place.part === 'key' ? aboutId(procedure, place.text ?? '') : []),
  ];
  if (blocks.length === 0) return null;
  return {
    contents: { kind: MarkupKind.Markdown, value: blocks.map((block) => block.markdown).join('\n\n') },
    range: toRange(document, place.range),
  };
}
