import { InsertTextFormat, InsertTextMode, MarkupKind } from 'vscode-languageserver-types';
import type { CompletionItem } from 'vscode-languageserver-types';
import type { Schema } from '../format/walker.ts';
import type { CursorPlace } from '../text/cursor.ts';
import { knownIds } from './completion-ids.ts';
import type { KnownIds } from './completion-ids.ts';
import { withoutPlaces } from './completion-places.ts';
import { toRange } from './document.ts';
import type { EditorDocument } from './document.ts';

/** What the items of one request have in common: where the cursor stands, and the word that they replace. */
export interface Target {
  readonly document: EditorDocument;
  readonly place: CursorPlace;
  readonly snippets: boolean;
  readonly ids: KnownIds;
  readonly cursor: number;
  /** Of the word that the cursor touches, as offsets. */
  readonly from: number;
  readonly to: number;
  /** The line of the cursor, and the part of it up to the word and from its end. */
  readonly line: string;
  readonly column: number;
  readonly before: string;
  readonly behind: string;
}

/** `coil-coupling` and `K30.monitor` are one word. */
export function targetAt(
  document: EditorDocument,
  cursor: number,
  place: CursorPlace,
  snippets: boolean,
): Target {
  const text = document.text.getText();
  const start = text.lastIndexOf('\n', cursor - 1) + 1;
  const [line = ''] = /^[^\r\n]*/.exec(text.slice(start)) ?? [];
  const column = cursor - start;
  const typed = wordBefore(line, column).length;
  const rest = /^[A-Za-z0-9.-]*/.exec(line.slice(column))?.[0].length ?? 0;
  return {
    document,
    place,
    snippets,
    ids: knownIds(document.analysis.names()),
    cursor,
    from: cursor - typed,
    to: cursor + rest,
    line,
    column,
    before: line.slice(0, column - typed),
    behind: line.slice(column + rest),
  };
}

/** A word starts with a letter or a digit. */
function wordBefore(line: string, column: number): string {
  let from = column;
  while (from > 0 && /[A-Za-z0-9.-]/.test(line.charAt(from - 1))) from -= 1;
  return line.slice(from, column).replace(/^[.-]+/, '');
}

/** A key stands there already: only its name is to be replaced. */
export function isKeyed({ behind }: Target): boolean {
  return /^\s*:(?:\s|$)/.test(behind);
}

/** The blanks at the start of the line, which editors add to the further lines of what they insert. */
function blanksBefore({ before }: Target): number {
  return /^ */.exec(before)?.[0].length ?? 0;
}

/** An item that replaces the word. Behind `unplug:` or a dash a blank comes with it, without which it is no YAML. */
export function word(at: Target, label: string, text: string, from = at.from): CompletionItem {
  const blank = from === at.from && /:$|^\s*-$/.test(at.before) ? ' ' : '';
  return { label, textEdit: { range: toRange(at.document, { from, to: at.to }), newText: blank + text } };
}

/**
 * An item with places to fill in; plain text for a client that has none. Its further lines are indented as seen from
 * the blanks before its first.
 */
export function snippet(at: Target, label: string, written: string, from = at.from): CompletionItem {
  return {
    ...word(at, label, at.snippets ? written : withoutPlaces(written), from),
    insertTextFormat: at.snippets ? InsertTextFormat.Snippet : InsertTextFormat.PlainText,
    ...(written.includes('\n') ? { insertTextMode: InsertTextMode.adjustIndentation } : {}),
  };
}

/**
 * Where an item starts that has to stand at a column, on a line with nothing before it: blanks too many are replaced,
 * and those that are missing come with it.
 */
export function aligned(at: Target, column: number): { readonly from: number; readonly blanks: string } {
  const start = at.before.length;
  if (!at.place.isAlone) return { from: at.from, blanks: '' };
  return {
    from: at.from - Math.max(0, start - column),
    blanks: ' '.repeat(Math.max(0, column - start)),
  };
}

/** The indentation of a further line that has to stand at a column, where the first is aligned to another. */
export function indentTo(at: Target, column: number, first: number): string {
  const blanks = at.place.isAlone ? Math.min(at.before.length, first) : blanksBefore(at);
  return ' '.repeat(Math.max(0, column - blanks));
}

export function documented({ description }: Schema): Pick<CompletionItem, 'documentation'> {
  return typeof description === 'string'
    ? { documentation: { kind: MarkupKind.Markdown, value: description } }
    : {};
}

/** All of a lower rank stand before those of a higher one; `order` counts from 0. */
export function sorted(rank: number, order: number): Pick<CompletionItem, 'sortText'> {
  return { sortText: `${rank}${String(order).padStart(4, '0')}` };
}
