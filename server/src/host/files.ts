import { closeSync, constants, fstatSync, openSync, readSync, realpathSync, statSync } from 'node:fs';
import type { Stats } from 'node:fs';
import { isAbsolute, join, relative } from 'node:path';
import type { FileRead } from '../project/snapshot.ts';
import { largestFile } from '../text/problems/file.ts';
import { whyFailed } from './why-failed.ts';

/* The one way to a file on disk: for the command line, for the language server, and for what `uses` leads to. */

/**
 * No more bytes of a text are read than this. One UTF-16 unit has three bytes at most, so what is cut here is still too
 * large for the check, which says so.
 */
const mostBytes = 3 * (largestFile + 1);

/**
 * Reads a regular file as UTF-8; bytes that are no text stay visible as U+FFFD and are reported by the check. What never
 * ends or waits for a writer, such as a device or a pipe, is not opened. null: there is no such file.
 */
export function readTextFile(path: string): FileRead | null {
  let descriptor: number | null = null;
  try {
    const strange = strangeKind(statSync(path));
    if (strange !== null) return { problem: strange };
    // Should a pipe stand there by now, it is not waited for. Windows has no such flag, which counts as 0.
    descriptor = openSync(path, constants.O_RDONLY | constants.O_NONBLOCK);
    const opened = strangeKind(fstatSync(descriptor));
    return opened === null ? readOpen(descriptor) : { problem: opened };
  } catch (error) {
    return isNone(error) ? null : { problem: whyUnread(error) };
  } finally {
    if (descriptor !== null) closeSync(descriptor);
  }
}

/** Reads what is open to its end, or as much as is certain to be too large. */
export function readOpen(descriptor: number): FileRead {
  const chunks: Buffer[] = [];
  let length = 0;
  try {
    while (length < mostBytes) {
      const chunk = Buffer.allocUnsafe(Math.min(64 * 1024, mostBytes - length));
      const read = readSome(descriptor, chunk);
      if (read === 0) break;
      chunks.push(chunk.subarray(0, read));
      length += read;
    }
  } catch (error) {
    return { problem: whyUnread(error) };
  }
  return { text: Buffer.concat(chunks, length).toString('utf8') };
}

/** How many bytes came; 0: there are no more. A slow writer at the other end is waited for. */
function readSome(descriptor: number, chunk: Buffer): number {
  for (;;) {
    try {
      return readSync(descriptor, chunk);
    } catch (error) {
      const code = codeOf(error);
      // Windows says the end of a pipe so.
      if (code === 'EOF') return 0;
      if (code !== 'EAGAIN') throw error;
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 10);
    }
  }
}

/** What stands in the place of a file, where it is no regular one. */
function strangeKind(found: Stats): string | null {
  if (found.isFile()) return null;
  if (found.isDirectory()) return 'it is a folder';
  if (found.isFIFO()) return 'it is a pipe';
  return found.isSocket() ? 'it is a socket' : 'it is a device';
}

/** Whether a path leads to a pipe, which gives its text once. */
export function isPipe(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false })?.isFIFO() === true;
}

export type Located = { readonly path: string } | { readonly problem: string };

/**
 * Where a path below a folder leads to, links followed, as a path below that folder. A link that leads out of it is a
 * problem; what is not there is itself.
 */
export function locateBelow(folder: string, path: string): Located {
  try {
    const inner = relative(realpathSync.native(folder), realpathSync.native(path));
    const leadsOut = /^\.\.(?:[/\\]|$)/.test(inner) || isAbsolute(inner);
    return leadsOut
      ? { problem: 'it is a link that leads out of the workspace' }
      : { path: join(folder, inner) };
  } catch (error) {
    return isNone(error) ? { path } : { problem: whyUnread(error) };
  }
}

function isNone(error: unknown): boolean {
  const code = codeOf(error);
  return code === 'ENOENT' || code === 'ENOTDIR';
}

function codeOf(error: unknown): unknown {
  return error instanceof Error && 'code' in error ? error.code : undefined;
}

export function whyUnread(error: unknown): string {
  return whyFailed(error, unread);
}

export const noSuchFile = 'there is no such file';

const unread: ReadonlyMap<unknown, string> = new Map([
  ['ENOENT', noSuchFile],
  ['ENOTDIR', noSuchFile],
  ['EACCES', 'it may not be read'],
  ['EPERM', 'it may not be read'],
  ['ELOOP', 'its links lead in a circle'],
  ['ENAMETOOLONG', 'its name is too long'],
]);
