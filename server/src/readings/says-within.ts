import { subjectsOf } from '../bench/asked.ts';
import type { LoopReading, Measuring } from '../bench/asked.ts';
import type { OutcomeName, ReadingClass } from '../model/finding.ts';
import type { Outcome } from '../model/procedure.ts';
import { classesRequired } from './classes.ts';
import type { Reading } from './reading.ts';

/* What the outcomes of a step say of one of its readings. */

export type Deciding = LoopReading | Measuring;

/** Whether an outcome says that a reading lies within its window: by name, or as what all other outcomes leave over. */
export function saysWithin(step: Deciding, outcome: Outcome, reading: Reading): boolean {
  if (outcome.of !== undefined && outcome.of !== reading.of) return false;
  return outcome.name === 'within' || (outcome.name === 'else' && elseIsWithin(step, reading));
}

/**
 * Whether `else` is what lies within the window of a reading: each other class that it can have has an outcome, and
 * `within` has none. A window by name lies beside the classes and covers none of them.
 */
export function elseIsWithin(step: Deciding, reading: Reading): boolean {
  const names = namesFor(step, reading.of);
  const others = [...(classesToCover(reading) ?? allBut(reading))].filter((one) => one !== 'within');
  return !names.includes('within') && others.every((one) => covers(names, one));
}

/**
 * The classes that a step has to cover for one of its readings, on every row of its table: on a narrower window more can
 * be below or above, and open can be a fault. null: its window is not known, or no path reaches it.
 */
export function classesToCover({
  accepted,
  instrument,
  byEntry,
  good,
}: Reading): ReadonlySet<ReadingClass> | null {
  if (good.length === 0 || accepted === null || instrument === null) return null;
  const windows = [accepted, ...byEntry.flatMap((row) => row.accepted ?? [])];
  return new Set(windows.flatMap((window) => classesRequired(window, instrument)));
}

/** Of a window that is not known each class may be shown. */
function allBut({ instrument }: Reading): readonly ReadingClass[] {
  const seesLeaks = instrument !== null && instrument.leakBelow !== null;
  return ['below', 'above', 'open', ...(seesLeaks ? (['leak'] as const) : [])];
}

/** Whether outcomes of these names are taken where a class is shown, `else` aside. */
export function covers(names: readonly OutcomeName[], shown: ReadingClass): boolean {
  return names.includes(shown) || (shown !== 'within' && names.includes('outside'));
}

/** The names of the outcomes that are of one reading of a step alone. */
export function namesFor(step: Deciding, of: string): readonly OutcomeName[] {
  const isAlone = subjectsOf(step).length === 1;
  return (step.outcomes ?? [])
    .filter((outcome) => outcome.of === of || (isAlone && outcome.of === undefined))
    .map(({ name }) => name);
}
