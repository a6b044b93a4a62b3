import type { TextDocument } from 'vscode-languageserver-textdocument';
import type { Work } from '../model/work.ts';
import type { EditorDocument } from '../editor/document.ts';
import { hintTexts } from '../editor/inlay-hints.ts';
import type { HintTexts } from '../editor/inlay-hints.ts';
import { analyse } from '../project/analysis.ts';
import { fileId, homeOf } from '../project/file-names.ts';
import { snapshotOf } from '../project/snapshot.ts';
import type { FileRead, Surroundings } from '../project/snapshot.ts';
import type { FileId } from '../model/where.ts';
import type { OpenTexts } from './open-texts.ts';
import type { PartsFiles } from './parts-files.ts';

/** The documents that are open in the editor, each with the analysis of its present text and of the files that it uses. */
export interface OpenDocuments {
  /** Looks at the disk first: what stands there may be another text than before. */
  readonly get: (uri: string) => EditorDocument | undefined;
  /** Whether it still is what `get` would give. */
  readonly isCurrent: (document: EditorDocument) => boolean;
  /** What hints say now, and what they said when the text was last whole; null where it is whole. */
  readonly hints: (
    document: EditorDocument,
  ) => Work<{ readonly now: HintTexts; readonly earlier: HintTexts | null }>;
  /** Whether any document uses another file. */
  readonly useOthers: () => boolean;
  /** Reads again from the disk what documents use. */
  readonly readAgain: () => void;
  /** Forgets all that depends on other files. */
  readonly forget: () => void;
}

interface Known {
  readonly document: EditorDocument;
  /** The files that it asked for so far, whether they are there or not. */
  readonly asked: ReadonlySet<FileId>;
}

export interface Sources {
  readonly texts: OpenTexts;
  readonly parts: PartsFiles;
  readonly folders: () => readonly string[];
  /** Called with the URIs of documents that say something else now although their own text has not changed. */
  readonly onStale: (uris: readonly string[]) => void;
}

export function openDocuments({ texts, parts, folders, onStale }: Sources): OpenDocuments {
  const known = new Map<string, Known>();
  const lastWhole = new Map<string, HintTexts>();
  /** By where it lies, the name under which a document is open. */
  const nameAt = new Map<FileId, FileId>();

  /** Where a document lies: the links to it followed, so that it has one id however it was opened. */
  const idOf = (uri: string): FileId => {
    const id = fileId(uri);
    const located = parts.locate(id, homeOf(id, folders()));
    return 'id' in located ? located.id : id;
  };

  /** What is open counts as it stands in the editor, saved or not. */
  const read = (id: FileId): FileRead | null => {
    const name = nameAt.get(id) ?? id;
    if (texts.isLost(name)) return { problem: 'a change of it in the editor could not be read' };
    const open = texts.get(name);
    return open === undefined ? parts.read(id) : { text: open.getText() };
  };

  const create = (text: TextDocument): Known => {
    const id = idOf(text.uri);
    const asked = new Set<FileId>();
    const surroundings: Surroundings = {
      folders: folders(),
      locate: (file, home) => {
        asked.add(file);
        return parts.locate(file, home);
      },
      read: (file) => {
        asked.add(file);
        return read(file);
      },
    };
    const snapshot = snapshotOf([{ id, text: text.getText() }], surroundings);
    return { document: { text, analysis: analyse(snapshot, id) }, asked };
  };

  const drop = (isStale: (one: Known) => boolean): void => {
    const stale = [...known].filter(([, one]) => isStale(one));
    for (const [name] of stale) known.delete(name);
    if (stale.length > 0) onStale(stale.map(([, { document }]) => document.text.uri));
  };
  const dropUsersOf = (names: ReadonlySet<FileId>): void => {
    drop(({ asked }) => [...asked].some((name) => names.has(name)));
  };

  texts.onChange(({ uri }) => {
    const id = idOf(uri);
    nameAt.set(id, fileId(uri));
    dropUsersOf(new Set([fileId(uri), id]));
  });
  texts.onClose(({ uri }) => {
    const [name, id] = [fileId(uri), idOf(uri)];
    known.delete(name);
    lastWhole.delete(name);
    nameAt.delete(id);
    dropUsersOf(new Set([name, id]));
  });

  const readAgain = (): void => {
    const wanted = new Set([...known.values()].flatMap(({ asked }) => [...asked]));
    const changed = parts.readAgain(wanted);
    if (changed.size > 0) dropUsersOf(changed);
  };

  return {
    get: (uri) => {
      const text = texts.get(uri);
      if (text === undefined) return undefined;
      readAgain();
      const name = fileId(uri);
      const earlier = known.get(name);
      if (earlier?.document.text === text) return earlier.document;
      const now = create(text);
      known.set(name, now);
      return now.document;
    },
    isCurrent: (document) => {
      const { uri } = document.text;
      return known.get(fileId(uri))?.document === document && texts.get(uri) === document.text;
    },
    *hints(document) {
      const name = fileId(document.text.uri);
      const { value: readings } = yield* document.analysis.windows();
      const { value: order } = yield* document.analysis.order();
      const now = hintTexts(document, readings, order);
      if (!isWhole(document)) return { now, earlier: lastWhole.get(name) ?? null };
      lastWhole.set(name, now);
      return { now, earlier: null };
    },
    useOthers: () => [...known.values()].some(({ asked }) => asked.size > 0),
    readAgain,
    forget: () => {
      drop(() => true);
    },
  };
}

/** Whether everything could be read: then what has no window has none for good. */
function isWhole({ analysis }: EditorDocument): boolean {
  return !analysis.procedure().findings.some(({ severity }) => severity === 'error');
}
