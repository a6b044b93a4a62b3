import type { Id, Place, Procedure, Step } from '../../server/src/model/procedure.ts';
import { chargeOf, drawsArcs, poweredBy, suppliersOf } from './energy.ts';
import { piecesBuilt, piecesOn, pointsProbed, terminalsAt } from './pieces.ts';
import type { Piece } from './pieces.ts';
import { namedIn } from './node-names.ts';
import { insulating } from './tested.ts';
import { dangersAt } from './touch.ts';
import { sendsCurrent } from './ways.ts';
import { asReading, moving } from './wiggled.ts';
import { isOff } from './world.ts';
import type { World, Wrong } from './world.ts';

/* Measuring and work where something is powered or charged, and what no probe may touch at all. */

const withAny = (pieces: readonly Piece[], points: readonly string[]): Piece[] =>
  pieces.filter((piece) => points.some((point) => piece.points.has(point)));

function measuring(procedure: Procedure, world: World, taken: Step): Wrong[] {
  const step = asReading(taken);
  if (step.verb !== 'measure') return [];
  const probedPieces = withAny(piecesOn(procedure, world), pointsProbed(procedure, step));
  const wrongs: Wrong[] = [];
  const initiator = probedPieces
    .flatMap(({ parts }) => [...parts])
    .find((id) => procedure.parts.get(id)?.kind === 'initiator');
  if (initiator !== undefined) wrongs.push({ rule: 'meter-across-live', subject: initiator });
  const isHot = probedPieces.some(
    (piece) => poweredBy(procedure, world, piece).length > 0 || chargeOf(world.charges, piece) !== null,
  );
  if (sendsCurrent(step) && isHot) wrongs.push({ rule: 'powered-measurement', subject: step.of });
  return [...wrongs, ...insulating(procedure, world, step)];
}

interface Handled {
  readonly subject: Id;
  readonly points: readonly string[];
}

/** Contacts that a step makes or breaks. null: none. */
function broken(procedure: Procedure, world: World, step: Step): Handled | null {
  // A load bridges the pins of its loop alone.
  const isBridged = ({ connector, side, loop }: Place) => {
    const named = namedIn(procedure);
    const pins = procedure.loops.get(loop ?? '')?.pins.get(connector);
    const points = pins?.map((pin) => named(`${connector}.${side}.${pin}`));
    return (point: string): boolean => points === undefined || points.includes(point);
  };
  const on = (subject: Id, places: readonly (Place | null | undefined)[]): Handled => ({
    subject,
    points: places.flatMap((place) =>
      place === null || place === undefined
        ? []
        : terminalsAt(procedure, place.connector, place.side).filter(isBridged(place)),
    ),
  });
  if (step.verb === 'unplug' || step.verb === 'plug')
    return { subject: step.connector, points: terminalsAt(procedure, step.connector, null) };
  if (step.verb === 'fit') return on(step.load, [step.at]);
  if (step.verb === 'remove') return on(step.load, [world.loads[step.load]]);
  return step.verb === 'move' ? on(step.load, [world.loads[step.load], step.to]) : null;
}

/**
 * Contacts draw an arc above 30 V. Both halves of what hangs together as built are one thing: where power is on, that
 * stands for what is charged. High voltage has rules of its own.
 */
function working(procedure: Procedure, world: World, step: Step): Wrong[] {
  const handled = broken(procedure, world, step);
  if (handled === null) return [];
  const { subject, points } = handled;
  const here = withAny(piecesOn(procedure, world), points);
  return withAny(piecesBuilt(procedure, world), points).flatMap((built): Wrong[] => {
    const halves = here.filter((piece) => [...piece.points].some((point) => built.points.has(point)));
    if (halves.some((piece) => poweredBy(procedure, world, piece).some(drawsArcs)))
      return [{ rule: 'work-under-power', subject }];
    const isCharged = halves.some((piece) => chargeOf(world.arcs, piece) !== null);
    return isCharged ? [{ rule: 'short-wait', subject }] : [];
  });
}

function replacing(procedure: Procedure, world: World, step: Step): Wrong[] {
  if (step.verb !== 'replace') return [];
  return step.what
    .flatMap(({ members }) => members)
    .filter((id) => dangersAt(procedure, id).length === 0)
    .flatMap((subject): Wrong[] => {
      const kind = procedure.parts.get(subject)?.kind;
      const pieces = piecesOn(procedure, world).filter((piece) =>
        [piece.parts, piece.connectors, piece.monitors].some((things) => things.has(subject)),
      );
      const powers = pieces.flatMap((piece) => poweredBy(procedure, world, piece));
      // Out of its clamps it draws the same arc as contacts that part.
      if (powers.length === 0)
        return pieces.some((piece) => chargeOf(world.arcs, piece) !== null)
          ? [{ rule: 'short-wait', subject }]
          : [];
      const grave = powers.some(drawsArcs);
      const isQuick =
        kind === 'lamp' || kind === 'fuse' || powers.every(({ through }) => through === 'monitor');
      return world.ignition || grave || !isQuick
        ? [{ rule: 'work-under-power', subject, ...(grave ? { grave } : {}) }]
        : [];
    });
}

export function underPower(procedure: Procedure, world: World, step: Step): Wrong[] {
  return [
    ...measuring(procedure, world, step),
    ...working(procedure, world, step),
    ...replacing(procedure, world, step),
    ...moving(procedure, world, step),
  ];
}

/** Of what may owe a wait in a piece as built: whether it runs down now. Nothing is said of what owes none. */
export function runsDown(procedure: Procedure, world: World): boolean[] {
  const ofPieces = piecesBuilt(procedure, world).flatMap((piece) => {
    const sources = suppliersOf(procedure, world, piece).flatMap(({ id, wait }) => {
      const source = procedure.sources.get(id);
      return source === undefined ? [] : [{ source, wait }];
    });
    if (!sources.some(({ wait }) => wait > 0)) return [];
    return [sources.every(({ source }) => isOff(world, source))];
  });
  const afterRuns = [...procedure.regulated.values()].flatMap(({ afterRun }) =>
    typeof afterRun === 'number' && afterRun > 0 ? [!world.ignition] : [],
  );
  return [...ofPieces, ...afterRuns];
}
