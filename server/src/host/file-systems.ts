import { realpathSync } from 'node:fs';
import { isAbsolute, relative, resolve, sep } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { fileId } from '../project/file-names.ts';
import type { Files } from '../project/snapshot.ts';
import type { FileId } from '../model/where.ts';
import { locateBelow, readTextFile } from './files.ts';

/* Files by their ids: paths on the command line, URIs in an editor. Both end at the same reading. */

/** Between ids and absolute paths of this machine. */
interface Naming {
  /** null: it lies on no disk of this machine. */
  readonly pathOf: (id: FileId) => string | null;
  readonly idOf: (path: string) => FileId;
}

function filesBy({ pathOf, idOf }: Naming): Files {
  return {
    locate: (id, home) => {
      const [path, folder] = [pathOf(id), pathOf(home)];
      if (path === null || folder === null) return { id };
      const located = locateBelow(folder, path);
      return 'problem' in located ? located : { id: idOf(located.path) };
    },
    read: (id) => {
      const path = pathOf(id);
      return path === null ? null : readTextFile(path);
    },
  };
}

/** Files by URIs, as editors name them. */
export const filesByUri: Files = filesBy({
  pathOf: (id) => {
    if (!id.startsWith('file:')) return null;
    try {
      return fileURLToPath(id);
    } catch {
      // The name of another machine, or a `/` inside a name.
      return null;
    }
  },
  idOf: (path) => fileId(pathToFileURL(path).href),
});

/** Files by paths: those below the folder that the program runs in are named from there, all others from the root. */
export function filesBelow(folder: string): Files & Pick<Naming, 'idOf'> {
  const idOf = (path: string): FileId => {
    const absolute = resolve(folder, path);
    return inside(folder, absolute) ?? inside(real(folder), real(absolute)) ?? slashed(absolute);
  };
  return { ...filesBy({ pathOf: (id) => resolve(folder, id), idOf }), idOf };
}

/** null: the path does not lie below the folder. */
function inside(folder: string, path: string): FileId | null {
  const below = relative(folder, path);
  const isOutside = below === '..' || below.startsWith(`..${sep}`) || isAbsolute(below);
  return isOutside ? null : slashed(below);
}

function slashed(path: string): FileId {
  return fileId(sep === '/' ? path : path.split(sep).join('/'));
}

/** Links followed; what is not there is itself. */
function real(path: string): string {
  try {
    return realpathSync.native(path);
  } catch {
    return path;
  }
}
