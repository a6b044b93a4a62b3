import { TextDocument } from 'vscode-languageserver-textdocument';
import type { CompletionItem, TextEdit } from 'vscode-languageserver-types';
import { complete } from '../../server/src/editor/completion.ts';
import type { EditorDocument } from '../../server/src/editor/document.ts';
import { atCursor } from './opened.ts';

/** What is offered where the `|` stands. */
export function offered(marked: string, snippets = true): CompletionItem[] {
  const { document, position } = atCursor(marked);
  return complete(document, position, { snippets });
}

export function labels(marked: string): string[] {
  return offered(marked).map(({ label }) => label);
}

/** The text after an item is taken and nothing is typed over, further lines indented as an editor does it. */
export function taken(marked: string, label: string, snippets = true): string {
  const item = offered(marked, snippets).find((one) => one.label === label);
  if (item === undefined) throw new Error(`${label} is not offered, but ${labels(marked).join(', ')}`);
  return applied(atCursor(marked).document, item);
}

export function applied(document: EditorDocument, item: CompletionItem): string {
  const edit = item.textEdit as TextEdit;
  const line = document.text.getText({ start: { ...edit.range.start, character: 0 }, end: edit.range.start });
  const indent = /^ */.exec(line)?.[0] ?? '';
  const text = item.insertTextFormat === 2 ? firstChoices(edit.newText) : edit.newText;
  return TextDocument.applyEdits(document.text, [{ ...edit, newText: text.replaceAll('\n', `\n${indent}`) }]);
}

/**
 * A snippet with what stands in its places, read character by character as the grammar of the protocol has it:
 * `$1`, `${1:text}`, `${1|one,two|}`, and a backslash before `$`, `}`, `\`, and in choices also before `,` and `|`.
 */
export function firstChoices(snippet: string): string {
  let text = '';
  let at = 0;
  const until = (ends: string): string => {
    let word = '';
    for (; at < snippet.length && !ends.includes(snippet.charAt(at)); at++) {
      if (snippet.charAt(at) === '\\') at++;
      word += snippet.charAt(at);
    }
    return word;
  };
  while (at < snippet.length) {
    text += until('$');
    const [start = '', , opener] = /^\$(\{)?\d+([:|])?/.exec(snippet.slice(at)) ?? [];
    if (at < snippet.length && start === '') throw new Error(`no place: ${snippet.slice(at)}`);
    at += start.length;
    if (!start.startsWith('${')) continue;
    if (opener === '|') {
      text += until(',|');
      until('|');
      at++;
    } else if (opener === ':') text += until('}');
    if (snippet.charAt(at) !== '}') throw new Error(`not closed: ${snippet}`);
    at++;
  }
  return text;
}

/** A text with a high-voltage source, its service plug and a multimeter beside what stands in it. */
export function withHighVoltage(text: string): string {
  return text
    .replace(
      'sources:\n',
      'sources:\n  traction: { kind: high-voltage, voltage: 400 V, isolated-by: S1, wait: 5 min }\n',
    )
    .replace(
      'instruments:\n',
      'instruments:\n  hand-meter: { kind: multimeter, voltage: { range: 0..600 V, accuracy: 1 %, resolution: 1 V, input: 10 MΩ } }\n',
    )
    .replace('connectors:\n', 'connectors:\n  S1: { contact: 2 mΩ }\n');
}
