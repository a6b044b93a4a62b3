import { TextDocuments } from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import type { EditorDocument } from '../editor/document.ts';
import { hintTexts } from '../editor/inlay-hints.ts';
import type { HintTexts } from '../editor/inlay-hints.ts';
import type { Work } from '../bench/work.ts';
import { analyse } from '../project/analysis.ts';
import { fileId, homeOf } from '../project/file-names.ts';
import { snapshotOf } from '../project/snapshot.ts';
import type { Files } from '../project/snapshot.ts';
import type { FileId } from '../text/where.ts';
import type { PartsFiles } from './parts-files.ts';

/** The documents that are open in the editor, each with the analysis of its present text. */
export interface OpenDocuments {
  readonly texts: TextDocuments<TextDocument>;
  readonly get: (uri: string) => EditorDocument | undefined;
  /** What hints say now, and what they said when the text was last whole. */
  readonly hints: (
    document: EditorDocument,
  ) => Work<{ readonly now: HintTexts; readonly earlier: HintTexts }>;
  /** A parts file may be another one now: forgets what depends on it, and says which documents those are. */
  readonly partsChanged: () => readonly string[];
}

export function openDocuments(parts: PartsFiles): OpenDocuments {
  const texts = new TextDocuments(TextDocument);
  const known = new Map<string, EditorDocument & { readonly version: number }>();
  const lastWhole = new Map<string, HintTexts>();
  texts.onDidClose(({ document }) => {
    known.delete(document.uri);
    lastWhole.delete(document.uri);
  });
  /** Where a document lies: the links to it followed, so that it has one id however it was opened. */
  const idOf = (uri: string): FileId => {
    const id = fileId(uri);
    const located = parts.locate(id, homeOf(id, parts.folders().map(fileId)));
    return 'id' in located ? located.id : id;
  };
  /** What is open counts as it stands in the editor, saved or not. */
  const read: Files['read'] = (id) => {
    const open = texts.all().find(({ uri }) => idOf(uri) === id);
    return open === undefined ? parts.read(id) : { text: open.getText() };
  };
  return {
    texts,
    get: (uri) => {
      const text = texts.get(uri);
      if (text === undefined) return undefined;
      const earlier = known.get(uri);
      if (earlier?.version === text.version) return earlier;
      const { version } = text;
      // The library changes its document in place; the analysis and its positions belong to this version.
      const frozen = TextDocument.create(uri, text.languageId, version, text.getText());
      const id = idOf(uri);
      const surroundings = { folders: parts.folders(), locate: parts.locate, read };
      const snapshot = snapshotOf([{ id, text: frozen.getText() }], surroundings);
      const document = { text: frozen, analysis: analyse(snapshot, id), version };
      known.set(uri, document);
      return document;
    },
    *hints(document) {
      const { uri } = document.text;
      const { value: readings } = yield* document.analysis.windows();
      const { value: order } = yield* document.analysis.order();
      const now = hintTexts(document, readings, order);
      if (isWhole(document)) lastWhole.set(uri, now);
      return { now, earlier: lastWhole.get(uri) ?? now };
    },
    partsChanged: () => {
      parts.forget();
      const using = [...known.values()].filter(({ analysis }) => analysis.usesOthers());
      for (const { text } of using) known.delete(text.uri);
      return using.map(({ text }) => text.uri);
    },
  };
}

/** Whether everything could be read: then what has no window has none for good. */
function isWhole({ analysis }: EditorDocument): boolean {
  if (analysis.failure() !== null) return false;
  return !analysis.procedure().findings.some(({ severity }) => severity === 'error');
}
