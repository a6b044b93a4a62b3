import type { Reading } from '../../readings/reading.ts';
import { showsOnlyNumbers, showsOnlyOpen } from '../../readings/accepted.ts';
import { classesOfGood, classesShown } from '../../readings/classes.ts';
import { subjectInWords } from '../../readings/subject.ts';
import { benchInWords } from '../../readings/bench-in-words.ts';
import { subjectsOf } from '../../bench/asked.ts';
import { reachable } from '../../paths/graph.ts';
import type { Edge } from '../../paths/graph.ts';
import type { OutcomeName, ReadingClass } from '../../model/finding.ts';
import { outcomeFacts } from '../../model/outcome-kinds.ts';
import type { Outcome } from '../../model/procedure.ts';
import { shownInWords } from '../../readings/shown-in-words.ts';
import { judgedByLoad } from './load-out-of-window-check.ts';
import type { Context, Finder, Seen } from '../rule.ts';
import { byReading, expects, known, seen } from './window-sides.ts';
import { listed } from '../words.ts';
import type { Side } from './window-sides.ts';

/* The windows of a step, held against each other and against what the author expects. */

export const windowDiffersFinder: Finder = { check: (context) => byReading(context, differs) };
export const windowUndefinedFinder: Finder = { check: (context) => byReading(context, undefinedWindow) };
export const expectExcludesGoodFinder: Finder = { check: expectExcludesGood };

/** A number on one bench and open on another, and the author does not say which. */
function mixture(reading: Reading): readonly [Side, Side] | null {
  const sides = known(reading);
  const number = sides.find(({ indication }) => showsOnlyNumbers(indication));
  const open = sides.find(({ indication }) => showsOnlyOpen(indication));
  return number !== undefined && open !== undefined ? [number, open] : null;
}

/** `A sound stage-1-loop`, or `The resistance across K4.end`. */
function soundly(reading: Reading): string {
  const words = subjectInWords(reading);
  return reading.loop === null ? `${words.charAt(0).toUpperCase()}${words.slice(1)}` : `A sound ${words}`;
}

function undefinedWindow(context: Context, reading: Reading): Seen | null {
  const unknown = cannotBe(reading);
  if (unknown !== null) return seen(context, reading, 'window-undefined', unknown, []);
  if (expects(context, reading)) return null;
  if (isOpenInsulation(reading)) {
    const message =
      `${soundly(reading)} is open where it is sound, and no instrument shows that for certain. ` +
      'State with `expect` from where it counts as sound, such as `above 500 kΩ`.';
    return seen(context, reading, 'window-undefined', message, []);
  }
  const open = openThroughout(context, reading);
  if (open !== null) {
    const message =
      `${soundly(reading)} reads open here when ${benchInWords(open.arrival.state)}, as a broken circuit does: ` +
      'state `expect: open` where that is meant.';
    return seen(context, reading, 'window-undefined', message, [open]);
  }
  const mixed = mixture(reading);
  if (mixed === null) return null;
  return undefinedMixture(context, reading, mixed);
}

/** A bench without a path between the terminals, where no bench shows a number; null: there is none, or a load is the reason. */
function openThroughout(context: Context, reading: Reading): Side | null {
  const sides = known(reading);
  if (!sides.every(({ indication }) => showsOnlyOpen(indication))) return null;
  if (sides.some((side) => judgedByLoad(context, reading, side) !== null)) return null;
  return sides.find(({ circuit }) => circuit === 'open') ?? null;
}

function undefinedMixture(context: Context, reading: Reading, mixed: readonly [Side, Side]): Seen {
  const [number, open] = mixed;
  const message =
    `${soundly(reading)} reads a number here when ${benchInWords(number.arrival.state)}, ` +
    `and open when ${benchInWords(open.arrival.state)}: read it in two steps, or state \`expect\`.`;
  return seen(context, reading, 'window-undefined', message, mixed);
}

function isOpenInsulation(reading: Reading): boolean {
  return (
    reading.quantity === 'insulation' && known(reading).some(({ indication }) => showsOnlyOpen(indication))
  );
}

/** Why nothing can be computed on one of the benches; null: there is no such reason. */
function cannotBe(reading: Reading): string | null {
  const impossible = reading.good.find(({ conflict }) => conflict.length > 0);
  if (impossible !== undefined)
    return (
      `The terminals of ${listed(impossible.conflict)} are joined without a resistance, so no voltage can be computed when ` +
      `${benchInWords(impossible.arrival.state)}: write what lies between them into the network.`
    );
  const undecided = reading.good.find((one) => one.undecided !== null);
  if (undecided !== undefined)
    return (
      `Whether any voltage is left for ${undecided.undecided ?? ''} cannot be told from the values stated when ` +
      `${benchInWords(undecided.arrival.state)}, so nothing can be computed: state what it draws, or what lies before it, more closely.`
    );
  const leaking = reading.good.find(({ leak }) => leak === 'always');
  if (leaking === undefined) return null;
  return (
    `${soundly(reading)} is reported as a leak when ${benchInWords(leaking.arrival.state)}: ` +
    `its paths to ground or a supply are below the limit of ${reading.instrument?.id ?? 'its monitor'}.`
  );
}

function differs(context: Context, reading: Reading): Seen | null {
  const mixed = mixture(reading);
  if (mixed !== null && !expects(context, reading)) return null;
  const apart = mixed ?? furthestApart(reading);
  if (apart === null) return null;
  const [one, other] = apart;
  const { quantity } = reading;
  const message =
    `${soundly(reading)} reads differently on different paths: ${shownInWords(one.indication, quantity)} when ` +
    `${benchInWords(one.arrival.state)}, ${shownInWords(other.indication, quantity)} when ${benchInWords(other.arrival.state)}.`;
  return seen(context, reading, 'window-differs', message, apart);
}

/** Two benches whose windows differ by more than the resolution. */
function furthestApart(reading: Reading): readonly [Side, Side] | null {
  const resolution = reading.instrument?.resolution ?? 0;
  const numbers = known(reading).filter((one) => one.indication.value !== null);
  const [first] = numbers;
  if (first === undefined) return null;
  const tolerance = resolution * (1 + 1e-9);
  for (const bound of ['least', 'most'] as const) {
    const sorted = numbers.toSorted(
      (a, b) => (a.indication.value?.[bound] ?? 0) - (b.indication.value?.[bound] ?? 0),
    );
    const [low, high] = [sorted[0] ?? first, sorted.at(-1) ?? first];
    if ((high.indication.value?.[bound] ?? 0) - (low.indication.value?.[bound] ?? 0) > tolerance)
      return [low, high];
  }
  return null;
}

function expectExcludesGood(context: Context): readonly Seen[] {
  const soundly = soundlyReached(context);
  return byReading(context, (_, reading) => {
    const { accepted, instrument, quantity } = reading;
    if (!expects(context, reading) || accepted === null || instrument === null) return null;
    const resolution = instrument.resolution ?? 0;
    const judged = known(reading).filter(
      (one) =>
        (soundly[reading.index] === true || isTakenApart(one)) &&
        judgedByLoad(context, reading, one) === null,
    );
    const excluded = judged.find((one) =>
      classesShown(one.indication, accepted, resolution).some((shown) => shown !== 'within'),
    );
    if (excluded === undefined) return null;
    const message =
      `\`expect\` leaves out what a sound circuit shows: ${shownInWords(excluded.indication, quantity)} of ${subjectInWords(reading)} ` +
      `when ${benchInWords(excluded.arrival.state)}: a good circuit would be judged faulty.`;
    return seen(context, reading, 'expect-excludes-good', message, [excluded], ['expect']);
  });
}

/** Something is out of the circuit, so the rest of it may well be sound whatever brought the reader here. */
function isTakenApart({ arrival }: Side): boolean {
  const { connectors, loads } = arrival.state.hardware;
  return connectors.size > 0 || loads.size > 0;
}

/** By step: whether a circuit without a fault can come here, by the outcomes that it can show. */
function soundlyReached(context: Context): readonly boolean[] {
  return reachable(context.graph, (index, edge) => canBeSound(context, index, edge));
}

function canBeSound(context: Context, index: number, edge: Edge): boolean {
  const step = context.graph.steps[index];
  const outcome = edge.outcome;
  if (step === undefined || outcome === undefined || !('outcomes' in step)) return true;
  switch (step.verb) {
    case 'inspect':
    case 'prove-dead':
      return outcome.name === 'else' || outcomeFacts[outcome.name].isGood;
    case 'read-codes':
      return true;
    case 'read':
    case 'measure':
    case 'wiggle':
      return canShow(context, index, outcome, subjectsOf(step), step.outcomes ?? []);
  }
}

/** Whether sound circuits, all those that are read or the one that the outcome is of, can be shown so. */
function canShow(
  context: Context,
  index: number,
  outcome: Outcome,
  all: readonly string[],
  outcomes: readonly Outcome[],
): boolean {
  if (outcome.name === 'window') return true;
  const loops = outcome.of === undefined ? all : [outcome.of];
  const named = all.length === 1 ? outcomes.map(({ name }) => name) : [];
  return loops.every((loop) => {
    const shown = soundClasses(context, index, loop);
    if (shown === null) return true;
    if (outcome.name !== 'else') return shown.some((one) => covers(outcome.name, one));
    return named.length === 0 || shown.some((one) => !named.some((name) => covers(name, one)));
  });
}

function covers(name: OutcomeName, shown: ReadingClass): boolean {
  return name === shown || (name === 'outside' && shown !== 'within');
}

/** What a sound circuit can show at a step, on any bench; null: not known. */
function soundClasses(context: Context, index: number, of: string): readonly ReadingClass[] | null {
  const reading = context.readings.at(index, of);
  if (reading === undefined || reading.accepted === null) return null;
  const { accepted, instrument } = reading;
  const shown = reading.good.map((one) => classesOfGood(one, accepted, instrument?.resolution ?? 0));
  const known = shown.filter((one) => one !== null);
  return known.length < shown.length ? null : known.flat();
}
