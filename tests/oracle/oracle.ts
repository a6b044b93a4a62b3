import type { Id, Loop, Probed, Procedure, Step } from '../../server/src/model/procedure.ts';
import { commanded } from './commands.ts';
import { acceptedOf, isUncovered, makesNoDifference, requiredClasses, saysWithin } from './accepted.ts';
import type { Accepted } from './accepted.ts';
import { readsOf } from './reads.ts';
import type { Read } from './reads.ts';
import { endlessSteps, pathsAreCut, reachable, repeatingSteps, unreachableSteps, waysOut } from './graph.ts';
import { codesSet } from './values.ts';
import type { ForetoldCode } from './values.ts';
import { netPieces, probed } from './network.ts';
import { namedIn } from './node-names.ts';
import { held } from './touch.ts';
import { idle } from './idle.ts';
import { soundVolts } from './measured.ts';
import { showsAbsence } from './verified.ts';
import type { HeldAgainst } from './verified.ts';
import { ofEntries } from './stated.ts';
import { atEnd, leftBehind, openUnderPower } from './ends.ts';
import { carryOut, listening, start, wayTaken } from './verbs.ts';
import { asReading } from './wiggled.ts';
import type { Proves } from './verbs.ts';
import {
  allLoops,
  carriedBy,
  dangers,
  feedersOf,
  feedersOfMonitor,
  liveLoops,
  loopsThrough,
} from './world.ts';
import type { World, Wrong } from './world.ts';

/*
 * The order rules by brute force: every path, the whole bench in one state, breadth first, so that the first time
 * anything is found is its shortest path. Slow and plain on purpose; it is what the engine is held against.
 */

export interface Told {
  readonly rule: string;
  readonly step: number | null;
  readonly subject: string | null;
  /** Steps on the shortest path, the step itself counted. null: no path, or not a matter of one. */
  readonly shortest: number | null;
  /** Of the end rules: whether it is an error, which it is behind the last step and where a live loop is under power. */
  readonly isError?: boolean;
}

/** One step carried out on one bench, as it is met on the way. */
export interface Met {
  readonly index: number;
  readonly step: Step;
  /** Steps up to here, this one counted. */
  readonly depth: number;
  readonly before: World;
  readonly after: World;
  readonly wrongs: readonly Wrong[];
}

/** Every step on every bench on which a path reaches it, shortest paths first. Paths stop at what cannot be read. */
export function explore(procedure: Procedure, proves: Proves | null = null, limit = 200_000): Met[] {
  const met: Met[] = [];
  const seen = new Set<string>();
  let now: { index: number; world: World }[] =
    procedure.steps.length > 0 ? [{ index: 0, world: start(procedure) }] : [];
  for (let depth = 1; now.length > 0; depth += 1) {
    const following: typeof now = [];
    for (const { index, world } of now) {
      const key = JSON.stringify([index, world]);
      const step = procedure.steps[index];
      if (seen.has(key) || step === undefined || step.verb === 'broken') continue;
      seen.add(key);
      if (seen.size > limit) throw new Error(`More than ${limit} benches: too many for brute force.`);
      const { world: after, wrongs } = carryOut(procedure, world, step);
      met.push({ index, step, depth, before: world, after, wrongs });
      for (const way of waysOut(procedure, index)) {
        if (typeof way.to !== 'number') continue;
        following.push({ index: way.to, world: wayTaken(procedure, after, step, way.outcome, proves) });
      }
    }
    now = following;
  }
  return met;
}

/** What is wrong where paths end at this step. */
function endsAt(procedure: Procedure, { index, step, after }: Met, proves: Proves): Wrong[] {
  if (step.verb === 'stop') return atEnd(procedure, after, step.leaves);
  return waysOut(procedure, index)
    .filter((way) => way.to === 'end')
    .flatMap((way) => {
      const world = wayTaken(procedure, after, step, way.outcome, proves);
      return way.isLeft ? openUnderPower(procedure, world) : atEnd(procedure, world, []);
    });
}

/** Entries of `leaves` that no path to the stop really leaves. */
function leavesInVain(procedure: Procedure, met: readonly Met[]): Told[] {
  if (pathsAreCut(procedure)) return [];
  const stops = new Set(met.map(({ step }) => step).filter((step) => step.verb === 'stop'));
  return [...stops].flatMap((stop) => {
    const left = met.filter(({ step }) => step === stop).flatMap(({ after }) => leftBehind(procedure, after));
    return stop.leaves
      .filter((id) => !left.includes(id))
      .map((subject) => ({
        rule: 'leaves-too-much',
        step: stop.number,
        subject,
        shortest: null,
      }));
  });
}

/** The accepted window of what a step reads. null: not known. */
function acceptedAt(met: readonly Met[], step: Step, { display, expect, shown }: Read): Accepted | null {
  if (display === null) return null;
  const worlds = met.filter((each) => each.step === step).map(({ after }) => after);
  return acceptedOf(display, expect, worlds.map(shown));
}

/** Outcomes that are missing, and those that all lead to one step. */
function ofOutcomes(procedure: Procedure, met: readonly Met[]): Told[] {
  return [...reachable(procedure)].flatMap((index) => {
    const step = procedure.steps[index];
    const depth = met.find((each) => each.index === index)?.depth;
    if (step === undefined || depth === undefined) return [];
    const reads = readsOf(procedure, step);
    const required = (of: Id): string[] | null => {
      const read = reads.find((each) => each.of === of);
      if (read === undefined || read.display === null) return null;
      return requiredClasses(read.display, acceptedAt(met, step, read));
    };
    const told = { step: step.number, subject: null, shortest: depth };
    if (isUncovered(asReading(step), required)) return [{ rule: 'uncovered', ...told }];
    return makesNoDifference(asReading(step), required) ? [{ rule: 'no-difference', ...told }] : [];
  });
}

function idsHandled(step: Step): Id[] {
  switch (step.verb) {
    case 'unlock':
    case 'unplug':
    case 'plug':
      return [step.connector];
    case 'fit':
      return [step.at.connector];
    case 'move':
      return [step.to.connector];
    case 'measure':
      return probed(step);
    case 'wiggle':
      return [...step.moved.map(({ id }) => id), ...(step.by === 'hand' ? probed(step) : [])];
    case 'replace':
      return step.what.flatMap(({ members }) => members);
    case 'do':
    case 'inspect':
      return held(step.at);
    case 'ignition':
    case 'disconnect':
    case 'reconnect':
    case 'wait':
    case 'prove-dead':
    case 'remove':
    case 'read':
    case 'read-codes':
    case 'clear-codes':
    case 'conclude':
    case 'go':
    case 'stop':
    case 'run':
    case 'broken':
      return [];
  }
}

/** Whether a monitor's greatest test current is above a tenth of what a live stage surely bears; in nanoamperes. */
function readTooHard(procedure: Procedure, loop: Loop, id: Id): boolean {
  const stage = procedure.parts.get(id);
  const current = procedure.monitors.get(loop.monitor ?? '')?.testCurrent?.most;
  if (stage?.live !== true || stage.noFire === null || current === undefined) return false;
  return Math.round(current * 1e10) > Math.round(stage.noFire.least * 1e9);
}

/** Terminals written out that are one pin, or a pin of a loop or contact that the source does not feed. */
function isOffPole(procedure: Procedure, source: Id, at: Probed): boolean {
  if ('connector' in at) return false;
  const [one, other] = at;
  if (one.connector === other.connector && one.pin === other.pin) return true;
  return at.some(({ connector, pin }) => {
    const loop = allLoops(procedure).find(({ pins }) => pins.get(connector)?.includes(pin) === true);
    const element = procedure.network.elements.find(
      (one) => one.kind === 'connector' && one.id === connector && one.pin === pin,
    );
    const fed = netPieces(procedure).filter(({ feeders }) => feeders.some(({ id }) => id === source));
    const named = namedIn(procedure);
    if (
      element !== undefined &&
      !element.between.some((node) => fed.some(({ nodes }) => nodes.has(named(node))))
    )
      return true;
    return loop !== undefined && !feedersOf(procedure, loop).some(({ id }) => id === source);
  });
}

/** High voltage that no touch is held against, and proofs where it never is. */
function ofHighVoltage(procedure: Procedure): Told[] {
  const told: Told[] = [];
  for (const source of procedure.sources.values()) {
    if (source.kind !== 'high-voltage') continue;
    const carried = [...procedure.connectors.values()].some(({ carries }) => carries.includes(source.id));
    const isFed = dangers(procedure).some(
      ({ loop, piece, feeders }) => (loop !== null || piece !== undefined) && feeders.includes(source),
    );
    if (!isFed && !carried)
      told.push({ rule: 'unguarded-source', step: null, subject: source.id, shortest: null });
  }
  for (const step of procedure.steps) {
    if (step.verb !== 'prove-dead') continue;
    const places = 'connector' in step.at ? [step.at.connector] : step.at.map(({ connector }) => connector);
    const reached = (connector: Id): boolean =>
      dangers(procedure).some(
        ({ loop, piece, feeders }) =>
          feeders.some(({ id }) => id === step.source) &&
          (piece !== undefined
            ? piece.has(connector)
            : loop === null
              ? carriedBy(procedure, connector).some(({ id }) => id === step.source)
              : loop.elements.some((element) => element.id === connector)),
      );
    if (!places.every(reached) || isOffPole(procedure, step.source, step.at))
      told.push({ rule: 'proof-elsewhere', step: step.number, subject: step.source, shortest: null });
  }
  return told;
}

/** Live parts that stand in no loop, and in the network at most from ground to ground. */
const strayLive = (procedure: Procedure): Id[] =>
  [...procedure.parts.values()]
    .filter(({ id, live }) => live && loopsThrough(procedure, id).length === 0)
    .filter(({ id }) => !netPieces(procedure).some(({ members }) => members.has(id)))
    .map(({ id }) => id);

/** What can be said of the file without following a path. */
function standing(procedure: Procedure): Told[] {
  const told: Told[] = [];
  const allFeedsKnown = [...procedure.sources.values()].every((source) => source.feedsComplete);
  if (allFeedsKnown) {
    for (const loop of liveLoops(procedure))
      if (feedersOf(procedure, loop).length === 0)
        told.push({ rule: 'unfed-circuit', step: null, subject: loop.id, shortest: null });
    for (const { id, live, feeders } of netPieces(procedure))
      if (live.length > 0 && feeders.length === 0)
        told.push({ rule: 'unfed-circuit', step: null, subject: id, shortest: null });
    // A monitor whose live loop is told is not told again: naming it in `feeds` mends both.
    const toldWith = new Set(told.map(({ subject }) => procedure.loops.get(subject ?? '')?.monitor));
    for (const monitor of procedure.monitors.keys())
      if (feedersOfMonitor(procedure, monitor).length === 0 && !toldWith.has(monitor))
        told.push({ rule: 'unfed-monitor', step: null, subject: monitor, shortest: null });
  }
  for (const loop of liveLoops(procedure))
    for (const { id } of loop.elements)
      if (readTooHard(procedure, loop, id))
        told.push({ rule: 'test-current', step: null, subject: id, shortest: null });
  told.push(...ofHighVoltage(procedure));
  const { monitors, parts, connectors, sources, loads } = procedure;
  const known = new Set([monitors, parts, connectors, sources, loads].flatMap((each) => [...each.keys()]));
  // A path that could not be read may hold anything: its own finding stands.
  const everyLoopRead = [...procedure.loops.values()].every((loop) => loop.complete);
  const stray = everyLoopRead ? strayLive(procedure) : [];
  const isOwn = (section: string, id: Id): boolean => !procedure.elsewhere.has(`${section}/${id}`);
  for (const subject of stray)
    if (isOwn('parts', subject)) told.push({ rule: 'in-no-circuit', step: null, subject, shortest: null });
  for (const [section, subject] of everyLoopRead && allFeedsKnown ? idle(procedure) : [])
    if (isOwn(section, subject)) told.push({ rule: 'unused', step: null, subject, shortest: null });
  for (const step of procedure.steps) {
    const concluded =
      step.verb === 'conclude' && step.what !== 'none' ? step.what.flatMap(({ members }) => members) : [];
    for (const subject of [...idsHandled(step), ...concluded.filter((id) => stray.includes(id))])
      if (
        everyLoopRead &&
        !(stray.includes(subject) && isOwn('parts', subject)) &&
        (parts.has(subject) || connectors.has(subject)) &&
        loopsThrough(procedure, subject).length === 0 &&
        !procedure.network.elements.some(({ id }) => id === subject) &&
        carriedBy(procedure, subject).length === 0
      )
        told.push({ rule: 'in-no-circuit', step: step.number, subject, shortest: null });
    for (const subject of commanded(procedure, step))
      told.push({ rule: 'hands-in-text', step: step.number, subject, shortest: null });
    if (step.verb === 'do' || step.verb === 'inspect')
      for (const [subject] of step.text.matchAll(/[A-Za-z][A-Za-z0-9-]*/g))
        if (known.has(subject) && !held(step.at).includes(subject) && !isJustSeen(step, subject))
          told.push({ rule: 'hands-in-text', step: step.number, subject, shortest: null });
  }
  return told;
}

/** What is only looked at may be named, and no word of doing begins the sentence. */
function isJustSeen(step: Step & { verb: 'do' | 'inspect' }, id: Id): boolean {
  return step.of.some(({ members }) => members.includes(id)) && !step.text.startsWith('Clean');
}

function ofGraph(procedure: Procedure): Told[] {
  const at = (rule: string, steps: readonly number[]): Told[] =>
    steps.map((index) => ({
      rule,
      step: procedure.steps[index]?.number ?? null,
      subject: null,
      shortest: null,
    }));
  return [
    ...at('unreachable', unreachableSteps(procedure)),
    ...at('endless', endlessSteps(procedure)),
    ...at('repeats', repeatingSteps(procedure)),
  ];
}

function provenBy(procedure: Procedure, met: readonly Met[]): Proves {
  const known = new Map<string, HeldAgainst | null>();
  const heldAt = (step: Step, of: Id): HeldAgainst | null => {
    const read = readsOf(procedure, step).find((each) => each.of === of);
    if (read === undefined) return null;
    const accepted = acceptedAt(met, step, read);
    const worlds = met.filter((each) => each.step === step).map(({ after }) => after);
    const volts =
      step.verb === 'measure' && step.quantity === 'voltage'
        ? worlds.map((world) => soundVolts(procedure, world, step))
        : [];
    return { read, accepted, isAbsence: showsAbsence({ step, display: read.display }, accepted, volts) };
  };
  return (step, of, outcome) => {
    const key = `${step.number} ${of}`;
    const held = known.has(key) ? (known.get(key) ?? null) : heldAt(step, of);
    known.set(key, held);
    if (held === null) return null;
    const { display } = held.read;
    const required = display === null ? null : requiredClasses(display, held.accepted);
    const leakBelow = display?.leakBelow ?? null;
    return saysWithin(step, of, outcome, required, { leakBelow }) ? held : null;
  };
}

/** What lies between the probes is told once for a step, as it stands on the bench that is nearest. */
const oncePerStep = ['meter-across-live', 'insulation-on-electronics', 'monitor-in-the-way'];

const endRules = ['not-restored', 'codes-not-cleared', 'repair-not-verified'];

function gravity(rule: string, { grave }: Wrong, { verb }: Step): { readonly isError?: boolean } {
  if (rule === 'work-under-power') return { isError: verb !== 'replace' || grave === true };
  return endRules.includes(rule) ? { isError: grave === true || verb !== 'stop' } : {};
}

/** All findings of the order rules: one for each rule, step and subject. */
export function oracle(procedure: Procedure): Told[] {
  // Windows do not depend on what is verified, so a first round tells which readings prove anything.
  const proves = provenBy(procedure, explore(procedure));
  const met = explore(procedure, proves);
  const onPaths = met.flatMap((each) =>
    [...each.wrongs, ...endsAt(procedure, each, proves)].map((wrong): Told => ({
      rule: wrong.rule,
      step: each.step.number,
      subject: wrong.subject,
      shortest: each.depth,
      ...gravity(wrong.rule, wrong, each.step),
    })),
  );
  // The gravest stands for one rule, step and subject, by its own shortest path.
  onPaths.sort((a, b) => Number(b.isError ?? false) - Number(a.isError ?? false));
  const once = new Map<string, Told>();
  for (const told of [
    ...onPaths,
    ...leavesInVain(procedure, met),
    ...ofOutcomes(procedure, met),
    ...standing(procedure),
    ...ofEntries(procedure),
    ...ofGraph(procedure),
  ]) {
    const key = JSON.stringify([told.rule, told.step, oncePerStep.includes(told.rule) ? null : told.subject]);
    if (!once.has(key)) once.set(key, told);
  }
  return [...once.values()];
}

/** By step number, the codes to expect there: certain where every bench on which the step is reached sets them. */
export function codesForetold(procedure: Procedure): ReadonlyMap<number, readonly ForetoldCode[]> {
  const met = explore(procedure);
  const found = new Map<number, ForetoldCode[]>();
  for (const index of reachable(procedure)) {
    const here = met.filter((each) => each.index === index);
    const step = procedure.steps[index];
    if (step === undefined) continue;
    const each = here.map(({ after }) => codesSet(procedure, after, listening(procedure, step)));
    const kinds = new Map(each.flat().map(({ loop, code }) => [`${loop} ${code}`, { loop, code }]));
    const codes = [...kinds.keys()].sort().flatMap((kind): ForetoldCode[] => {
      const { loop, code } = kinds.get(kind) ?? {};
      if (loop === undefined || code === undefined) return [];
      const certain = each.every((codes) =>
        codes.some((one) => one.loop === loop && one.code === code && one.certain),
      );
      return [{ loop, code, certain }];
    });
    if (codes.length > 0) found.set(step.number, codes);
  }
  return found;
}
