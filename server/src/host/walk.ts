import { readdirSync, statSync } from 'node:fs';
import type { Dirent } from 'node:fs';
import { join } from 'node:path';
import { fileKindOf, isInAnotherCase } from '../format/file-kinds.ts';
import { whyUnread } from './files.ts';

/** Why something below a folder is not read. What is named itself is read all the same. */
export type PassedBecause =
  'link' | 'hidden-folder' | 'hidden-file' | 'node-modules' | 'other-case' | 'no-file' | 'unreadable';

export interface PassedOver {
  readonly path: string;
  readonly why: PassedBecause;
  /** Of what is unreadable: the end of a sentence. */
  readonly problem?: string;
}

export interface Walked {
  /** Sorted, each folder in its place among the files. */
  readonly files: readonly string[];
  readonly passedOver: readonly PassedOver[];
}

/** A file as it is named; of a folder the procedures and parts files at any depth, and what could have been one. */
export function walk(path: string): Walked {
  try {
    return statSync(path).isDirectory() ? walkFolder(path) : { files: [path], passedOver: [] };
  } catch (error) {
    return { files: [], passedOver: [{ path, why: 'unreadable', problem: whyUnread(error) }] };
  }
}

function walkFolder(folder: string): Walked {
  const files: string[] = [];
  const passedOver: PassedOver[] = [];
  /** What comes next stands last. */
  const waiting: { readonly path: string; readonly isFolder: boolean }[] = [{ path: folder, isFolder: true }];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    const { path, isFolder } = next;
    if (!isFolder) {
      files.push(path);
      continue;
    }
    const entries = entriesOf(path);
    if ('problem' in entries) {
      passedOver.push({ path, why: 'unreadable', problem: entries.problem });
      continue;
    }
    for (const entry of entries.sorted) {
      const below = join(path, entry.name);
      const found = kindOf(entry, below);
      if (found === null) continue;
      if (found === 'folder' || found === 'file') waiting.push({ path: below, isFolder: found === 'folder' });
      else passedOver.push({ path: below, why: found });
    }
  }
  return { files, passedOver: passedOver.sort((a, b) => (a.path < b.path ? -1 : 1)) };
}

/** The last first, so that the first is taken next. */
function entriesOf(folder: string): { readonly sorted: readonly Dirent[] } | { readonly problem: string } {
  try {
    const entries = readdirSync(folder, { withFileTypes: true });
    return { sorted: entries.sort((a, b) => (a.name < b.name ? 1 : -1)) };
  } catch (error) {
    return { problem: whyUnread(error) };
  }
}

/** null: nothing that anybody would take for a procedure. */
function kindOf(entry: Dirent, path: string): 'folder' | 'file' | PassedBecause | null {
  const { name } = entry;
  const isHidden = name.startsWith('.');
  const isFolder = entry.isDirectory() || (entry.isSymbolicLink() && leadsToFolder(path));
  if (isFolder && name === 'node_modules') return 'node-modules';
  const isNamedSo = fileKindOf(name) !== null || isInAnotherCase(name);
  if (entry.isSymbolicLink()) return isFolder || isNamedSo ? 'link' : null;
  if (isFolder) return isHidden ? 'hidden-folder' : 'folder';
  if (!isNamedSo) return null;
  if (!entry.isFile()) return 'no-file';
  if (isHidden) return 'hidden-file';
  return isInAnotherCase(name) ? 'other-case' : 'file';
}

function leadsToFolder(link: string): boolean {
  try {
    return statSync(link).isDirectory();
  } catch {
    return false;
  }
}
