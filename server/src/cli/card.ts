import { finish } from '../bench/work.ts';
import { cardHtml } from '../card/html.ts';
import type { Paper } from '../card/style.ts';
import { analyse } from '../project/analysis.ts';
import { card as makeCard } from '../project/card.ts';
import { printable } from '../text/printable.ts';
import { checkText } from './check-text.ts';
import { readInput } from './input.ts';
import { cannotRun } from './terminal.ts';
import type { Exit, Terminal } from './terminal.ts';
import { version } from './version.ts';

export interface CardOptions {
  /** Where to write it; the ending says in which form. */
  readonly to?: string;
  readonly draft: boolean;
  /** As it is to be printed; today where absent. */
  readonly date?: string;
  /** `a4` or `a5`, as it was given; A4 where absent. */
  readonly paper?: string;
  readonly name?: string;
}

/** Writes the printable card of one file, or says why it is refused. */
export function card(terminal: Terminal, paths: readonly string[], options: CardOptions): Exit {
  const { to } = options;
  if (paths.length !== 1) return cannotRun(terminal, 'card needs one file');
  if (to === undefined) return cannotRun(terminal, 'card needs a file to write: add `-o CARD.html`');
  if (/\.pdf$/i.test(to))
    return cannotRun(terminal, 'cards as PDF come in a later version; write a .html and print it');
  if (!/\.html$/i.test(to)) return cannotRun(terminal, `a card is a .html file, not ${to}`);
  const paper = paperNamed(options.paper ?? 'a4');
  if (paper === null) return cannotRun(terminal, `there is no paper ${options.paper ?? ''}: a4 or a5`);
  const { snapshot, files, problems } = readInput(terminal, paths, options.name);
  const [file] = files;
  if (problems[0] !== undefined) return cannotRun(terminal, problems[0]);
  if (file === undefined || files.length > 1) return cannotRun(terminal, 'card needs one file, not a folder');
  const analysis = analyse(snapshot, file);
  const date = options.date ?? terminal.today();
  const made = finish(makeCard(analysis, { date, version, draft: options.draft }));
  if ('refused' in made) {
    for (const piece of checkText(terminal, [{ analysis, findings: made.refused, complete: true }]))
      terminal.out(piece);
    terminal.err(
      'ohmwright: no card is written while there are errors; `--draft` writes one that is marked as a draft\n',
    );
    return 1;
  }
  const problem = terminal.writeFile(to, cardHtml(made.card, { paper }));
  if (problem !== null) return cannotRun(terminal, `cannot write ${to}: ${problem}`);
  terminal.out(`${options.draft ? 'Draft of the card' : 'Card'} written to ${printable(to)}\n`);
  return 0;
}

function paperNamed(name: string): Paper | null {
  switch (name.toLowerCase()) {
    case 'a4':
      return 'A4';
    case 'a5':
      return 'A5';
    default:
      return null;
  }
}
