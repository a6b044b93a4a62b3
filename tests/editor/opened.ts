import { TextDocument } from 'vscode-languageserver-textdocument';
import type { Position } from 'vscode-languageserver-types';
import type { EditorDocument } from '../../server/src/editor/document.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';

const uri = 'file:///workshop/test.procedure.yaml';

/** A text as it is open in the editor. */
export function opened(text: string): EditorDocument {
  return {
    text: TextDocument.create(uri, 'ohmwright-procedure', 1, text),
    analysis: analyse(snapshotOf([{ id: uri, text }]), uri),
  };
}

/** The text with the one `|` taken out, and where it stood. */
export function atCursor(marked: string): { readonly document: EditorDocument; readonly position: Position } {
  const at = marked.indexOf('|');
  if (at === -1) throw new Error('the text has no cursor');
  const document = opened(marked.slice(0, at) + marked.slice(at + 1));
  return { document, position: document.text.positionAt(at) };
}
