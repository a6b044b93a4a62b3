import { existsSync, realpathSync, writeSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { isatty } from 'node:tty';
import { pathToFileURL } from 'node:url';
import type { FileRead } from '../project/snapshot.ts';
import { readOpen } from './files.ts';
import { whyNotWritten } from './why-failed.ts';

/** Standard output or error that cannot be written: a full disk, a reader who has left. Says why in words. */
export class OutputFailed extends Error {}

/** Writes all of a text, also where the reader at the other end of a pipe is slow. */
export function writeAll(descriptor: 1 | 2, text: string): void {
  const bytes = Buffer.from(text, 'utf8');
  for (let sent = 0; sent < bytes.length;) {
    try {
      sent += writeSync(descriptor, bytes, sent);
    } catch (error) {
      if (!(error instanceof Error && 'code' in error)) throw error;
      if (error.code !== 'EAGAIN') throw new OutputFailed(whyNotWritten(error));
    }
  }
}

export function readStandardInput(): FileRead {
  return readOpen(0);
}

/** Today as `2026-01-31`, in local time. */
export function today(): string {
  const now = new Date();
  const two = (number: number): string => String(number).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** Colours only on a terminal, and not where NO_COLOR is set. */
export function wantsColours(): boolean {
  return isatty(1) && (process.env.NO_COLOR ?? '') === '';
}

/** The address of a file that lies beside the running program, links followed; null where there is none. */
export function besideProgram(name: string): string | null {
  const path = join(dirname(realpathSync(process.argv[1] ?? '.')), name);
  return existsSync(path) ? pathToFileURL(path).href : null;
}
