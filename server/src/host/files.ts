import { lstatSync, readFileSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { whyFailed } from './why-failed.ts';

/** A file's bytes as text, or why it could not be read. */
export type FileRead = { readonly text: string } | { readonly problem: string };

/** Reads a file as UTF-8; bytes that are no text stay visible as U+FFFD and are reported by the check. */
export function readTextFile(path: string): FileRead {
  try {
    return { text: readFileSync(path, 'utf8') };
  } catch (error) {
    return { problem: reason(error) };
  }
}

export interface Walked {
  /** Sorted. */
  readonly files: readonly string[];
  readonly problems: readonly { readonly path: string; readonly problem: string }[];
}

/** A file as it is named; the procedures and parts files of a folder, at any depth. Links are not followed. */
export function walk(path: string): Walked {
  try {
    return statSync(path).isDirectory() ? walkFolder(path) : { files: [path], problems: [] };
  } catch (error) {
    return { files: [], problems: [{ path, problem: reason(error) }] };
  }
}

function walkFolder(folder: string): Walked {
  const files: string[] = [];
  const problems: { path: string; problem: string }[] = [];
  for (const name of names(folder, problems)) {
    const path = join(folder, name);
    const found = lstatSync(path, { throwIfNoEntry: false });
    if (found?.isDirectory() === true && name !== 'node_modules' && !name.startsWith('.')) {
      const below = walkFolder(path);
      for (const file of below.files) files.push(file);
      for (const problem of below.problems) problems.push(problem);
    } else if (found?.isFile() === true && isOurs(name)) files.push(path);
  }
  return { files, problems };
}

function isOurs(name: string): boolean {
  return name.endsWith('.procedure.yaml') || name.endsWith('.parts.yaml');
}

/** The folder that the program runs in, under both names that a file in it can have: relative, and from the root. */
export function workFolders(): readonly string[] {
  return ['', process.cwd()];
}

function names(folder: string, problems: { path: string; problem: string }[]): readonly string[] {
  try {
    return readdirSync(folder).sort();
  } catch (error) {
    problems.push({ path: folder, problem: reason(error) });
    return [];
  }
}

function reason(error: unknown): string {
  return whyFailed(error, unread);
}

const unread: ReadonlyMap<unknown, string> = new Map([
  ['ENOENT', 'there is no such file'],
  ['EACCES', 'it may not be read'],
]);
