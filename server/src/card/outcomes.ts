import { subjectsOf } from '../bench/asked.ts';
import type { LoopReading, Measuring } from '../bench/asked.ts';
import type { OutcomeName } from '../model/finding.ts';
import { formatLimit, formatSpan } from '../quantity/print.ts';
import type { Outcome, Procedure, Step, Target } from '../model/procedure.ts';
import { quantityFacts } from '../model/quantity-kinds.ts';
import { stepNumber } from '../model/where.ts';
import type { CardOutcome, CardReading, CardStep, Words } from './model.ts';
import { rankWhileMoved, seenFor } from './wiggle.ts';
import { canShow, classShort, classWords, windowOf } from './windows.ts';

type Reading = LoopReading | Measuring;
type Deciding = Exclude<Extract<Step, { readonly outcomes: unknown }>, { readonly verb: 'prove-dead' }>;

/** The ways out of a step that decides, in words; null where it decides nothing. */
export function sayOutcomes(
  procedure: Procedure,
  index: number,
  step: Step,
  readings: readonly CardReading[],
): CardStep['outcomes'] {
  if (!('outcomes' in step) || step.outcomes === null) return null;
  if (step.verb === 'prove-dead') return proofOutcomes(procedure, index, step);
  const said = { ...step, outcomes: step.outcomes.map((outcome) => asSaid(step, outcome, readings)) };
  const subjects = subjectsOf(step);
  const several = subjects.length > 1;
  const isMoved = step.verb === 'wiggle';
  // Of several loops the first line that holds counts, in written order. Of one, the classes exclude one another.
  const rows = isMoved
    ? said.outcomes.toSorted((left, right) => rankWhileMoved(left.name) - rankWhileMoved(right.name))
    : lastly(windowsFirst(said.outcomes), several ? ['else'] : ['outside', 'else']);
  return {
    introduction: several || isMoved ? 'Take the first line that is true, from the top:' : null,
    rows: rows
      .filter((outcome) => subjects.length === 0 || canBeTaken(subjects, outcome, readings))
      .map((outcome) => ({
        when: whenWords(procedure, said, outcome, readings),
        ...destination(procedure, index, outcome.target),
      })),
  };
}

/** What lies within the window is said so, also where `else` is what is left for it. */
function asSaid(step: Deciding, outcome: Outcome, readings: readonly CardReading[]): Outcome {
  const isSaid = step.outcomes?.some(({ name, of }) => name === 'within' && of === outcome.of) === true;
  const subjects = outcome.of === undefined ? subjectsOf(step) : [outcome.of];
  const isWithin = (of: string): boolean => readings.find((one) => one.of === of)?.elseIsWithin === true;
  return outcome.name === 'else' && !isSaid && subjects.length > 0 && subjects.every(isWithin)
    ? { ...outcome, name: 'within' }
    : outcome;
}

/** A window by name counts before the class that it lies in. */
function windowsFirst(outcomes: readonly Outcome[]): readonly Outcome[] {
  return [...outcomes.filter(isWindow), ...outcomes.filter((outcome) => !isWindow(outcome))];
}

function isWindow({ name }: Outcome): boolean {
  return name === 'window';
}

function proofOutcomes(
  procedure: Procedure,
  index: number,
  { outcomes }: Extract<Step, { readonly verb: 'prove-dead' }>,
): CardStep['outcomes'] {
  const target = (name: OutcomeName): Target | undefined =>
    outcomes.find((outcome) => outcome.name === name)?.target;
  const live = target('live');
  const next = index + 1 < procedure.steps.length ? index + 1 : 'end';
  return {
    introduction: null,
    rows: [
      {
        when: ['All three as stated'],
        ...destination(procedure, index, target('dead') ?? next),
      },
      {
        when: ['Anything else'],
        ...(live === undefined ? leaveLive : destination(procedure, index, live)),
      },
    ],
  };
}

const leaveLive: Omit<CardOutcome, 'when'> = {
  then: 'stop work. Touch nothing, keep all persons away, and tell the high-voltage expert in charge',
  to: null,
  isNext: false,
};

function lastly(outcomes: readonly Outcome[], last: readonly OutcomeName[]): readonly Outcome[] {
  const rank = (outcome: Outcome): number => last.indexOf(outcome.name);
  return [...outcomes].sort((left, right) => rank(left) - rank(right));
}

/** Where open is within the window a line for open would contradict the line for within, and is never taken. */
function canBeTaken(
  subjects: readonly string[],
  outcome: Outcome,
  readings: readonly CardReading[],
): boolean {
  if (outcome.name !== 'open') return true;
  const subject = outcome.of ?? subjects[0];
  return !windowOf(readings.find((reading) => reading.of === subject)).openIsWithin;
}

function destination(procedure: Procedure, index: number, target: Target): Omit<CardOutcome, 'when'> {
  if (target === 'end') return { then: 'End of the card', to: 'end', isNext: false };
  const step = target === null ? undefined : procedure.steps[target];
  if (step === undefined) return { then: 'a step that is not in the file', to: null, isNext: false };
  const number = stepNumber(step);
  if (target === index + 1) return { then: 'next step:', to: { step: number }, isNext: true };
  return { then: 'go to step', to: { step: number }, isNext: false };
}

function whenWords(
  procedure: Procedure,
  step: Deciding,
  outcome: Outcome,
  readings: readonly CardReading[],
): Words {
  switch (step.verb) {
    case 'read-codes':
    case 'inspect':
      return [foundWords(outcome.name)];
    case 'read':
      return step.loops.length > 1
        ? severalWords(outcome, readings)
        : oneWords(procedure, step, outcome, readings[0]);
    case 'measure':
      return oneWords(procedure, step, outcome, readings[0]);
    case 'wiggle': {
      const words = oneWords(procedure, step, outcome, readings[0]);
      return outcome.name === 'else' || outcome.name === 'outside'
        ? words
        : [...words, seenFor(outcome.name)];
    }
  }
}

/** What is found without a window. */
function foundWords(name: OutcomeName): string {
  switch (name) {
    case 'none':
      return 'No code';
    case 'stored':
      return 'A code is stored, but not present now';
    case 'present':
      return 'A code is present now';
    case 'ok':
      return 'In order';
    case 'defect':
      return 'Defect found';
    case 'else':
    case 'leak':
    case 'open':
    case 'below':
    case 'within':
    case 'above':
    case 'outside':
    case 'dead':
    case 'live':
    case 'window':
      return 'Anything else';
  }
}

function severalWords(outcome: Outcome, readings: readonly CardReading[]): Words {
  const { of } = outcome;
  if (of === undefined)
    return outcome.name === 'within' ? ['Every one of them is within its window'] : ['Anything else'];
  const reading = readings.find((candidate) => candidate.of === of);
  return [{ id: of }, ` ${classWords(outcome.name, windowOf(reading))}`];
}

function oneWords(
  procedure: Procedure,
  step: Reading,
  outcome: Outcome,
  reading: CardReading | undefined,
): Words {
  if (outcome.name === 'window') return [`Shows ${windowText(step, outcome.window)}`];
  const named = new Set((step.outcomes ?? []).map(({ name }) => name));
  if (outcome.name !== 'else' && (outcome.name !== 'outside' || named.size === 1))
    return [capital(classWords(outcome.name, windowOf(reading)))];
  const loop = 'loops' in step ? procedure.loops.get(step.loops[0] ?? '') : undefined;
  const monitor = loop === undefined ? undefined : procedure.monitors.get(loop.monitor ?? '');
  const classes: OutcomeName[] = ['within', 'below', 'above', 'open'];
  if (monitor !== undefined && monitor.leakBelow !== null) classes.push('leak');
  const rest = classes.filter(
    (name) =>
      !named.has(name) &&
      !(outcome.name === 'outside' && name === 'within') &&
      canShow(name, windowOf(reading)),
  );
  const beside = named.has('within') && !named.has('window');
  const listed = rest.map((name) => classShort(name, windowOf(reading), beside)).join('; ');
  return [listed === '' ? 'Anything else' : `Anything else (${listed})`];
}

/** `114..126 Ω (one-end)`. */
function windowText(step: Reading, name: string | undefined): string {
  const window = step.windows.find((one) => one.name === name)?.window;
  if (window === undefined) return 'a window that is not in the file';
  const { dimension } = quantityFacts['quantity' in step ? step.quantity : 'resistance'];
  const isLimit = 'below' in window || 'above' in window;
  return `${isLimit ? formatLimit(window, dimension) : formatSpan(window, dimension)} (${name ?? ''})`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
