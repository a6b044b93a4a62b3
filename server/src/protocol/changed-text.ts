import { TextDocument } from 'vscode-languageserver-textdocument';
import type { Range } from 'vscode-languageserver-textdocument';
import { at, isRange } from './unchecked.ts';

/**
 * A text after the changes of a client; null where what it is now cannot be known. A range beyond the end of a line or of
 * the text ends there. A whole new text makes a lost one known again.
 */
export function changedText(
  { text, isLost }: { readonly text: TextDocument; readonly isLost: boolean },
  version: unknown,
  changes: unknown,
): TextDocument | null {
  const { uri, languageId } = text;
  // A client that does not count sends no version.
  const counted = typeof version === 'number' ? version : text.version;
  const named = (content: string): TextDocument => TextDocument.create(uri, languageId, counted, content);
  if (!Array.isArray(changes)) return null;
  let next = isLost ? null : named(text.getText());
  for (const change of changes as readonly unknown[]) {
    const content = at(change, 'text');
    if (typeof content !== 'string') return null;
    const range = at(change, 'range') ?? null;
    if (range === null) next = named(content);
    else if (!isRange(range)) return null;
    else if (next !== null)
      TextDocument.update(next, [{ text: content, range: inside(next, range) }], counted);
  }
  return next;
}

/** The library reckons with lines that there are. */
function inside(text: TextDocument, { start, end }: Range): Range {
  return { start: text.positionAt(text.offsetAt(start)), end: text.positionAt(text.offsetAt(end)) };
}
