import type { Finding, Hop, Taken, Trace } from '../model/finding.ts';
import type { Procedure, Step } from '../model/procedure.ts';
import { printable } from '../model/printable.ts';
import { stepInWords } from '../model/step-in-words.ts';
import { stepNumber } from '../model/where.ts';
import type { StepRef } from '../model/where.ts';
import { outcomeInWords, traceLength } from '../paths/trace.ts';
import { undoneWait } from './undone-wait.ts';

/**
 * How much a hop says of how the finding comes about. `essential`: power is switched or waited for, or an outcome is
 * taken. `important`: the bench changes otherwise, or the way leads elsewhere. `unimportant`: it only lies between.
 */
export type Weight = 'essential' | 'important' | 'unimportant';

/** One step of a path, to be shown to people. */
export interface ToldHop {
  readonly step: StepRef;
  /** The step as it is written, in a few words on one line: `read driver-loop`. */
  readonly words: string;
  /** How the path leaves it, to be put right behind the words: `: else`. Empty where it just goes on. */
  readonly way: string;
  readonly weight: Weight;
}

/** Tells a path of a procedure. The last hop is the step that the finding is about, and always essential. */
export function tellPath(procedure: Procedure, { hops, repeatsFrom, owes }: Trace): readonly ToldHop[] {
  const { steps } = procedure;
  const undone = owes === undefined ? null : undoneWait(procedure, hops, owes);
  const words = wordsOf(procedure);
  const again = repeatsFrom === undefined ? undefined : hops[repeatsFrom];
  return hops.map(({ step, index, taken }, position) => {
    const written = steps[index];
    const isLast = position === hops.length - 1;
    const back = isLast && again !== undefined ? `, and step ${stepNumber(again.step)} again` : '';
    return {
      step,
      words: words[index] ?? '',
      way: wayInWords(taken, hops[position + 1]) + (undone?.by === position ? undone.words : '') + back,
      weight: isLast ? 'essential' : weightOf(written, taken),
    };
  });
}

/**
 * So many steps of paths are told of one file. A path may be as long as the procedure, and thousands of findings may lie
 * at its end.
 */
export const mostHops = 20_000;

/** The same findings, the last of them without their paths where all of these together are too long, which they say. */
export function* withPaths(findings: Iterable<Finding>): Generator<Finding> {
  let told = 0;
  for (const finding of findings) {
    const { trace, ...rest } = finding;
    // To count on would take as long as to tell.
    if (told <= mostHops) told += traceLength(trace);
    if (trace === undefined || told <= mostHops) yield finding;
    else yield { ...rest, message: `${finding.message} ${notTold}` };
  }
}

const notTold = `The way there is not told: the ways to the findings of this file have more than ${mostHops} steps together. Mend those before it, and it is told.`;

/** `step 3, read stage-1-loop: else`. */
export function hopInWords({ step, words, way }: ToldHop): string {
  return `step ${stepNumber(step)}${words === '' ? '' : `, ${words}`}${way}`;
}

function wayInWords(taken: Taken | null, next: Hop | undefined): string {
  switch (taken?.kind) {
    case 'outcome':
      return `: ${outcomeInWords(taken)}`;
    case 'go':
      return next === undefined ? '' : ` to step ${stepNumber(next.step)}`;
    case 'return':
      return next === undefined ? '' : `, then back to step ${stepNumber(next.step)}`;
    case 'end':
      return ', then the end';
    case 'next':
    case 'run':
    case undefined:
      return '';
  }
}

function weightOf(step: Step | undefined, taken: Taken | null): Weight {
  if (taken?.kind === 'outcome') return 'essential';
  switch (step?.verb) {
    case 'ignition':
    case 'disconnect':
    case 'reconnect':
    case 'wait':
    case 'prove-dead':
      return 'essential';
    case 'unlock':
    case 'unplug':
    case 'plug':
    case 'fit':
    case 'move':
    case 'remove':
    case 'replace':
    case 'clear-codes':
    case 'go':
      return 'important';
    case 'read':
    case 'measure':
    case 'wiggle':
    case 'read-codes':
    case 'inspect':
    case 'do':
    case 'conclude':
    case 'stop':
    case 'run':
    case 'broken':
    case undefined:
      return taken?.kind === 'run' ? 'important' : 'unimportant';
  }
}

/** No more of what a step says is told than this many characters. */
const longestWords = 80;

/** Of every step: many paths lead over the same ones. */
function wordsOf(procedure: Procedure): readonly string[] {
  const words = known.get(procedure) ?? procedure.steps.map((step) => shortened(stepInWords(step)));
  known.set(procedure, words);
  return words;
}

const known = new WeakMap<Procedure, readonly string[]>();

/** What a step says may run over several lines, hold what would steer a terminal, and be as long as a page. */
function shortened(words: string): string {
  const clean = printable(words.replace(/\s+/g, ' ')).trim();
  return clean.length <= longestWords ? clean : `${cutAt(clean, longestWords - 1).trimEnd()}…`;
}

/** Never between the halves of a character. */
export function cutAt(text: string, length: number): string {
  return text.slice(0, length).replace(/[\uD800-\uDBFF]$/, '');
}
