import type { FileId } from '../text/where.ts';

/*
 * Names of files seen from another file, as text: ids are URIs or paths, and `/` stands between their folders.
 */

export type NamedFile = { readonly id: FileId } | { readonly problem: string };

/** The file that a relative name means, seen from a file; inside one of the folders only, else below its own folder. */
export function fileNamed(from: FileId, name: string, folders: readonly FileId[]): NamedFile {
  if (/^(?:\/|\\|[A-Za-z]:|[a-z][a-z0-9+.-]*:)/i.test(name))
    return {
      problem: 'A parts file is named as seen from this file, such as `shared/restraint.parts.yaml`.',
    };
  if (name.includes('\\')) return { problem: 'Write `/` between folders.' };
  const isUri = /^[a-z][a-z0-9+.-]+:\//i.test(from);
  const steps = name.split('/').map((step) => (isUri && step !== '..' ? encodeURIComponent(step) : step));
  const id = resolved(folderOf(from), steps);
  const own = folders.filter((folder) => isInside(from, folder));
  const allowed = own.length > 0 ? own : [folderOf(from)];
  if (id === null || !allowed.some((folder) => isInside(id, folder)))
    return { problem: `\`${name}\` lies outside the workspace. Parts files are used from inside it only.` };
  return { id };
}

/** What stands before the last `/`; empty for a file by its name alone. */
function folderOf(id: FileId): string {
  const end = Math.max(id.lastIndexOf('/'), id.lastIndexOf('\\'));
  return end === -1 ? '' : id.slice(0, end);
}

/** null: above the root. */
function resolved(folder: string, steps: readonly string[]): FileId | null {
  const path = folder === '' ? [] : folder.split(/[/\\]/);
  for (const step of steps) {
    if (step === '' || step === '.') continue;
    if (step !== '..') path.push(step);
    else if (path.pop() === undefined || path.at(-1) === '..') return null;
  }
  return path.join('/');
}

/** An empty folder is that of relative paths. */
function isInside(id: FileId, folder: string): boolean {
  if (folder === '') return !/^(?:\/|[a-z][a-z0-9+.-]+:|[A-Za-z]:[/\\])/i.test(id) && !id.startsWith('..');
  return id.startsWith(folder.endsWith('/') ? folder : `${folder}/`);
}
