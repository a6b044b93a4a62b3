import { analyse } from '../project/analysis.ts';
import { checkFile, exitOf } from './checked.ts';
import type { Format } from './arguments.ts';
import { readInput } from './input.ts';
import { checkJson } from './check-json.ts';
import { checkSarif } from './check-sarif.ts';
import type { SarifRun } from './check-sarif.ts';
import { checkText } from './check-text.ts';
import { cannotRun } from './terminal.ts';
import type { Exit, Terminal } from './terminal.ts';

export interface CheckOptions {
  readonly format: Format;
  /** Warnings fail too. */
  readonly strict: boolean;
  /** The name of standard input. */
  readonly name?: string;
}

/** Findings of text, windows and order in files and folders. */
export function check(terminal: Terminal, paths: readonly string[], options: CheckOptions): Exit {
  if (paths.length === 0) return cannotRun(terminal, 'check needs a file or a folder');
  const { snapshot, files, problems, passedOver } = readInput(terminal, paths, options.name);
  const checked = files.map((file) => checkFile(analyse(snapshot, file)));
  const exit = problems.length > 0 ? 2 : exitOf(checked, options.strict);
  const run = { checked, problems, passedOver, exit, folder: terminal.folder };
  for (const piece of written(terminal, options.format, run)) terminal.out(piece);
  for (const problem of problems) cannotRun(terminal, problem);
  return exit;
}

/** SARIF has a place for what could not be read; in the other forms nothing is written where nothing was. */
function written(terminal: Terminal, format: Format, run: Required<SarifRun>): Iterable<string> {
  if (format === 'sarif') return checkSarif(run);
  if (run.checked.length === 0 && run.problems.length > 0) return [];
  return format === 'json'
    ? checkJson(run.checked, run.passedOver)
    : checkText(terminal, run.checked, run.passedOver);
}
