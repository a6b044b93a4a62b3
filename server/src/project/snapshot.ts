import type { FileId } from '../text/where.ts';

export interface SourceFile {
  readonly id: FileId;
  readonly text: string;
}

/** All files as they stood at one moment. Contents are pushed in; nothing here reads a disk. */
export interface Snapshot {
  readonly files: ReadonlyMap<FileId, SourceFile>;
}

export function snapshotOf(files: readonly SourceFile[]): Snapshot {
  return { files: new Map(files.map((file) => [file.id, file])) };
}
