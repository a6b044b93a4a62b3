import pc from 'picocolors';
import type { FileRead } from '../project/snapshot.ts';
import { printable, visible } from '../model/printable.ts';

/** Where a command writes, and what it may do there. */
export interface Terminal {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  readonly readInput: () => FileRead;
  readonly writeFile: (path: string, text: string) => string | null;
  /** Today, `2026-01-31`. */
  readonly today: () => string;
  readonly colours: boolean;
  /** The folder that the program runs in, absolute. */
  readonly folder: string;
  /** Where the language server's bundle lies; null: not beside this program. */
  readonly server: string | null;
}

/** What `paintFor` puts around words. One group, so that `split` keeps what it finds. */
const colours = /(\u001B\[(?:1|2|22|31|32|33|36|39)m)/;

/** A terminal to which nothing comes that is not seen: neither what an author wrote nor the name of a file steers it. */
export function guarded(terminal: Terminal): Terminal {
  const shown = (text: string): string =>
    (terminal.colours ? text.split(colours) : [text])
      .map((part, index) => (index % 2 === 0 ? visible(part) : part))
      .join('');
  return {
    ...terminal,
    out: (text) => {
      terminal.out(shown(text));
    },
    err: (text) => {
      terminal.err(visible(text));
    },
  };
}

export type Paint = ReturnType<typeof pc.createColors>;

export function paintFor(terminal: Terminal): Paint {
  return pc.createColors(terminal.colours);
}

/** How a command ended: 0 nothing wrong, 1 something found, 2 it could not run, or it failed. */
export type Exit = 0 | 1 | 2;

/** A command that cannot run says why in one line on standard error. */
export function cannotRun(terminal: Terminal, why: string): Exit {
  terminal.err(`ohmwright: ${printable(why)}\n`);
  return 2;
}
