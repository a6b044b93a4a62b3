import type { FileRead, Files } from '../project/snapshot.ts';
import type { FileId } from '../model/where.ts';

/** Files that documents use, as they stand on disk: each asked for once until it is looked at again. */
export interface PartsFiles extends Files {
  /** Looks again at what is still wanted, and says what is another text now, or lies elsewhere. */
  readonly readAgain: (wanted: ReadonlySet<FileId>) => ReadonlySet<FileId>;
}

interface Asked<T> {
  readonly id: FileId;
  readonly answer: T;
  readonly ask: () => T;
}

export function partsFiles(disk: Files): PartsFiles {
  const places = new Map<string, Asked<ReturnType<Files['locate']>>>();
  const texts = new Map<FileId, Asked<FileRead | null>>();
  return {
    locate: (id, home) => once(places, JSON.stringify([id, home]), id, () => disk.locate(id, home)),
    read: (id) => once(texts, id, id, () => disk.read(id)),
    readAgain: (wanted) => new Set([...askAgain(places, wanted), ...askAgain(texts, wanted)]),
  };
}

function once<T>(known: Map<string, Asked<T>>, key: string, id: FileId, ask: () => T): T {
  const asked = known.get(key) ?? { id, answer: ask(), ask };
  known.set(key, asked);
  return asked.answer;
}

function askAgain<T>(known: Map<string, Asked<T>>, wanted: ReadonlySet<FileId>): readonly FileId[] {
  const changed: FileId[] = [];
  for (const [key, asked] of [...known]) {
    const { id, ask } = asked;
    if (!wanted.has(id)) {
      known.delete(key);
      continue;
    }
    const answer = ask();
    if (JSON.stringify(answer) === JSON.stringify(asked.answer)) continue;
    known.set(key, { ...asked, answer });
    changed.push(id);
  }
  return changed;
}
