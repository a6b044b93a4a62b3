import { Emitter } from 'vscode-languageserver';
import type { Connection, Event } from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { changedText } from './changed-text.ts';
import { at } from './unchecked.ts';
import { fileId } from '../project/file-names.ts';

/** A text that is open, under the URI as the client spells it. */
export type Named = Pick<TextDocument, 'uri'>;

/** The texts that are open in the editor, under any spelling of their URIs. */
export interface OpenTexts {
  /** A text does not change: after an edit there is another one. */
  readonly get: (uri: string) => TextDocument | undefined;
  /** Whether it is open, but a change of it could not be read: then nobody knows how it stands. */
  readonly isLost: (uri: string) => boolean;
  /** Opened or changed, or lost. */
  readonly onChange: Event<Named>;
  readonly onClose: Event<Named>;
}

/** Keeps what the client opens, changes and closes. What it sends in error is in its log, as what a handler throws. */
export function openTexts(connection: Connection): OpenTexts {
  const texts = new Map<string, { readonly text: TextDocument; readonly isLost: boolean }>();
  const changed = new Emitter<Named>();
  const closed = new Emitter<Named>();

  connection.onDidOpenTextDocument(({ textDocument }) => {
    const { uri, languageId, version, text } = textDocument;
    if (typeof at(textDocument, 'uri') !== 'string' || typeof at(textDocument, 'text') !== 'string')
      throw new Error('A file was opened without its URI or its text.');
    const before = texts.get(fileId(uri))?.text;
    if (before !== undefined && before.uri !== uri) closed.fire(before);
    texts.set(fileId(uri), { text: TextDocument.create(uri, languageId, version, text), isLost: false });
    changed.fire({ uri });
  });

  connection.onDidChangeTextDocument(({ textDocument: { uri, version }, contentChanges }) => {
    const known = texts.get(fileId(uri));
    if (known === undefined) throw new Error(`${uri} is not open.`);
    const text = changedText(known, version, contentChanges);
    texts.set(fileId(uri), text === null ? { ...known, isLost: true } : { text, isLost: false });
    changed.fire(known.text);
    if (text === null) throw new Error(`A change of ${uri} cannot be read.`);
  });

  connection.onDidCloseTextDocument(({ textDocument: { uri } }) => {
    const known = texts.get(fileId(uri));
    texts.delete(fileId(uri));
    if (known !== undefined) closed.fire(known.text);
  });

  return {
    get: (uri) => {
      const known = texts.get(fileId(uri));
      return known?.isLost === false ? known.text : undefined;
    },
    isLost: (uri) => texts.get(fileId(uri))?.isLost === true,
    onChange: changed.event,
    onClose: closed.event,
  };
}
