import { TextDocument } from 'vscode-languageserver-textdocument';
import type { Location, Position, Range } from 'vscode-languageserver-types';
import type { Analysis } from '../project/analysis.ts';
import type { FileId, Range as Stretch, Where } from '../model/where.ts';

/** A document as the features of the editor see it: its text, and what is known of it. */
export interface EditorDocument {
  readonly text: TextDocument;
  readonly analysis: Analysis;
}

/** From offsets to the lines and UTF-16 characters of the protocol. */
export function toRange({ text }: EditorDocument, { from, to }: Stretch): Range {
  return { start: text.positionAt(from), end: text.positionAt(to) };
}

export function rangeOf(document: EditorDocument, where: Where): Range {
  return toRange(document, document.analysis.range(where));
}

/** A place in the document, or in a parts file that it uses, whose URI the caller knows. */
export function locationOf(
  document: EditorDocument,
  where: Where,
  uriOf: (file: FileId) => string,
): Location {
  const { text, analysis } = document;
  const other = analysis.used().find(({ id }) => id === where.file);
  if (other === undefined) return { uri: text.uri, range: rangeOf(document, where) };
  const elsewhere = TextDocument.create(other.id, text.languageId, 0, other.text);
  return { uri: uriOf(other.id), range: toRange({ analysis, text: elsewhere }, analysis.range(where)) };
}

/** Behind the last character of a line. */
export function endOfLine({ text }: EditorDocument, line: number): Position {
  const whole = text.getText({ start: { line, character: 0 }, end: { line: line + 1, character: 0 } });
  return { line, character: whole.replace(/\r?\n$/, '').length };
}
