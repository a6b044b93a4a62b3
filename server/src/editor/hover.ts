import { MarkupKind } from 'vscode-languageserver-types';
import type { Hover, Position } from 'vscode-languageserver-types';
import type { Work } from '../bench/work.ts';
import { toRange } from './document.ts';
import type { EditorDocument } from './document.ts';
import { describeId } from './hover-id.ts';
import { describeKey } from './hover-key.ts';
import { describeReading } from './hover-reading.ts';
import { describeCodes, describeOwed } from './hover-step.ts';

/** What is known of the key or value under the cursor, as Markdown. */
export function* hover(document: EditorDocument, position: Position): Work<Hover | null> {
  const { analysis, text } = document;
  const place = analysis.placeAt(text.offsetAt(position));
  if (place === null) return null;
  const procedure = analysis.procedure().value;
  const index = procedure.steps.findIndex(
    (step) => step.path[1] === place.path[1] && place.path[0] === 'steps',
  );
  const step = procedure.steps[index];
  const isVerb = step !== undefined && place.path[2] === step.verb;
  const blocks = [
    ...(isVerb ? yield* describeReading(analysis, index) : []),
    ...(isVerb ? describeOwed((yield* analysis.order()).value, index, step) : []),
    ...(isVerb ? describeCodes((yield* analysis.windows()).value, index) : []),
    ...(place.part === 'value' ? describeId(procedure, place.text ?? '') : []),
    ...(place.part === 'key' ? describeKey(analysis.schemaOf(place.path), place.text ?? '') : []),
    ...(place.part === 'key' ? describeId(procedure, place.text ?? '') : []),
  ];
  if (blocks.length === 0) return null;
  return {
    contents: { kind: MarkupKind.Markdown, value: blocks.join('\n\n') },
    range: toRange(document, place.range),
  };
}
