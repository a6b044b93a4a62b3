import type { Id, Procedure, Step } from '../../server/src/model/procedure.ts';
import { chargeOf, drawsArcs, poweredBy } from './energy.ts';
import { piecesOn, terminalsAt } from './pieces.ts';
import type { Piece } from './pieces.ts';
import type { World, Wrong } from './world.ts';

/* Things that are moved by hand while something is read. */

export type Wiggle = Extract<Step, { readonly verb: 'wiggle' }>;

/** A step as the reading that is taken in it: what is watched while something is moved is read as if nothing were moved. */
export function asReading(step: Step): Step {
  if (step.verb !== 'wiggle') return step;
  return step.by === 'monitor' ? { ...step, verb: 'read' } : { ...step, verb: 'measure' };
}

/** An open connector has two halves, and nobody knows which one is meant: none is moved then. */
export const isAmbiguous = (world: World, { id, side }: Wiggle['moved'][number]): boolean =>
  side === undefined && world.connectors[id] === 'unplugged';

function piecesMoved(procedure: Procedure, world: World, id: Id, side: string | null): Piece[] {
  const points = procedure.connectors.has(id) ? terminalsAt(procedure, id, side) : [];
  return piecesOn(procedure, world).filter((piece) =>
    procedure.parts.has(id) ? piece.parts.has(id) : points.some((point) => piece.points.has(point)),
  );
}

/** A stage that hangs on what is moved, and contacts that may part under more than 30 V. */
export function moving(procedure: Procedure, world: World, step: Step): Wrong[] {
  if (step.verb !== 'wiggle') return [];
  return step.moved
    .filter((one) => !isAmbiguous(world, one))
    .flatMap(({ id, side }): Wrong[] => {
      const pieces = piecesMoved(procedure, world, id, side ?? null);
      const hasStage = pieces.some(({ parts }) =>
        [...parts].some((part) => procedure.parts.get(part)?.kind === 'initiator'),
      );
      const isHot = pieces.some((piece) => poweredBy(procedure, world, piece).some(drawsArcs));
      const isCharged = pieces.some((piece) => chargeOf(world.arcs, piece) !== null);
      return [
        ...(hasStage ? [{ rule: 'moved-with-stage', subject: id }] : []),
        ...(isHot ? [{ rule: 'work-under-power', subject: id }] : []),
        ...(isCharged && !isHot ? [{ rule: 'short-wait', subject: id }] : []),
      ];
    });
}
