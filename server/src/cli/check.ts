import { analyse } from '../project/analysis.ts';
import { checkFile, exitOf } from './checked.ts';
import { readInput } from './input.ts';
import { checkJson } from './check-json.ts';
import { checkText } from './check-text.ts';
import { cannotRun } from './terminal.ts';
import type { Exit, Terminal } from './terminal.ts';

export interface CheckOptions {
  readonly format: 'text' | 'json';
  /** Warnings fail too. */
  readonly strict: boolean;
  /** The name of standard input. */
  readonly name?: string;
}

/** Findings of text, windows and order in files and folders. */
export function check(terminal: Terminal, paths: readonly string[], options: CheckOptions): Exit {
  if (paths.length === 0) return cannotRun(terminal, 'check needs a file or a folder');
  const { snapshot, files, problems } = readInput(terminal, paths, options.name);
  const checked = files.map((file) => checkFile(analyse(snapshot, file)));
  if (files.length > 0 || problems.length === 0)
    for (const piece of options.format === 'json' ? checkJson(checked) : checkText(terminal, checked))
      terminal.out(piece);
  for (const problem of problems) cannotRun(terminal, problem);
  return problems.length > 0 ? 2 : exitOf(checked, options.strict);
}
