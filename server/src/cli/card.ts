import { finish } from '../model/work.ts';
import { cardHtml } from '../card/html.ts';
import type { Paper } from '../card/style.ts';
import { analyse } from '../project/analysis.ts';
import type { Analysis } from '../project/analysis.ts';
import { card as makeCard } from '../project/card.ts';
import { printable } from '../model/printable.ts';
import type { Refused } from '../project/card.ts';
import { checkText } from './check-text.ts';
import { readInput } from './input.ts';
import { cannotRun } from './terminal.ts';
import type { Exit, Terminal } from './terminal.ts';
import { version } from '../project/version.ts';
import { writeAll } from './unwritten.ts';

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
  return writeCard(terminal, analyse(snapshot, file), { ...options, to, paper });
}

/** Of what was read. */
export function writeCard(
  terminal: Terminal,
  analysis: Analysis,
  { to, paper, draft, date = terminal.today() }: CardOptions & { readonly to: string; readonly paper: Paper },
): Exit {
  const made = finish(makeCard(analysis, { date, version, draft }));
  if ('refused' in made) return refuse(terminal, analysis, made);
  const problem = terminal.writeFile(to, cardHtml(made.card, { paper }));
  if (problem !== null) return cannotRun(terminal, `cannot write ${to}: ${problem}`);
  terminal.out(`${draft ? 'Draft of the card' : 'Card'} written to ${printable(to)}\n`);
  return 0;
}

function refuse(terminal: Terminal, analysis: Analysis, { refused, isFailure }: Refused): Exit {
  const { complete } = finish(analysis.order());
  const unwritten = writeAll(terminal, checkText(terminal, [{ analysis, findings: refused, complete }]));
  for (const problem of unwritten) cannotRun(terminal, problem);
  if (isFailure)
    return cannotRun(terminal, 'no card is written, and no draft of it: the file is not checked to its end');
  terminal.err(
    'ohmwright: no card is written while there are errors; `--draft` writes one that is marked as a draft\n',
  );
  return 1;
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
