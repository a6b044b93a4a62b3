import type { Id, NamedWindow, Outcome, Procedure, Step } from '../../server/src/model/procedure.ts';
import { acceptedOf, excludes, isMixed, possible } from './accepted.ts';
import type { Accepted } from './accepted.ts';
import type { WINDOW_RULES } from './coverage.ts';
import { waysOut } from './graph.ts';
import { explore } from './oracle.ts';
import type { Met } from './oracle.ts';
import { someReadingProves } from './guarded.ts';
import { faultsOf } from './faults.ts';
import { aroundProbes, couldFlow } from './around-probes.ts';
import { isUndefined, needsInner, soundVolts } from './measured.ts';
import { showsAbsence } from './verified.ts';
import { isReading, readsOf } from './reads.ts';
import type { Read } from './reads.ts';
import { circuitOf, shownBy } from './values.ts';
import type { Interval, Shown } from './values.ts';
import { asReading } from './wiggled.ts';
import { carryOut, start, wayTaken } from './verbs.ts';
import { isBridged } from './bridged.ts';
import { loadsIn, openConnectors, seenOf } from './world.ts';
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
  readonly step: Step;
  readonly read: Read;
  /** Ohms or volts, rounded outward where computed. null: not known, or a number on one bench and open on another. */
  readonly accepted: Accepted | null;
  /** By bench on which the step is reached. */
  readonly shown: readonly (Shown | null)[];
  readonly worlds: readonly World[];
}

const found = new WeakMap<Procedure, StepWindow[]>();

/** The accepted window of all that is read at each step, computed once. */
export function windowsOf(procedure: Procedure): StepWindow[] {
  const windows = found.get(procedure) ?? allWindows(procedure, explore(procedure));
  found.set(procedure, windows);
  return windows;
}

function allWindows(procedure: Procedure, met: readonly Met[]): StepWindow[] {
  return procedure.steps.flatMap((step) =>
    readsOf(procedure, step).map((read): StepWindow => {
      const worlds = met.filter((each) => each.step === step).map(({ after }) => after);
      const shown = worlds.map(read.shown);
      const accepted = read.display === null ? null : acceptedOf(read.display, read.expect, shown);
      return { step, read, accepted, shown, worlds };
    }),
  );
}

const inNumbers = (window: NamedWindow['window']): Accepted => ({
  least: 'below' in window ? null : 'above' in window ? window.above : window.least,
  most: 'below' in window ? window.below : 'above' in window ? null : window.most,
});

/** Every choice of one class for each loop. */
function choices(sets: readonly Set<string>[]): string[][] {
  return sets.reduce<string[][]>(
    (sofar, set) => sofar.flatMap((before) => [...set].map((each) => [...before, each])),
    [[]],
  );
}

function holds(outcome: Outcome, loops: readonly Id[], classes: readonly string[]): boolean {
  const fits = (shown = ''): boolean => {
    if (outcome.name === 'window') return shown === `the ${outcome.window ?? ''}`;
    return outcome.name === 'outside'
      ? shown !== 'within' && !shown.startsWith('the ')
      : shown === outcome.name;
  };
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
    const reading = asReading(step);
    if (isReading(reading) && reading.outcomes !== null) {
      const here = windows.filter((window) => window.step === step);
      const all = here.map(({ read }) => read.of);
      const sets = here.map(({ read, accepted }) => {
        const shown = read.shown(after);
        const resolution = read.display?.resolution ?? 0;
        const named = read.windows.filter(
          ({ window }) => shown === null || possible(inNumbers(window), shown, resolution).has('within'),
        );
        return new Set([...possible(accepted, shown, resolution), ...named.map(({ name }) => `the ${name}`)]);
      });
      // A class named for one loop alone goes before `else`; of those that hold, the first in written order is taken.
      const inOrder = [...ways].sort(
        (a, b) => Number(a.outcome?.name === 'else') - Number(b.outcome?.name === 'else'),
      );
      const taken = choices(sets).map((classes) =>
        inOrder.find(({ outcome }) => outcome !== null && holds(outcome, all, classes)),
      );
      ways = ways.filter((way) => taken.includes(way));
    }
    for (const way of ways)
      if (typeof way.to === 'number')
        waiting.push({ index: way.to, world: wayTaken(procedure, after, step, way.outcome, null) });
  }
  return reached;
}

/** All that belongs to what is read: its loop, or what hangs together with the probes as built. */
interface Around {
  readonly loads: (world: World) => Id[];
  readonly open: (world: World) => Id[];
  readonly circuit: (world: World) => Interval | null;
  readonly faults: (world: World) => (Shown | null)[];
}

function around(procedure: Procedure, step: Step, { loop, display }: Read): Around {
  if (step.verb === 'measure') return aroundProbes(procedure, step);
  const by = (circuit: Interval): Shown | null => (display === null ? null : shownBy(display, circuit));
  return {
    loads: (world) => (loop === null ? [] : loadsIn(world, loop)),
    open: (world) => (loop === null ? [] : openConnectors(world, loop)),
    circuit: (world) => (loop === null ? null : circuitOf(procedure, world, loop)),
    faults: (world) => (loop === null ? [] : faultsOf(procedure, world, loop).map(by)),
  };
}

const none: Interval = { least: 0, most: 0 };

type OfVoltage = Extract<Step, { readonly verb: 'measure' }>;

const isVoltage = (step: Step): step is OfVoltage => step.verb === 'measure' && step.quantity === 'voltage';

/** Of benches that look the same to a reading one. */
function eachOnce({
  shown,
  worlds,
}: Pick<StepWindow, 'shown' | 'worlds'>): Pick<StepWindow, 'shown' | 'worlds'> {
  const keys = worlds.map(seenOf);
  const isFirst = (_: unknown, at: number): boolean => keys.indexOf(keys[at] ?? '') === at;
  return { shown: shown.filter(isFirst), worlds: worlds.filter(isFirst) };
}

/** What is told of windows; `anywhere` as if sound circuits came to every step. */
export function windowRules(procedure: Procedure, come?: 'anywhere'): WindowTold[] {
  const windows = windowsOf(procedure);
  const sound = soundlyReached(procedure, windows);
  // Told once for all steps that read the same.
  const toldCoarse = new Set<Id>();
  return windows.flatMap(({ step: taken, read, accepted, ...met }): WindowTold[] => {
    const { shown, worlds } = eachOnce(met);
    const step = asReading(taken);
    const { display, expect, of } = read;
    const resolution = display?.resolution ?? null;
    const known = shown.filter((each) => each !== null);
    const numbers = known.map((each) => each.number).filter((number) => number !== null);
    const told: WindowTold[] = [];
    const tell = (rule: WindowTold['rule']): number => told.push({ rule, step: step.number, loop: of });
    const undefinedAt = (world: World) => step.verb === 'measure' && isUndefined(procedure, world, step);
    const isNever = worlds.some(undefinedAt);
    if (isNever) tell('window-undefined');
    const needed = (world: World) => step.verb === 'measure' && needsInner(procedure, world, step);
    if (expect === null && worlds.some(needed)) tell('window-needs-value');
    if (display === null || resolution === null || known.length === 0) return told;
    const apart = (a: Interval, b: Interval): boolean =>
      Math.max(Math.abs(a.least - b.least), Math.abs(a.most - b.most)) > resolution * (1 + 1e-9);
    const isApart = numbers.some((a) => numbers.some((b) => apart(a, b)));
    // Number and open without a window are told as undefined.
    const mixed = isMixed(known);
    if (mixed ? expect !== null : isApart) tell('window-differs');
    if (expect === null && mixed && !isNever) tell('window-undefined');
    const near = around(procedure, step, read);
    const hasLoad = worlds.some((world) => near.loads(world).length > 0);
    const noPath = worlds.some((world) => !isVoltage(step) && near.circuit(world)?.least === Infinity);
    if (expect === null && numbers.length === 0 && noPath && !hasLoad && !isNever) tell('window-undefined');
    const volts = worlds.map((world) => (isVoltage(step) ? soundVolts(procedure, world, step) : null));
    const isAbsence = showsAbsence({ step, display }, accepted, volts);
    const isInsulation = step.verb === 'measure' && step.quantity === 'insulation';
    const drops = volts.flatMap((each, at) => {
      const world = worlds[at];
      return each === null || world === undefined ? [] : [{ each, world }];
    });
    const isNought = ({ least, most }: Interval): boolean => Math.max(-least, most) < 1e-10;
    if (
      drops.length > 0 &&
      drops.every(({ each }) => isNought(each)) &&
      drops.every(({ world }) => isVoltage(step) && couldFlow(procedure, world, step))
    )
      tell('nothing-flows');
    // A load under a closed bar is told where it came there.
    const judged = shown.flatMap((each, at) => {
      const world = worlds[at];
      if (each === null || world === undefined) return [];
      return near.loads(world).some((load) => isBridged(procedure, world, load)) ? [] : [{ each, world }];
    });
    const isOut = ({ each, world }: (typeof judged)[number]): boolean =>
      near.loads(world).length > 0 &&
      (expect === null
        ? each.number === null
        : accepted !== null && !possible(accepted, each, resolution).has('within'));
    if (judged.some(isOut)) tell('load-out-of-window');
    const takenApart = (world: World): boolean => near.loads(world).length > 0 || near.open(world).length > 0;
    if (
      expect !== null &&
      accepted !== null &&
      judged.some(
        (one) =>
          !isOut(one) &&
          (come === 'anywhere' || sound.has(step.number) || takenApart(one.world)) &&
          excludes(accepted, one.each, resolution),
      )
    )
      tell('expect-excludes-good');
    const computed = acceptedOf(display, null, known);
    if (expect !== null && accepted !== null && computed !== null) {
      const sides = judged.filter(
        (one) => !isOut(one) && possible(accepted, one.each, resolution).has('within'),
      );
      const isTypical = (fault: Shown | null): boolean => {
        if (fault === null || excludes(accepted, fault, resolution)) return false;
        // By hand most parts of a network would be named, were it enough that it may be left out.
        return step.verb === 'measure'
          ? !possible(computed, fault, resolution).has('within')
          : excludes(computed, fault, resolution);
      };
      if (!isAbsence && sides.some(({ world }) => near.faults(world).some(isTypical)))
        tell('expect-admits-fault');
    }
    const provesNothing = (world: World): boolean => {
      const circuit = near.circuit(world);
      if (accepted === null || circuit === null || circuit.least === Infinity || isAbsence) return false;
      // Beyond the range of a voltmeter there is no number at all, and nothing to prove.
      if (isVoltage(step) && accepted === 'open') return false;
      // Nought says nothing: a broken circuit shows the same.
      if (isVoltage(step) && isNought(circuit)) return false;
      return (
        someReadingProves(display, circuit, isVoltage(step) ? none : display.leads, isVoltage(step)) === false
      );
    };
    if (
      expect === null &&
      !isInsulation &&
      !toldCoarse.has(of) &&
      worlds.some((world) => near.loads(world).length === 0 && provesNothing(world))
    ) {
      tell('meter-too-coarse');
      toldCoarse.add(of);
    }
    return told;
  });
}
