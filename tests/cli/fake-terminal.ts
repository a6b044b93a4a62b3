import { run } from '../../server/src/cli/run.ts';
import type { Exit } from '../../server/src/cli/terminal.ts';

export interface Ran {
  readonly exit: Exit | 'serving';
  readonly out: string;
  readonly err: string;
  /** By path, what was written. */
  readonly written: ReadonlyMap<string, string>;
}

/** Runs the program in this process, with a terminal that only remembers. */
export function ran(words: readonly string[], input = ''): Ran {
  let out = '';
  let err = '';
  const written = new Map<string, string>();
  const exit = run(
    {
      out: (text) => {
        out += text;
      },
      err: (text) => {
        err += text;
      },
      readInput: () => input,
      writeFile: (path, text) => {
        written.set(path, text);
        return null;
      },
      today: () => '2026-01-31',
      colours: false,
      server: null,
    },
    words,
  );
  return { exit, out, err, written };
}
