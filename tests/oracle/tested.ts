import type { Id, Procedure, Step } from '../../server/src/model/procedure.ts';
import { namedIn } from './node-names.ts';
import { piecesOn, pointsProbed } from './pieces.ts';
import type { Piece } from './pieces.ts';
import { pointsOfTouch, proofPoints, touches } from './touch.ts';
import type { World, Wrong } from './world.ts';

/* What an insulation tester must not be held to, and what it leaves on what it was held to. */

/** Volts. From here on only a proof shows that a tester left nothing. */
const NEEDS_PROOF = 60;

const isIn = (points: readonly string[]) => (piece: Piece) => points.some((point) => piece.points.has(point));

/** Loads whose pins are points of the piece. */
function loadsIn(procedure: Procedure, world: World, { points }: Piece): Id[] {
  const named = namedIn(procedure);
  return Object.entries(world.loads).flatMap(([load, place]) => {
    if (place === null) return [];
    const pins = procedure.loops.get(place.loop ?? '')?.pins.get(place.connector) ?? [];
    const isHere = pins.some((pin) => points.has(named(`${place.connector}.${place.side}.${pin}`)));
    return isHere ? [load] : [];
  });
}

/** All of a piece that does not bear so many volts: electronics and sources bear none. */
function weakIn(procedure: Procedure, world: World, piece: Piece, volts: number): Id[] {
  const bearing = [
    ...[...piece.parts].map((id) => procedure.parts.get(id)),
    ...[...piece.connectors].map((id) => procedure.connectors.get(id)),
    ...loadsIn(procedure, world, piece).map((id) => procedure.loads.get(id)),
  ];
  const weak = bearing.flatMap((thing) =>
    thing === undefined || (thing.withstands ?? 0) >= volts ? [] : [thing.id],
  );
  return [...piece.monitors, ...piece.drawn, ...weak];
}

/** Of a piece with an initiator `meter-across-live` is told. */
export function insulating(procedure: Procedure, world: World, step: Step): Wrong[] {
  if (step.verb !== 'measure' || step.tester === null) return [];
  const { volts } = step.tester;
  const isStage = (id: Id): boolean => procedure.parts.get(id)?.kind === 'initiator';
  return piecesOn(procedure, world)
    .filter(isIn(pointsProbed(procedure, step)))
    .filter(({ parts }) => ![...parts].some(isStage))
    .flatMap((piece) => weakIn(procedure, world, piece, volts))
    .map((subject) => ({ rule: 'insulation-on-electronics', subject }));
}

type Left = World['tested'][string];

const longer = (one: Left, other: Left): Left =>
  one === 'until proven' || other === 'until proven' ? 'until proven' : Math.max(one, other);

function leftIn({ tested }: World, { points }: Piece): Left | null {
  const here = [...points].flatMap((point) => tested[point] ?? []);
  return here.length === 0 ? null : here.reduce(longer);
}

function withLeft(world: World, points: ReadonlySet<string>, left: Left | null): World {
  const others = Object.entries(world.tested).filter(([point]) => !points.has(point));
  const own = left === null ? [] : [...points].map((point): [string, Left] => [point, left]);
  return { ...world, tested: Object.fromEntries([...others, ...own].sort(([a], [b]) => (a < b ? -1 : 1))) };
}

/** What hangs together shares what a tester left. */
export function sharingTest(world: World, pieces: readonly Piece[]): World {
  return pieces.reduce((before, piece) => {
    const left = leftIn(before, piece);
    return left === null ? before : withLeft(before, piece.points, left);
  }, world);
}

/** Each touch of what a tester left is told once: it is gone then. */
export function touchTested(
  procedure: Procedure,
  world: World,
  step: Step,
): { readonly world: World; readonly wrongs: Wrong[] } {
  let now = world;
  const wrongs: Wrong[] = [];
  for (const touched of touches(step, world)) {
    const charged = piecesOn(procedure, world)
      .filter(isIn(pointsOfTouch(procedure, world, touched)))
      .filter((piece) => leftIn(now, piece) !== null);
    if (charged.length > 0) wrongs.push({ rule: 'short-wait', subject: touched.thing });
    for (const { points } of charged) now = withLeft(now, points, null);
  }
  return { world: now, wrongs };
}

/** The bench after a tester was held to it. */
export function afterTest(procedure: Procedure, world: World, step: Step): World {
  if (step.verb !== 'measure' || step.tester === null || step.tester.discharged) return world;
  const seconds = procedure.multimeters.get(step.with)?.insulation?.discharge ?? null;
  const left = step.tester.volts >= NEEDS_PROOF || seconds === null ? 'until proven' : seconds;
  return piecesOn(procedure, world)
    .filter(isIn(pointsProbed(procedure, step)))
    .reduce((before, { points }) => withLeft(before, points, left), world);
}

export function testWaited(world: World, seconds: number): World {
  const after = Object.entries(world.tested).flatMap(([point, left]): [string, Left][] => {
    if (left === 'until proven') return [[point, left]];
    return left - seconds > 1e-6 ? [[point, left - seconds]] : [];
  });
  return { ...world, tested: Object.fromEntries(after) };
}

/** A proof finds nothing at its places, whatever it was taken of. */
export function testProven(
  procedure: Procedure,
  world: World,
  step: Extract<Step, { readonly verb: 'prove-dead' }>,
): World {
  return withLeft(world, new Set(proofPoints(procedure, world, step)), null);
}
