import { analyse } from '../project/analysis.ts';
import type { Analysis } from '../project/analysis.ts';
import { checkFile, exitOf } from './checked.ts';
import type { Format } from './arguments.ts';
import { readInput } from './input.ts';
import type { Input } from './input.ts';
import { checkJson } from './check-json.ts';
import { checkSarif } from './check-sarif.ts';
import type { SarifRun } from './check-sarif.ts';
import { checkText } from './check-text.ts';
import { cannotRun } from './terminal.ts';
import type { Exit, Terminal } from './terminal.ts';
import { writeAll } from './unwritten.ts';
import type { Pieces } from './unwritten.ts';

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
  return report(
    terminal,
    files.map((file) => analyse(snapshot, file)),
    { problems, passedOver },
    options,
  );
}

/** Checks what was read, and tells of all of it, and of what could not be read or was passed over. */
export function report(
  terminal: Terminal,
  analyses: readonly Analysis[],
  { problems, passedOver }: Pick<Input, 'problems' | 'passedOver'>,
  { format, strict }: Omit<CheckOptions, 'name'>,
): Exit {
  const checked = analyses.map(checkFile);
  const exit = problems.length > 0 ? 2 : exitOf(checked, strict);
  const run = { checked, problems, passedOver, exit, folder: terminal.folder };
  const unwritten = writeAll(terminal, written(terminal, format, run));
  for (const problem of [...problems, ...unwritten]) cannotRun(terminal, problem);
  return unwritten.length > 0 ? 2 : exit;
}

/** SARIF has a place for what could not be read; in the other forms nothing is written where nothing was. */
function* written(terminal: Terminal, format: Format, run: Required<SarifRun>): Pieces {
  if (format === 'sarif') return yield* checkSarif(run);
  if (run.checked.length === 0 && run.problems.length > 0) return [];
  return yield* format === 'json'
    ? checkJson(run.checked, run.passedOver)
    : checkText(terminal, run.checked, run.passedOver);
}
