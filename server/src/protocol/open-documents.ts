import type { TextDocument } from 'vscode-languageserver-textdocument';
import type { Work } from '../bench/work.ts';
import type { EditorDocument } from '../editor/document.ts';
import { hintTexts } from '../editor/inlay-hints.ts';
import type { HintTexts } from '../editor/inlay-hints.ts';
import { analyse } from '../project/analysis.ts';
import { snapshotOf } from '../project/snapshot.ts';
import type { OpenTexts } from './open-texts.ts';
import type { PartsFiles } from './parts-files.ts';
import { oneSpelling } from './uris.ts';

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
  readonly asked: ReadonlySet<string>;
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

  /** What is open counts as it stands in the editor, saved or not. */
  const read = (uri: string): string | null =>
    texts.isLost(uri) ? null : (texts.get(uri)?.getText() ?? parts.read(uri));

  const create = (text: TextDocument): Known => {
    const id = oneSpelling(text.uri);
    const asked = new Set<string>();
    const surroundings = {
      folders: folders(),
      read: (uri: string) => {
        asked.add(oneSpelling(uri));
        return read(uri);
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
  const dropUsersOf = (names: ReadonlySet<string>): void => {
    drop(({ asked }) => [...asked].some((name) => names.has(name)));
  };

  texts.onChange(({ uri }) => {
    dropUsersOf(new Set([oneSpelling(uri)]));
  });
  texts.onClose(({ uri }) => {
    known.delete(oneSpelling(uri));
    lastWhole.delete(oneSpelling(uri));
    dropUsersOf(new Set([oneSpelling(uri)]));
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
      const name = oneSpelling(uri);
      const earlier = known.get(name);
      if (earlier?.document.text === text) return earlier.document;
      const now = create(text);
      known.set(name, now);
      return now.document;
    },
    isCurrent: (document) => {
      const { uri } = document.text;
      return known.get(oneSpelling(uri))?.document === document && texts.get(uri) === document.text;
    },
    *hints(document) {
      const name = oneSpelling(document.text.uri);
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
