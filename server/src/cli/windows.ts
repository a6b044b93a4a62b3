import { finish } from '../model/work.ts';
import { stepNumber } from '../model/where.ts';
import { analyse } from '../project/analysis.ts';
import type { Id } from '../model/procedure.ts';
import type { Readings } from '../readings/reading.ts';
import { isStandingError } from '../model/finding.ts';
import type { Analysis } from '../project/analysis.ts';
import { readEntered } from './entered.ts';
import { readInput } from './input.ts';
import { cannotRun } from './terminal.ts';
import type { Exit, Terminal } from './terminal.ts';
import { readingsAsked } from './windows-asked.ts';
import type { Asked } from './windows-asked.ts';
import { windowsJson } from './windows-json.ts';
import { windowsText } from './windows-text.ts';

export interface WindowsOptions {
  readonly format: 'text' | 'json';
  readonly name?: string;
  /** A step by its number or its id; absent: all steps. */
  readonly step?: string;
  /** What was measured for entries, as written: `coolant=25`. */
  readonly entered: readonly string[];
  /** Whether each window is explained. */
  readonly why: boolean;
}

/** So many circuits are drawn for an explanation: the ends of the middle 95 % then move by less than a percent of it. */
const draws = 10_000;

/** What each reading step of a file reads. */
export function windows(terminal: Terminal, paths: readonly string[], options: WindowsOptions): Exit {
  if (paths.length !== 1) return cannotRun(terminal, 'windows needs one file');
  const { snapshot, files, problems } = readInput(terminal, paths, options.name);
  const [file] = files;
  if (problems[0] !== undefined) return cannotRun(terminal, problems[0]);
  if (file === undefined || files.length > 1)
    return cannotRun(terminal, 'windows needs one file, not a folder');
  return writeWindows(terminal, analyse(snapshot, file), options);
}

/** Of what was read. */
export function writeWindows(terminal: Terminal, analysis: Analysis, options: WindowsOptions): Exit {
  const checked = finish(analysis.windows());
  const steps = stepsAsked(analysis, options.step);
  const entered = readEntered(analysis.procedure().value, options.entered);
  if ('wrong' in entered) return cannotRun(terminal, entered.wrong);
  const asked = { ...explained(analysis, checked.value, steps, options.why), entered: entered.values };
  const findings = finish(analysis.findings('windows'));
  const failure = findings.find(({ rule }) => rule === 'not-checked');
  if (failure !== undefined) {
    if (options.format === 'json') terminal.out(windowsJson(analysis, checked.value, false, asked));
    return cannotRun(terminal, `${analysis.file}: ${failure.message}`);
  }
  if (options.step !== undefined && readingsAsked(checked.value, asked).length === 0)
    return cannotRun(terminal, `no step ${options.step} of this file reads or measures anything`);
  const useless = [...entered.values.keys()].find((entry) => !dependsOn(checked.value, asked, entry));
  if (useless !== undefined) return cannotRun(terminal, `no window that was asked for depends on ${useless}`);
  terminal.out(
    options.format === 'json'
      ? windowsJson(analysis, checked.value, checked.complete, asked)
      : windowsText(terminal, analysis, checked.value, findings, asked),
  );
  return checked.complete && !findings.some(isStandingError) ? 0 : 1;
}

/** Explains all that is asked for at once: what fails on the way is known before anything is written. */
function explained(
  analysis: Analysis,
  readings: Readings,
  steps: ReadonlySet<number>,
  why: boolean,
): Omit<Asked, 'entered'> {
  const wanted = why ? readings.readings.filter(({ index }) => steps.has(index)) : [];
  const explanations = new Map(
    wanted.map((reading) => [reading, finish(analysis.explain(reading.index, reading.of, draws))]),
  );
  return { steps, explanation: (reading) => explanations.get(reading) ?? null };
}

function dependsOn(readings: Readings, asked: Asked, entry: Id): boolean {
  return readingsAsked(readings, asked).some(
    ({ byEntry: [row] }) => row?.bands.some((band) => band.entry === entry) === true,
  );
}

function stepsAsked(analysis: Analysis, wanted: string | undefined): ReadonlySet<number> {
  const { steps } = analysis.procedure().value;
  const isWanted = (step: (typeof steps)[number]): boolean =>
    wanted === undefined || stepNumber(step) === wanted || step.id === wanted;
  return new Set(steps.flatMap((step, index) => (isWanted(step) ? [index] : [])));
}
