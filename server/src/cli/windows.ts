import { finish } from '../bench/work.ts';
import { analyse } from '../project/analysis.ts';
import { isWaived } from './checked.ts';
import { readInput } from './input.ts';
import { cannotRun } from './terminal.ts';
import type { Exit, Terminal } from './terminal.ts';
import { windowsJson } from './windows-json.ts';
import { windowsText } from './windows-text.ts';

export interface WindowsOptions {
  readonly format: 'text' | 'json';
  readonly name?: string;
}

/** What each reading step of a file reads. */
export function windows(terminal: Terminal, paths: readonly string[], options: WindowsOptions): Exit {
  if (paths.length !== 1) return cannotRun(terminal, 'windows needs one file');
  const { snapshot, files, problems } = readInput(terminal, paths, options.name);
  const [file] = files;
  if (problems[0] !== undefined) return cannotRun(terminal, problems[0]);
  if (file === undefined || files.length > 1)
    return cannotRun(terminal, 'windows needs one file, not a folder');
  const analysis = analyse(snapshot, file);
  const checked = finish(analysis.windows());
  const findings = finish(analysis.findings('windows'));
  terminal.out(
    options.format === 'json'
      ? windowsJson(analysis, checked.value, checked.complete)
      : windowsText(terminal, analysis, checked.value, findings),
  );
  return checked.complete && !findings.some((one) => one.severity === 'error' && !isWaived(one)) ? 0 : 1;
}
