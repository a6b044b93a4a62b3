import pc from 'picocolors';

/** Where a command writes, and what it may do there. */
export interface Terminal {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  readonly readInput: () => string;
  readonly writeFile: (path: string, text: string) => string | null;
  /** Today, `2026-01-31`. */
  readonly today: () => string;
  readonly colours: boolean;
  /** The folder that the program runs in, absolute. */
  readonly folder: string;
  /** Where the language server's bundle lies; null: not beside this program. */
  readonly server: string | null;
}

export type Paint = ReturnType<typeof pc.createColors>;

export function paintFor(terminal: Terminal): Paint {
  return pc.createColors(terminal.colours);
}

/** How a command ended: 0 nothing wrong, 1 something found, 2 it could not run, or it failed. */
export type Exit = 0 | 1 | 2;

/** A command that cannot run says why in one line on standard error. */
export function cannotRun(terminal: Terminal, why: string): Exit {
  terminal.err(`ohmwright: ${why}\n`);
  return 2;
}
