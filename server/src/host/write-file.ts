import {
  accessSync,
  closeSync,
  constants,
  fchmodSync,
  fchownSync,
  fsyncSync,
  openSync,
  readdirSync,
  readlinkSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import type { Stats } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { whyNotWritten } from './why-failed.ts';

/**
 * Writes a file whole or not at all: first beside its place, then into it. Until then an earlier file stays as it is.
 * Links are followed. What went wrong comes back in words; null where the file is written.
 */
export function writeTextFile(path: string, text: string): string | null {
  try {
    return writeInPlaceOf(endOfLinks(resolve(path)), text);
  } catch (error) {
    return whyNotWritten(error);
  }
}

function writeInPlaceOf(target: string, text: string): string | null {
  const earlier = statSync(target, { throwIfNoEntry: false });
  if (earlier?.isDirectory() === true) return 'it is a folder';
  if (earlier?.isFile() === false) return 'it is no regular file';
  // A rename asks for no right on the file whose place it takes.
  if (earlier !== undefined) accessSync(target, constants.W_OK);
  const folder = dirname(target);
  removeLeftOver(folder);
  const beside = join(folder, `${partStart}${process.pid}${partEnd}`);
  try {
    writeThrough(beside, text, earlier);
    renameSync(beside, target);
  } catch (error) {
    rmSync(beside, { force: true });
    throw error;
  }
  return null;
}

/** To the disk itself: the rename may get there before a text that only stands in the memory of the system. */
function writeThrough(path: string, text: string, earlier: Stats | undefined): void {
  const file = openSync(path, 'wx');
  try {
    if (earlier !== undefined) takeAfter(file, earlier);
    writeFileSync(file, text);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

/** The permissions of the earlier file, and its owner where this process may give files away. */
function takeAfter(file: number, { mode, uid, gid }: Stats): void {
  if (process.getuid?.() === 0) fchownSync(file, uid, gid);
  fchmodSync(file, mode & 0o777);
}

/** As many links as Linux follows in a row. */
const mostLinks = 40;

/** Where a row of links ends, whether anything stands there or not. */
function endOfLinks(path: string): string {
  let at = path;
  for (let links = 0; links < mostLinks; links += 1) {
    const to = linkAt(at);
    if (to === null) break;
    at = resolve(realpathSync(dirname(at)), to);
  }
  return at;
}

function linkAt(path: string): string | null {
  try {
    return readlinkSync(path);
  } catch {
    return null;
  }
}

/* A file beside is named by the process that writes it: each writes one at a time. */
const partStart = '.ohmwright-';
const partEnd = '.part';

/** What processes left beside that were ended in the middle of their writing. Where that cannot be, it stays. */
function removeLeftOver(folder: string): void {
  for (const name of namesIn(folder)) {
    const writer = /^\.ohmwright-(\d+)\.part$/.exec(name)?.[1];
    if (writer === undefined || isAnotherRunning(Number(writer))) continue;
    try {
      rmSync(join(folder, name));
    } catch {
      // Somebody else's, or gone by now.
    }
  }
}

function namesIn(folder: string): readonly string[] {
  try {
    return readdirSync(folder);
  } catch {
    return [];
  }
}

function isAnotherRunning(id: number): boolean {
  if (id === process.pid) return false;
  try {
    return process.kill(id, 0);
  } catch (error) {
    // EPERM: it runs, for another user.
    return error instanceof Error && 'code' in error && error.code !== 'ESRCH';
  }
}
