import { messageOf } from '../project/net.ts';
import type { FileId } from '../model/where.ts';
import type { Terminal } from './terminal.ts';

/** A text in pieces; at its end one line for each file of which something could not be written. */
export type Pieces = Generator<string, readonly string[]>;

/** Writes the pieces of a text one by one, and comes back with what could not be written. */
export function writeAll(terminal: Terminal, pieces: Pieces): readonly string[] {
  for (;;) {
    const next = pieces.next();
    if (next.done === true) return next.value;
    terminal.out(next.value);
  }
}

/** Keeps a failure to write what was found in one file from all the rest: each is told in a line of its own. */
export interface Unwritten {
  /** What is made, or null where that fails. */
  readonly attempt: <T>(file: FileId, make: () => T) => T | null;
  /** One line for each file of which something could not be written. */
  readonly problems: () => readonly string[];
}

export function nothingUnwritten(): Unwritten {
  const problems = new Map<FileId, string>();
  return {
    attempt: (file, make) => {
      try {
        return make();
      } catch (error) {
        if (!problems.has(file))
          problems.set(file, `not all that was found in ${file} can be written: ${messageOf(error)}`);
        return null;
      }
    },
    problems: () => [...problems.values()],
  };
}
