import type { Expect, Id, Outcome, Step } from '../../server/src/model/procedure.ts';
import type { Display } from './reads.ts';
import type { Interval, Shown } from './values.ts';

/* The accepted window of a reading, and the outcomes that a step has to name. */

export type Accepted = 'open' | { readonly least: number | null; readonly most: number | null };

function fromExpect(expect: Expect): Accepted {
  if (expect === 'open') return 'open';
  if ('below' in expect) return { least: null, most: expect.below };
  if ('above' in expect) return { least: expect.above, most: null };
  return { least: expect.least, most: expect.most };
}

export function roundedDown(value: number, resolution: number): number {
  return Math.floor(value / resolution + 1e-9) * resolution;
}
export function roundedUp(value: number, resolution: number): number {
  return Math.ceil(value / resolution - 1e-9) * resolution;
}

/** One bench shows nothing but numbers and another nothing but open: no window holds both. */
export function isMixed(known: readonly Shown[]): boolean {
  return (
    known.some(({ number }) => number === null) &&
    known.some(({ number, canBeOpen }) => number !== null && !canBeOpen)
  );
}

/** The accepted window over all benches in which the step is reached. null: not known, or number and open. */
export function acceptedOf(
  { resolution }: Display,
  expect: Expect | null,
  shown: readonly (Shown | null)[],
): Accepted | null {
  if (expect !== null) return fromExpect(expect);
  if (shown.length === 0 || shown.includes(null) || resolution === null) return null;
  const known = shown.filter((each) => each !== null);
  const numbers = known.map((each) => each.number).filter((number) => number !== null);
  if (numbers.length === 0) return 'open';
  if (isMixed(known)) return null;
  return {
    least: roundedDown(Math.min(...numbers.map((number) => number.least)), resolution),
    most: known.some((each) => each.canBeOpen)
      ? null
      : roundedUp(Math.max(...numbers.map((number) => number.most)), resolution),
  };
}

const displayed = (number: Interval, resolution: number): Interval => ({
  least: roundedDown(number.least, resolution),
  most: roundedUp(number.most, resolution),
});

/** Classes that what is shown can have; all of them where the window is not known. */
export function possible(accepted: Accepted | null, shown: Shown | null, resolution: number): Set<string> {
  if (accepted === null || shown === null) return new Set(['leak', 'open', 'below', 'within', 'above']);
  const found = new Set<string>();
  const window = accepted === 'open' ? { least: Infinity, most: null } : accepted;
  if (shown.canBeOpen) found.add(window.most === null ? 'within' : 'open');
  if (shown.number !== null) {
    const { least, most } = displayed(shown.number, resolution);
    const slack = 1e-9 * resolution;
    if (window.least !== null && least < window.least - slack) found.add('below');
    if (window.most !== null && most > window.most + slack) found.add('above');
    if (most >= (window.least ?? -Infinity) - slack && least <= (window.most ?? Infinity) + slack)
      found.add('within');
  }
  return found;
}

export function excludes(accepted: Accepted, shown: Shown, resolution: number): boolean {
  const classes = possible(accepted, shown, resolution);
  return ['below', 'above', 'open'].some((each) => classes.has(each));
}

/** Whether an open circuit is outside the window; one that is not known is not held against the reading. */
export const tellsOpen = (accepted: Accepted | null): boolean =>
  accepted === null || (accepted !== 'open' && accepted.most !== null);

/** The classes that a reading has to name. null: not known. */
export function requiredClasses(
  { range, leakBelow, floor }: Display,
  accepted: Accepted | null,
): string[] | null {
  if (accepted === null || range === null) return null;
  const leak = leakBelow === null ? [] : ['leak'];
  if (accepted === 'open') return ['within', 'below', ...leak];
  const below = accepted.least !== null && accepted.least > floor;
  const above = accepted.most !== null && accepted.most < range.most;
  return [
    'within',
    ...(below ? ['below'] : []),
    ...(above ? ['above'] : []),
    ...(accepted.most === null ? [] : ['open']),
    ...leak,
  ];
}

function names(outcomes: readonly Outcome[], of: Id | undefined, wanted: string): boolean {
  return outcomes.some(
    (outcome) =>
      outcome.of === of && (outcome.name === wanted || (outcome.name === 'outside' && wanted !== 'within')),
  );
}

const everyFault = ['below', 'above', 'open', 'leak'];

/**
 * Whether an outcome says that what is read of one thing is within its window. `else` is what is left over: it does
 * where every class that is a fault is named and `within` is not. `required`: all that can be shown, null where that is
 * not known.
 */
export function saysWithin(
  step: Step,
  of: Id,
  outcome: Outcome,
  required: readonly string[] | null,
  { leakBelow }: Pick<Display, 'leakBelow'>,
): boolean {
  if (step.verb !== 'read' && step.verb !== 'measure') return false;
  const isOnly = step.verb === 'measure' || step.loops.length === 1;
  if (outcome.of !== undefined && outcome.of !== of) return false;
  if (outcome.name !== 'else') return outcome.name === 'within';
  const all = step.outcomes ?? [];
  const isNamed = (wanted: string): boolean =>
    names(all, of, wanted) || (isOnly && names(all, undefined, wanted));
  const faults = (required ?? everyFault).filter(
    (each) => each !== 'within' && (each !== 'leak' || leakBelow !== null),
  );
  return !isNamed('within') && faults.every(isNamed);
}

/** Whether a step names outcomes, none is missing, and all of them lead to one step. */
export function makesNoDifference(step: Step, required: (of: Id) => string[] | null): boolean {
  if (step.verb === 'prove-dead' || !('outcomes' in step) || step.outcomes === null) return false;
  const targets = new Set(step.outcomes.map(({ target }) => target));
  return targets.size === 1 && !targets.has(null) && !isUncovered(step, required);
}

/** Whether a step leaves out an outcome that can happen. `required` answers for one loop of a reading. */
export function isUncovered(step: Step, required: (loop: Id) => string[] | null): boolean {
  if (
    step.verb !== 'read' &&
    step.verb !== 'measure' &&
    step.verb !== 'read-codes' &&
    step.verb !== 'inspect'
  )
    return false;
  const { outcomes } = step;
  if (outcomes === null || outcomes.some((outcome) => outcome.name === 'else' && outcome.of === undefined))
    return false;
  const bare = (wanted: string): boolean => names(outcomes, undefined, wanted);
  if (step.verb === 'read-codes') return !['none', 'stored', 'present'].every(bare);
  if (step.verb === 'inspect') return !['ok', 'defect'].every(bare);
  const wanted = (step.verb === 'measure' ? [step.of] : step.loops).map((loop) => ({
    loop,
    classes: required(loop),
  }));
  if (wanted.some(({ classes }) => classes === null)) return false;
  const [only] = wanted;
  if (wanted.length === 1 && only !== undefined) {
    return !(only.classes ?? []).every((each) => bare(each) || names(outcomes, only.loop, each));
  }
  const named = ({ loop, classes }: (typeof wanted)[number], less: string): boolean =>
    (classes ?? []).every((each) => each === less || names(outcomes, loop, each));
  const oneWhole = wanted.some((each) => named(each, ''));
  const allButWithin = bare('within') && wanted.every((each) => named(each, 'within'));
  return !oneWhole && !allButWithin;
}
