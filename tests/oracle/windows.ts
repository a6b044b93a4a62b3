import type { Id, Outcome, Procedure } from '../../server/src/text/procedure.ts';
import { acceptedOf, isMixed, roundedDown, roundedUp } from './accepted.ts';
import type { Accepted } from './accepted.ts';
import type { WINDOW_RULES } from './coverage.ts';
import { waysOut } from './graph.ts';
import { explore } from './oracle.ts';
import type { Met } from './oracle.ts';
import { someReadingProves } from './guarded.ts';
import { faultsOf } from './faults.ts';
import { circuitOf, shownBy, shownOf } from './values.ts';
import type { Interval, Shown } from './values.ts';
import { carryOut, wayTaken } from './verbs.ts';
import { isBridged } from './bridged.ts';
import { loadsIn, openConnectors, start } from './world.ts';
import type { World } from './world.ts';

/*
 * The rules about accepted windows, for the engine's readings: the good windows of a step over all benches in which it
 * is reached, and the steps that a sound circuit reaches. Told by step number and loop.
 */

export interface WindowTold {
  readonly rule: (typeof WINDOW_RULES)[number];
  readonly step: number;
  readonly loop: Id;
}

export interface StepWindow {
  readonly step: number;
  readonly loop: Id;
  /** Ohms, rounded outward where computed. null: not known, or a number on one bench and open on another. */
  readonly accepted: Accepted | null;
  /** By bench on which the step is reached. */
  readonly shown: readonly (Shown | null)[];
  readonly worlds: readonly World[];
}

const monitorOf = (procedure: Procedure, loop: Id) =>
  procedure.monitors.get(procedure.loops.get(loop)?.monitor ?? '');

/** The accepted window of each loop of each reading. */
export function windowsOf(procedure: Procedure, met: readonly Met[] = explore(procedure)): StepWindow[] {
  return procedure.steps.flatMap((step) =>
    step.verb !== 'read'
      ? []
      : step.loops.map((loop): StepWindow => {
          const monitor = monitorOf(procedure, loop);
          const worlds = met.filter((each) => each.step === step).map(({ after }) => after);
          const of = procedure.loops.get(loop);
          const shown = worlds.map((world) => (of === undefined ? null : shownOf(procedure, world, of)));
          const accepted = monitor === undefined ? null : acceptedOf(monitor, step.expect, shown);
          return { step: step.number, loop, accepted, shown, worlds };
        }),
  );
}

/** Outcomes of one loop that what is shown can have; all of them where the window is not known. */
function possible(accepted: Accepted | null, shown: Shown | null, resolution: number): Set<string> {
  if (accepted === null || shown === null) return new Set(['leak', 'open', 'below', 'within', 'above']);
  const found = new Set<string>();
  const window = accepted === 'open' ? { least: Infinity, most: null } : accepted;
  if (shown.canBeOpen) found.add(window.most === null ? 'within' : 'open');
  if (shown.number !== null) {
    const { least, most } = displayed(shown.number, resolution);
    const slack = 1e-9 * resolution;
    if (window.least !== null && least < window.least - slack) found.add('below');
    if (window.most !== null && most > window.most + slack) found.add('above');
    if (most >= (window.least ?? 0) - slack && least <= (window.most ?? Infinity) + slack)
      found.add('within');
  }
  return found;
}

const displayed = (number: Interval, resolution: number): Interval => ({
  least: roundedDown(number.least, resolution),
  most: roundedUp(number.most, resolution),
});

/** Every choice of one class for each loop. */
function choices(sets: readonly Set<string>[]): string[][] {
  return sets.reduce<string[][]>(
    (sofar, set) => sofar.flatMap((before) => [...set].map((each) => [...before, each])),
    [[]],
  );
}

function holds(outcome: Outcome, loops: readonly Id[], classes: readonly string[]): boolean {
  const fits = (shown: string | undefined): boolean =>
    outcome.name === 'outside' ? shown !== 'within' : shown === outcome.name;
  if (outcome.name === 'else' && outcome.of === undefined) return true;
  if (outcome.of !== undefined) return fits(classes[loops.indexOf(outcome.of)]);
  return classes.every(fits);
}

/** Steps that sound circuits reach, by number: outcomes only where a sound circuit can show them. */
function soundlyReached(procedure: Procedure, windows: readonly StepWindow[]): Set<number> {
  const reached = new Set<number>();
  const seen = new Set<string>();
  const waiting: { index: number; world: World }[] = [{ index: 0, world: start(procedure) }];
  for (let now = waiting.pop(); now !== undefined; now = waiting.pop()) {
    const { index, world } = now;
    const key = JSON.stringify([index, world]);
    const step = procedure.steps[index];
    if (seen.has(key) || step === undefined || step.verb === 'broken') continue;
    seen.add(key);
    reached.add(step.number);
    const { world: after } = carryOut(procedure, world, step);
    let ways = waysOut(procedure, index);
    if (step.verb === 'inspect' && step.outcomes !== null) {
      const ok =
        ways.find(({ outcome }) => outcome?.name === 'ok') ??
        ways.find(({ outcome }) => outcome?.name === 'else');
      ways = ok === undefined ? [] : [ok];
    }
    if (step.verb === 'prove-dead') ways = ways.filter(({ outcome }) => outcome?.name === 'dead');
    if (step.verb === 'read' && step.outcomes !== null) {
      const sets = step.loops.map((id) => {
        const loop = procedure.loops.get(id);
        const accepted =
          windows.find((window) => window.step === step.number && window.loop === id)?.accepted ?? null;
        const shown = loop === undefined ? null : shownOf(procedure, after, loop);
        return possible(accepted, shown, monitorOf(procedure, id)?.resolution ?? 0);
      });
      // A class named for one loop alone goes before `else`; of those that hold, the first in written order is taken.
      const inOrder = [...ways].sort(
        (a, b) => Number(a.outcome?.name === 'else') - Number(b.outcome?.name === 'else'),
      );
      const taken = choices(sets).map((classes) =>
        inOrder.find(({ outcome }) => outcome !== null && holds(outcome, step.loops, classes)),
      );
      ways = ways.filter((way) => taken.includes(way));
    }
    for (const way of ways)
      if (typeof way.to === 'number')
        waiting.push({ index: way.to, world: wayTaken(procedure, after, step, way.outcome, () => true) });
  }
  return reached;
}

function excludes(accepted: Accepted, shown: Shown, resolution: number): boolean {
  const classes = possible(accepted, shown, resolution);
  return ['below', 'above', 'open'].some((each) => classes.has(each));
}

/** What is told of windows; `anywhere` as if sound circuits came to every step. */
export function windowRules(procedure: Procedure, come?: 'anywhere'): WindowTold[] {
  const windows = windowsOf(procedure);
  const sound = soundlyReached(procedure, windows);
  // Told once for each loop.
  const toldCoarse = new Set<Id>();
  return windows.flatMap(({ step, loop, accepted, shown, worlds }): WindowTold[] => {
    const resolution = monitorOf(procedure, loop)?.resolution ?? null;
    const known = shown.filter((each) => each !== null);
    const numbers = known.map((each) => each.number).filter((number) => number !== null);
    if (resolution === null || known.length < shown.length || known.length === 0) return [];
    const written = procedure.steps.find((each) => each.number === step);
    const expect = written?.verb === 'read' ? written.expect : null;
    const told: WindowTold[] = [];
    const apart = (a: Interval, b: Interval): boolean =>
      Math.max(Math.abs(a.least - b.least), Math.abs(a.most - b.most)) > resolution * (1 + 1e-9);
    const isApart = numbers.some((a) => numbers.some((b) => apart(a, b)));
    // Number and open without a window are told as undefined.
    const mixed = isMixed(known);
    if (mixed ? expect !== null : isApart) told.push({ rule: 'window-differs', step, loop });
    if (expect === null && mixed) told.push({ rule: 'window-undefined', step, loop });
    const of = procedure.loops.get(loop);
    const fitted = (world: World): Id[] => (of === undefined ? [] : loadsIn(world, of));
    // A load under a closed bar is told where it came there.
    const judged = shown.flatMap((each, at) => {
      const world = worlds[at];
      if (each === null || world === undefined) return [];
      return fitted(world).some((load) => isBridged(procedure, world, load)) ? [] : [{ each, world }];
    });
    const isOut = ({ each, world }: (typeof judged)[number]): boolean =>
      fitted(world).length > 0 &&
      (expect === null
        ? each.number === null
        : accepted !== null && !possible(accepted, each, resolution).has('within'));
    if (judged.some(isOut)) told.push({ rule: 'load-out-of-window', step, loop });
    const takenApart = (world: World): boolean =>
      fitted(world).length > 0 || (of !== undefined && openConnectors(world, of).length > 0);
    if (
      expect !== null &&
      accepted !== null &&
      judged.some(
        (one) =>
          !isOut(one) &&
          (come === 'anywhere' || sound.has(step) || takenApart(one.world)) &&
          excludes(accepted, one.each, resolution),
      )
    )
      told.push({ rule: 'expect-excludes-good', step, loop });
    const monitor = monitorOf(procedure, loop);
    const computed = monitor === undefined ? null : acceptedOf(monitor, null, shown);
    const sureIn = (window: Accepted, circuit: Interval): boolean => {
      const fault = monitor === undefined ? null : shownBy(monitor, circuit);
      return fault !== null && !excludes(window, fault, resolution);
    };
    if (expect !== null && accepted !== null && computed !== null && of !== undefined) {
      const sides = judged.filter(
        (one) => !isOut(one) && possible(accepted, one.each, resolution).has('within'),
      );
      const faults = sides.flatMap(({ world }) => faultsOf(procedure, world, of));
      if (faults.some((fault) => sureIn(accepted, fault) && !sureIn(computed, fault)))
        told.push({ rule: 'expect-admits-fault', step, loop });
    }
    const provesNothing = (world: World): boolean => {
      const circuit = of === undefined ? null : circuitOf(procedure, world, of);
      if (accepted === null || circuit === null || circuit.least === Infinity) return false;
      return monitor !== undefined && someReadingProves(monitor, circuit) === false;
    };
    if (
      expect === null &&
      !toldCoarse.has(loop) &&
      worlds.some((world) => fitted(world).length === 0 && provesNothing(world))
    ) {
      told.push({ rule: 'meter-too-coarse', step, loop });
      toldCoarse.add(loop);
    }
    return told;
  });
}
