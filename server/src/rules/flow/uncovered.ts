import type { LoopReading } from '../../bench/asked.ts';
import { classesToCover, covers, namesFor } from '../../readings/says-within.ts';
import type { Deciding } from '../../readings/says-within.ts';
import type { OutcomeName, ReadingClass } from '../../model/finding.ts';
import { outcomeNamesOf } from '../../model/outcome-kinds.ts';
import type { Outcome, Step } from '../../model/procedure.ts';
import { example } from '../examples.ts';
import type { Context, Rule, Seen } from '../rule.ts';
import { listed } from '../words.ts';

/* Outcomes that a step can have and does not name: the reader of the card would stand there without a next step. */

function reading(outcomes: string): string {
  return `
- ignition: on
- read-codes: control-unit
- clear-codes: control-unit
- read: driver-loop
  outcomes: { ${outcomes} }
- stop: The loop is sound.
- stop: The loop is not sound. Ask the workshop lead.
  id: faulty
`;
}

export const uncovered: Rule = {
  name: 'uncovered',
  severity: 'error',
  stage: 'order',
  meaning: 'A step with outcomes that leaves out one that can happen.',
  why: 'The reader would see something on the display that the card does not know.',
  source: 'common practice: state what to expect and what to do then',
  finder: { check: findUncovered },
  examples: {
    triggers: example(
      'nothing is said of an open loop',
      reading('below: faulty, within: next, above: faulty'),
    ),
    passes: example('`else` covers the rest', reading('within: next, else: faulty')),
  },
};

function findUncovered(context: Context): readonly Seen[] {
  return context.graph.steps.flatMap((step, index) => {
    if (context.reached[index] !== true) return [];
    const missing = missingOutcomes(context, step, index);
    if (missing.length === 0) return [];
    const names = missing.map((name) => `\`${name}\``);
    const message = `No outcome covers ${listed(names)}: say where to go then, or add \`else\`.`;
    return [{ index, issue: { rule: 'uncovered', underline: ['outcomes'], message } }];
  });
}

/** The outcomes that a step can have and does not name; empty where it states none, or where nothing is known. */
export function missingOutcomes(context: Context, step: Step, index: number): readonly string[] {
  if (!('outcomes' in step) || step.outcomes === null) return [];
  switch (step.verb) {
    case 'inspect':
      return notNamed(outcomeNamesOf('inspect'), step.outcomes);
    case 'read-codes':
      return notNamed(outcomeNamesOf('read-codes'), step.outcomes);
    case 'read':
      return missingClasses(context, step, step.outcomes, index);
    case 'measure':
      return missingOf(context, step, index, step.of) ?? [];
    case 'wiggle':
      return step.by === 'monitor'
        ? missingClasses(context, step, step.outcomes, index)
        : (missingOf(context, step, index, step.of) ?? []);
    case 'prove-dead':
      // What it does not name is known: dead goes on, live ends the work.
      return [];
  }
}

function notNamed(required: readonly OutcomeName[], outcomes: readonly Outcome[]): readonly OutcomeName[] {
  const names = new Set(outcomes.map(({ name }) => name));
  return names.has('else') ? [] : required.filter((name) => !names.has(name));
}

function missingClasses(
  context: Context,
  step: LoopReading,
  outcomes: readonly Outcome[],
  index: number,
): readonly string[] {
  const shared = outcomes.filter(({ of }) => of === undefined).map(({ name }) => name);
  if (shared.includes('else')) return [];
  const byLoop = step.loops.map((loop) => ({ loop, missing: missingOf(context, step, index, loop) }));
  if (byLoop.some(({ missing }) => missing === null || missing.length === 0)) return [];
  const [only] = byLoop;
  if (byLoop.length === 1 && only !== undefined) return only.missing ?? [];
  return byLoop.flatMap(({ loop, missing }) =>
    (missing ?? [])
      .filter((name) => !(name === 'within' && shared.includes('within')))
      .map((name) => `${loop}: ${name}`),
  );
}

/** The classes of one reading that no outcome covers; null where its window is not known. */
function missingOf(
  { readings }: Context,
  step: Deciding,
  index: number,
  of: string,
): readonly ReadingClass[] | null {
  const reading = readings.at(index, of);
  const required = reading === undefined ? null : classesToCover(reading);
  if (required === null) return null;
  const names = namesFor(step, of);
  return names.includes('else') ? [] : [...required].filter((one) => !covers(names, one));
}
