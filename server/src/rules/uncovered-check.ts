import { classesRequired } from '../readings/classes.ts';
import type { OutcomeName, ReadingClass } from '../text/finding.ts';
import type { Measuring } from '../bench/asked.ts';
import { outcomesOf } from '../text/outcome-kinds.ts';
import type { Outcome, Step } from '../text/procedure.ts';
import type { Context, Finder, Seen } from './rule.ts';
import { listed } from './words.ts';

/* Outcomes that a step can have and does not name: the reader of the card would stand there without a next step. */

export const uncoveredFinder: Finder = { check: uncovered };

function uncovered(context: Context): readonly Seen[] {
  return context.graph.steps.flatMap((step, index) => {
    if (context.reached[index] !== true) return [];
    const missing = missingOutcomes(context, step, index);
    if (missing.length === 0) return [];
    const names = missing.map((name) => `\`${name}\``);
    const message = `No outcome covers ${listed(names)}: say where to go then, or add \`else\`.`;
    return [{ index, issue: { rule: 'uncovered', underline: ['outcomes'], message } }];
  });
}

function missingOutcomes(context: Context, step: Step, index: number): readonly string[] {
  if (!('outcomes' in step) || step.outcomes === null) return [];
  switch (step.verb) {
    case 'inspect':
      return notNamed(outcomesOf('inspect'), step.outcomes);
    case 'read-codes':
      return notNamed(outcomesOf('read-codes'), step.outcomes);
    case 'read':
      return missingClasses(context, step, step.outcomes, index);
    case 'measure':
      return missingMeasured(context, step, step.outcomes, index);
    case 'prove-dead':
      // What it does not name is known: dead goes on, live ends the work.
      return [];
  }
}

function missingMeasured(
  context: Context,
  { of }: Measuring,
  outcomes: readonly Outcome[],
  index: number,
): readonly string[] {
  const names = outcomes.map(({ name }) => name);
  return names.includes('else') ? [] : (missingOf(context, index, of, names) ?? []);
}

function notNamed(required: readonly OutcomeName[], outcomes: readonly Outcome[]): readonly OutcomeName[] {
  const names = new Set(outcomes.map(({ name }) => name));
  return names.has('else') ? [] : required.filter((name) => !names.has(name));
}

function missingClasses(
  context: Context,
  step: Step & { verb: 'read' },
  outcomes: readonly Outcome[],
  index: number,
): readonly string[] {
  const shared = outcomes.filter(({ of }) => of === undefined).map(({ name }) => name);
  if (shared.includes('else')) return [];
  const [only] = step.loops;
  if (step.loops.length === 1 && only !== undefined) return missingOf(context, index, only, shared) ?? [];
  const byLoop = step.loops.map((loop) => {
    const own = outcomes.filter(({ of }) => of === loop).map(({ name }) => name);
    return { loop, missing: missingOf(context, index, loop, own) };
  });
  if (byLoop.some(({ missing }) => missing === null || missing.length === 0)) return [];
  const apart = byLoop.flatMap(({ loop, missing }) =>
    (missing ?? [])
      .filter((name) => !(name === 'within' && shared.includes('within')))
      .map((name) => `${loop}: ${name}`),
  );
  return apart;
}

/** The classes of one reading that none of the names covers; null where its window is not known. */
function missingOf(
  context: Context,
  index: number,
  of: string,
  names: readonly OutcomeName[],
): readonly ReadingClass[] | null {
  const reading = context.readings.at(index, of);
  const accepted = reading?.accepted ?? null;
  const instrument = reading?.instrument ?? null;
  if (reading === undefined || reading.good.length === 0 || accepted === null || instrument === null)
    return null;
  const covered = (one: ReadingClass): boolean =>
    names.includes(one) || names.includes('else') || (one !== 'within' && names.includes('outside'));
  // On a narrower window of the table more can be below or above, and open can be a fault.
  const windows = [accepted, ...reading.byEntry.flatMap((row) => row.accepted ?? [])];
  const required = new Set(windows.flatMap((window) => classesRequired(window, instrument)));
  return [...required].filter((one) => !covered(one));
}
