import type { FindFile } from '../text/uses.ts';
import type { SourceFile } from '../text/read-document.ts';
import type { FileId } from '../text/where.ts';
import { fileNamed } from './file-names.ts';

export type { SourceFile };

/** Where a snapshot gets what is not in it. */
export interface Surroundings {
  /** Folders outside which nothing is used: URIs or paths. A file in none of them uses what lies below its own folder. */
  readonly folders: readonly FileId[];
  /** The text of a file, or null where there is none. Asked for once. */
  readonly read: (id: FileId) => string | null;
}

/** All files as they stood at one moment. Contents are pushed in or asked for once; nothing here reads a disk. */
export interface Snapshot {
  readonly files: ReadonlyMap<FileId, SourceFile>;
  /** The parts file that a name in `uses` means, seen from the file that it stands in. */
  readonly find: FindFile;
  /** The same with another text in the place of one file, for a trial. */
  readonly with: (file: SourceFile) => Snapshot;
}

const alone: Surroundings = { folders: [], read: () => null };

export function snapshotOf(files: readonly SourceFile[], { folders, read }: Surroundings = alone): Snapshot {
  const known = new Map(files.map((file) => [file.id, file]));
  const asked = new Map<FileId, string | null>();
  const textOf = (id: FileId): string | null => {
    const own = known.get(id);
    if (own !== undefined) return own.text;
    const text = asked.has(id) ? (asked.get(id) ?? null) : read(id);
    asked.set(id, text);
    return text;
  };
  return {
    files: known,
    find: (from, name) => {
      const named = fileNamed(from, name, folders);
      if ('problem' in named) return named;
      const text = textOf(named.id);
      return text === null ? { problem: `There is no file \`${name}\`.` } : { id: named.id, text };
    },
    with: (file) =>
      snapshotOf([...known.values()].filter(({ id }) => id !== file.id).concat(file), {
        folders,
        read: textOf,
      }),
  };
}
