import { spawnSync } from 'node:child_process';
import { program } from './paths.ts';

/** What a step should read, as the program prints it. Lines start at 0. */
export interface PrintedWindow {
  readonly line: number;
  readonly printed: string;
}

export function printedWindows(text: string): readonly PrintedWindow[] {
  const { readings } = ask('windows', text) as {
    readings: readonly { step: { line: number }; printed: string }[];
  };
  return readings.map(({ step, printed }) => ({ line: step.line, printed }));
}

/** Lines and characters start at 0. */
export interface PrintedFinding {
  readonly rule: string;
  readonly message: string;
  readonly range: {
    readonly start: { readonly line: number; readonly character: number };
    readonly end: { readonly line: number; readonly character: number };
  };
}

/** The first finding of a rule in a text, as the program prints it. */
export function firstFinding(text: string, rule: string): PrintedFinding {
  const { files } = ask('check', text) as {
    files: readonly { findings: readonly PrintedFinding[] }[];
  };
  const found = files.flatMap(({ findings }) => findings).find((finding) => finding.rule === rule);
  if (found === undefined) throw new Error(`the program finds no ${rule}`);
  return found;
}

function ask(command: string, text: string): unknown {
  const words = [program, command, '-', '--name', 'a.procedure.yaml', '--format', 'json'];
  const { status, stdout, stderr } = spawnSync(process.execPath, words, { encoding: 'utf8', input: text });
  // 1 says that errors were found.
  if (status === 0 || status === 1) return JSON.parse(stdout);
  throw new Error(`the program ended with ${status ?? 'no status'}: ${stderr}`);
}
