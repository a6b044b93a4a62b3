import type { FindFile } from '../text/uses.ts';
import type { SourceFile } from '../text/read-document.ts';
import type { FileId } from '../model/where.ts';
import { fileId, fileNamed, isOnlyRespelled, wayTo } from './file-names.ts';

export type { SourceFile };

/** What a file holds, or why it cannot be read, as the end of a sentence: `it is a folder`. */
export type FileRead = { readonly text: string } | { readonly problem: string };

/** Where files are. */
export interface Files {
  /** The file that an id leads to: links are followed, and must stay in a folder. One that is not there is itself. */
  readonly locate: (id: FileId, home: FileId) => { readonly id: FileId } | { readonly problem: string };
  /** null: there is none. */
  readonly read: (id: FileId) => FileRead | null;
}

/** Where a snapshot gets what is not in it. Each file is asked for once. */
export interface Surroundings extends Files {
  /** Folders outside which nothing is used: URIs or paths. A file in none of them uses what lies below its own folder. */
  readonly folders: readonly FileId[];
}

/** All files as they stood at one moment. Contents are pushed in or asked for once; nothing here reads a disk. */
export interface Snapshot {
  readonly files: ReadonlyMap<FileId, SourceFile>;
  /** The parts file that a name in `uses` means, seen from the file that it stands in. */
  readonly find: FindFile;
  /** The same with another text in the place of one file, for a trial. */
  readonly with: (file: SourceFile) => Snapshot;
}

const sources = new WeakMap<object, SourceFile>();

/** The same object for what was read once, so that what is known of it is not worked out again. */
function sourceOf(id: FileId, read: { readonly text: string }): SourceFile {
  const earlier = sources.get(read);
  if (earlier?.id === id) return earlier;
  const source = { id, text: read.text };
  sources.set(read, source);
  return source;
}

const nowhere: Surroundings = { folders: [], locate: (id) => ({ id }), read: () => null };

export function snapshotOf(
  files: readonly SourceFile[],
  surroundings: Partial<Surroundings> = nowhere,
): Snapshot {
  const { folders, locate, read } = { ...nowhere, ...surroundings };
  const known = new Map(files.map(({ id, text }) => [fileId(id), { id: fileId(id), text }]));
  const homes = folders.map(fileId);
  const asked = new Map<FileId, FileRead | null>();
  const readOnce = (id: FileId): FileRead | null => {
    const earlier = known.get(id) ?? asked.get(id);
    const found = earlier === undefined ? read(id) : earlier;
    asked.set(id, found);
    return found;
  };
  return {
    files: known,
    find: (from, name) => {
      const named = fileNamed(from, name, homes);
      if ('problem' in named) return named;
      const unusable = (why: string) => ({ problem: `\`${name}\` cannot be used: ${why}.` });
      const located = locate(named.id, named.home);
      if ('problem' in located) return unusable(located.problem);
      const { id } = located;
      if (isOnlyRespelled(named.id, id)) return unusable(`on disk its name is written \`${wayTo(id)}\``);
      const file = readOnce(id);
      if (file === null) return { problem: `There is no file \`${name}\`.` };
      return 'problem' in file ? unusable(file.problem) : sourceOf(id, file);
    },
    with: (file) =>
      snapshotOf([...known.values()].filter(({ id }) => id !== fileId(file.id)).concat(file), {
        folders,
        locate,
        read: readOnce,
      }),
  };
}
