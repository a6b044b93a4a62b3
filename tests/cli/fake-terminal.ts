import { run } from '../../server/src/cli/run.ts';
import type { Exit, Terminal } from '../../server/src/cli/terminal.ts';

export interface Ran {
  readonly exit: Exit | 'serving';
  readonly out: string;
  readonly err: string;
  /** By path, what was written. */
  readonly written: ReadonlyMap<string, string>;
}

interface Fake {
  readonly terminal: Terminal;
  readonly seen: () => Omit<Ran, 'exit'>;
}

/** A terminal that only remembers. */
export function fakeTerminal(changed: Partial<Terminal> = {}, input = ''): Fake {
  let out = '';
  let err = '';
  const written = new Map<string, string>();
  const terminal: Terminal = {
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
    readInput: () => ({ text: input }),
    writeFile: (path, text) => {
      written.set(path, text);
      return null;
    },
    today: () => '2026-01-31',
    colours: false,
    folder: process.cwd(),
    server: null,
    ...changed,
  };
  return { terminal, seen: () => ({ out, err, written }) };
}

/** Runs the program in this process, with a terminal that only remembers. */
export function ran(words: readonly string[], input = '', changed: Partial<Terminal> = {}): Ran {
  const { terminal, seen } = fakeTerminal(changed, input);
  const exit = run(terminal, words);
  return { exit, ...seen() };
}
