import type { CompletionItem, Position } from 'vscode-languageserver-types';
import { isJson } from '../format/file-kinds.ts';
import { cursorPlace } from '../text/cursor.ts';
import { keys } from './completion-keys.ts';
import { targetAt } from './completion-target.ts';
import { idItems, values } from './completion-values.ts';
import type { EditorDocument } from './document.ts';

export interface CompletionOptions {
  /** Whether the client fills in places of a snippet. */
  readonly snippets: boolean;
}

/**
 * What can be typed where the cursor stands, also in a text that is half typed. Nothing in JSON: what would be put in is
 * YAML.
 */
export function complete(
  document: EditorDocument,
  position: Position,
  { snippets }: CompletionOptions,
): CompletionItem[] {
  if (isJson(document.analysis.file)) return [];
  const offset = document.text.offsetAt(position);
  const place = cursorPlace(document.text.getText(), offset);
  if (place === null) return [];
  const at = targetAt(document, offset, place, snippets);
  switch (place.part) {
    case 'key':
      return keys(at);
    case 'value':
      return values(at);
    case 'item':
      return idItems(at);
  }
}
