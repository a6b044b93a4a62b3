import type { Hands, Id, Loop, Procedure, Source, Step } from '../../server/src/model/procedure.ts';
import { polesTouched } from './carried.ts';
import { isForever, piecesBuilt, piecesOn, terminalsAt, terminalsOf } from './pieces.ts';
import type { Piece } from './pieces.ts';
import { allWays, asBuilt } from './ways.ts';
import { probed } from './network.ts';
import { namedIn } from './node-names.ts';
import { isolatorOf, allLoops, carriedBy, dangers, isOff, loopsThrough } from './world.ts';
import type { Danger, World, Wrong } from './world.ts';

/* Where hands go in a step, and whether the live loops there are dead. */

/** Connectors of the network with a pin at a node of the part. All that meets at ground does not meet in one place. */
function atItsNodes(procedure: Procedure, part: Id): Id[] {
  const { elements } = procedure.network;
  const named = (nodes: readonly string[]): string[] =>
    nodes.map(namedIn(procedure)).filter((node) => node !== 'ground');
  const nodes = elements.flatMap(({ id, between }) => (id === part ? named(between) : []));
  return elements.flatMap(({ kind, id, between }) =>
    kind === 'connector' && named(between).some((node) => nodes.includes(node)) ? [id] : [],
  );
}

/** Connectors that stand beside a part in one of its loops. */
function neighbours(procedure: Procedure, part: Id): Id[] {
  return loopsThrough(procedure, part).flatMap((loop) =>
    loop.elements
      .filter((element, at) => {
        const before = loop.elements[at - 1]?.id;
        const after = loop.elements[at + 1]?.id;
        return element.kind === 'connector' && (before === part || after === part);
      })
      .map((element) => element.id),
  );
}

function loopsTouchedBy(procedure: Procedure, id: Id): Loop[] {
  if (procedure.monitors.has(id)) return allLoops(procedure).filter((loop) => loop.monitor === id);
  if (procedure.connectors.has(id)) return loopsThrough(procedure, id);
  const touched = [id, ...neighbours(procedure, id)];
  return allLoops(procedure).filter((loop) => loop.elements.some((element) => touched.includes(element.id)));
}

export function touchedIds(step: Step, world: World): Id[] {
  switch (step.verb) {
    case 'unlock':
    case 'unplug':
    case 'plug':
      return [step.connector];
    case 'disconnect':
    case 'reconnect':
      return step.connector === null ? [] : [step.connector];
    case 'fit':
      return [step.at.connector];
    case 'remove':
      return [world.loads[step.load]?.connector].filter((id) => id !== undefined);
    case 'move':
      return [world.loads[step.load]?.connector, step.to.connector].filter((id) => id !== undefined);
    case 'measure':
      return probed(step);
    case 'wiggle':
      return [...step.moved.map(({ id }) => id), ...(step.by === 'hand' ? probed(step) : [])];
    case 'inspect':
    case 'do':
      return held(step.at);
    case 'replace':
      return step.what.flatMap(({ members }) => members);
    case 'ignition':
    case 'wait':
    case 'prove-dead':
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

/** The live loops and carried sources that hands on something are hands on. */
export function dangersAt(procedure: Procedure, id: Id): Danger[] {
  const loops = loopsTouchedBy(procedure, id);
  const connectors = procedure.parts.has(id)
    ? [...neighbours(procedure, id), ...atItsNodes(procedure, id)]
    : [id];
  const carried = connectors.flatMap((each) => carriedBy(procedure, each));
  return dangers(procedure).filter(({ loop, feeders: [source], piece }) =>
    piece !== undefined
      ? [id, ...connectors].some((each) => piece.has(each))
      : loop === null
        ? source !== undefined && carried.includes(source)
        : loops.includes(loop),
  );
}

type Unsafe = 'live-touch' | 'short-wait' | 'not-proven-dead';

/** Where hands are in a touch. */
export interface Touch {
  readonly step: Step;
  readonly thing: Id;
  /** Set where it is moved: a half of it, or null for all of it. */
  readonly movedSide?: string | null;
  /** Set where a probe is put there. Two probes are two touches, also of one connector. */
  readonly probedSide?: string;
}

/** The sides of a connector where hands or probes are. null: both. */
function sidesTouched(world: World, { step, thing, movedSide, probedSide }: Touch): string[] | null {
  if (probedSide !== undefined) return [probedSide];
  if (movedSide !== undefined) return movedSide === null ? null : [movedSide];
  const places =
    step.verb === 'fit'
      ? [step.at]
      : step.verb === 'remove'
        ? [world.loads[step.load]]
        : step.verb === 'move'
          ? [world.loads[step.load], step.to]
          : null;
  return places?.flatMap((place) => (place?.connector === thing ? [place.side] : [])) ?? null;
}

/** Where hands are on a thing. */
export function pointsOfTouch(procedure: Procedure, world: World, touch: Touch): string[] {
  const { thing } = touch;
  const named = namedIn(procedure);
  if (procedure.connectors.has(thing))
    return (sidesTouched(world, touch) ?? [null]).flatMap((side) => terminalsAt(procedure, thing, side));
  if (procedure.monitors.has(thing))
    return allLoops(procedure).flatMap((each) => (each.monitor === thing ? terminalsOf(each) : []));
  if (!procedure.parts.has(thing)) return [named(thing)];
  // The half of a connector that is next to a part stands at a point of the part.
  return allWays(procedure, asBuilt(world)).flatMap((way) =>
    way.thing === thing ? [named(way.a), named(way.b)] : [],
  );
}

/** All that hangs together on the bench with what is touched, as far as the source leads to it as built. */
function comeTo(procedure: Procedure, world: World, touch: Touch, source: Source): Piece[] {
  const touched = pointsOfTouch(procedure, world, touch);
  const built = piecesBuilt(procedure, world).filter(
    ({ drawn, parts, connectors, monitors }) =>
      drawn.has(source.id) ||
      source.feeds.some((fed) => parts.has(fed) || connectors.has(fed) || monitors.has(fed)),
  );
  return piecesOn(procedure, world).filter(
    ({ points }) =>
      touched.some((point) => points.has(point)) &&
      built.some((piece) => [...piece.points].some((point) => points.has(point))),
  );
}

/** Whether a meter is fit to be put to a source that may be live, by somebody who is warned. */
function isReady(procedure: Procedure, step: Step, source: Source): boolean {
  if (step.verb !== 'measure' || step.quantity !== 'voltage' || step.danger === undefined) return false;
  const range = procedure.multimeters.get(step.with)?.voltage?.range ?? null;
  return range !== null && source.voltage !== null && range.most >= source.voltage.most;
}

/**
 * What is missing first: a source is on, the wait is still owed, the source still hangs there and is never dead, high voltage
 * is not proven dead where hands are. null: it is dead.
 */
function missing(procedure: Procedure, world: World, danger: Danger, touched: Touch | null): Unsafe | null {
  const { id, feeders } = danger;
  const notExcused = feeders.filter((source) => !world.excuses.some((excuse) => excuse.includes(source.id)));
  if (notExcused.length === 0) return null;
  if (notExcused.some((source) => !isOff(world, source))) return 'live-touch';
  if ((world.owed[id] ?? 0) > 0) return 'short-wait';
  if (touched === null) return null;
  const high = notExcused.filter(({ kind }) => kind === 'high-voltage');
  const pieces = (source: Source): Piece[] => comeTo(procedure, world, touched, source);
  if (
    high.some(
      (source) => isForever(procedure, source) && pieces(source).some(({ drawn }) => drawn.has(source.id)),
    )
  )
    return 'live-touch';
  // The plug that takes a source away leaves contacts in its seat that may stay with the source, unless a network shows which.
  const isDrawn = ({ id: source }: Source): boolean =>
    piecesBuilt(procedure, world).some(({ drawn }) => drawn.has(source));
  const putsLoad = ['fit', 'move', 'remove'].includes(touched.step.verb);
  if (!putsLoad && high.some((source) => isolatorOf(source) === touched.thing && !isDrawn(source)))
    return 'live-touch';
  const doubtful = high.filter((source) => {
    const proven = world.proven[source.id];
    const isShown = (point: string): boolean => proven?.includes(point) === true;
    const poles = polesTouched(procedure, world, touched.thing, sidesTouched(world, touched), source);
    const points = [...poles, ...pieces(source).flatMap((piece) => [...piece.points])];
    return proven === undefined || !points.every(isShown);
  });
  return doubtful.some((source) => !isReady(procedure, touched.step, source)) ? 'not-proven-dead' : null;
}

interface Judged {
  readonly wrongs: Wrong[];
  /** Of each thing that was not dead its sources, which count as safe from here on. */
  readonly excuses: Id[][];
}

function judged(found: readonly { wrong: Wrong; danger: Danger }[]): Judged {
  const excuses = found.map(({ danger }) => danger.feeders.map((source) => source.id).sort());
  return { wrongs: found.map(({ wrong }) => wrong), excuses };
}

/** Whether nothing but stages makes something dangerous: no high voltage, and nothing that is led past its pins. */
function isOfStages(procedure: Procedure, { loop, piece, feeders }: Danger): boolean {
  if (loop === null && piece === undefined) return false;
  const things = loop === null ? [...(piece ?? [])] : loop.elements.map(({ id }) => id);
  const isSection = (id: Id): boolean => procedure.parts.get(id)?.kind === 'hv-section';
  return !things.some(isSection) && !feeders.some(({ kind }) => kind === 'high-voltage');
}

export function touches(step: Step, world: World): Touch[] {
  const probes =
    'across' in step
      ? step.across.map((probe) =>
          'node' in probe
            ? { step, thing: probe.node }
            : { step, thing: probe.connector, probedSide: probe.side },
        )
      : [];
  if (step.verb === 'measure') return probes;
  if (step.verb !== 'wiggle') return touchedIds(step, world).map((thing) => ({ step, thing }));
  return [...step.moved.map(({ id, side }) => ({ step, thing: id, movedSide: side ?? null })), ...probes];
}

/** Findings of a touch, and the sources that count as safe after it. */
export function touch(procedure: Procedure, world: World, step: Step): Judged {
  return judged(
    touches(step, world).flatMap((touched) => {
      const subject = touched.thing;
      const isMoved = touched.movedSide !== undefined;
      // Of what is moved it is asked on this bench whether a stage hangs on it.
      const near = dangersAt(procedure, subject).filter(
        (danger) => !isMoved || !isOfStages(procedure, danger),
      );
      return near.flatMap((danger) => {
        // What a service plug takes away itself cannot be dead before.
        const isIts = 'source' in step && danger.feeders.some(({ id }) => id === step.source);
        if (isIts && step.verb !== 'prove-dead') return [];
        const rule = missing(procedure, world, danger, touched);
        return rule === null ? [] : [{ wrong: { rule, subject }, danger }];
      });
    }),
  );
}

/** A step in words that does not say where hands are, while something is not dead, whatever is excused. */
export function handsNotSaid(procedure: Procedure, world: World, step: Step): Wrong[] {
  if ((step.verb !== 'do' && step.verb !== 'inspect') || step.at !== 'not said') return [];
  const plain = { ...world, excuses: [] };
  // Where hands are is not said: one piece that is proven may be all there is.
  const isUnproven = ({ feeders }: Danger): boolean =>
    feeders.some(({ id, kind }) => kind === 'high-voltage' && world.proven[id] === undefined);
  return Object.keys(world.tested).length > 0 ||
    dangers(procedure).some(
      (danger) => missing(procedure, plain, danger, null) !== null || isUnproven(danger),
    )
    ? [{ rule: 'touch-not-said', subject: null }]
    : [];
}

const fedBy = (procedure: Procedure, source: Id): Danger[] =>
  dangers(procedure).filter(({ feeders }) => feeders.some(({ id }) => id === source));

/** A proof before all that the source feeds is off and has waited. */
export function proofTooEarly(procedure: Procedure, world: World, step: Step): Judged {
  if (step.verb !== 'prove-dead') return judged([]);
  const early = fedBy(procedure, step.source).filter((danger) => {
    const rule = missing(procedure, world, danger, null);
    return rule === 'live-touch' || rule === 'short-wait';
  });
  return judged(
    early.map((danger) => ({ wrong: { rule: 'proof-too-early', subject: step.source }, danger })),
  );
}

/** All that hangs together with the places of a proof. */
export function proofPoints(
  procedure: Procedure,
  world: World,
  { at }: Extract<Step, { readonly verb: 'prove-dead' }>,
): string[] {
  const named = namedIn(procedure);
  const places =
    'connector' in at
      ? terminalsAt(procedure, at.connector, at.side)
      : at.map(({ connector, side, pin }) => named(`${connector}.${side}.${pin}`));
  return piecesOn(procedure, world)
    .filter(({ points }) => places.some((point) => points.has(point)))
    .flatMap(({ points }) => [...points]);
}

/** Whether a proof of the source has a meaning now, whatever is excused. */
export function canBeProven(procedure: Procedure, world: World, source: Id): boolean {
  return fedBy(procedure, source).every(
    ({ id, feeders }) => feeders.every((each) => isOff(world, each)) && (world.owed[id] ?? 0) === 0,
  );
}

/** All that hands are said to be at. */
export function held(at: Hands): Id[] {
  return typeof at === 'string' ? [] : at.flatMap(({ members }) => members);
}
