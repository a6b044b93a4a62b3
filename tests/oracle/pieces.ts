import type { Id, Loop, Procedure, Source, Step } from '../../server/src/model/procedure.ts';
import { namedIn } from './node-names.ts';
import { allWays, asBuilt, joinedBySources } from './ways.ts';
import { netPieces } from './network.ts';
import type { World } from './world.ts';

/*
 * What hangs together on a bench with ground taken out: points are merged by every way that joins two of them, over and
 * over until nothing changes. A monitor joins the two terminals of each of its loops, and no loop to another.
 */

export interface Piece {
  readonly points: ReadonlySet<string>;
  readonly parts: ReadonlySet<Id>;
  readonly connectors: ReadonlySet<Id>;
  readonly monitors: ReadonlySet<Id>;
  /** Batteries, high-voltage sources and supplies that are drawn here. */
  readonly drawn: ReadonlySet<Id>;
}

const GROUND = 'ground';

/** Where the monitor of a loop is joined to it. */
export const terminalsOf = (loop: Loop): readonly [string, string] => [`${loop.id}/1`, `${loop.id}/2`];

/** Terminals of a connector, on one side or on both, by the names of the nodes that they are. */
export function terminalsAt(procedure: Procedure, connector: Id, side: string | null): string[] {
  const sides = procedure.connectors.get(connector)?.sides ?? [];
  const inLoops = [...procedure.loops.values()].flatMap(({ pins, elements }) =>
    elements.some(({ id }) => id === connector) ? (pins.get(connector) ?? ['1', '2']) : [],
  );
  const inNetwork = procedure.network.elements.flatMap((element) =>
    element.kind === 'connector' && element.id === connector ? [element.pin] : [],
  );
  const named = namedIn(procedure);
  return [...new Set([...inLoops, ...inNetwork])]
    .flatMap((pin) =>
      sides.filter((one) => side === null || one === side).map((one) => named(`${connector}.${one}.${pin}`)),
    )
    .filter((point) => point !== GROUND);
}

interface Join {
  readonly a: string;
  readonly b: string;
  readonly thing: Id | null;
}

function joins(procedure: Procedure, world: World): Join[] {
  const named = namedIn(procedure);
  const conducting = allWays(procedure, world).filter(
    ({ monitor, source }) => monitor === null && source === null,
  );
  const monitors = [...procedure.loops.values()].map((loop) => {
    const [a, b] = terminalsOf(loop);
    return { a, b, thing: null };
  });
  return [...conducting, ...joinedBySources(procedure), ...monitors].map(({ a, b, thing }) => ({
    a: named(a),
    b: named(b),
    thing,
  }));
}

function merged(procedure: Procedure, world: World): Piece[] {
  const all = joins(procedure, world);
  const { connectors, network, loops } = procedure;
  const terminals = new Map([...connectors.keys()].map((id) => [id, terminalsAt(procedure, id, null)]));
  const lone = [...terminals.values()].flat();
  let groups = [...new Set([...all.flatMap(({ a, b }) => [a, b]), ...lone])]
    .filter((point) => point !== GROUND)
    .map((point) => new Set([point]));
  for (const { a, b } of all) {
    const [one, other] = [a, b].map((point) => groups.find((group) => group.has(point)));
    if (one === undefined || other === undefined || one === other) continue;
    for (const point of other) one.add(point);
    groups = groups.filter((group) => group !== other);
  }
  const named = namedIn(procedure);
  return groups.map((points): Piece => {
    const has = (point: string): boolean => points.has(point);
    const things = all.flatMap(({ a, b, thing }) => (thing !== null && (has(a) || has(b)) ? [thing] : []));
    return {
      points,
      parts: new Set(things.filter((id) => procedure.parts.has(id))),
      connectors: new Set([...terminals].flatMap(([id, own]) => (own.some(has) ? [id] : []))),
      monitors: new Set(
        [...loops.values()].flatMap((loop) => (terminalsOf(loop).some(has) ? (loop.monitor ?? []) : [])),
      ),
      drawn: new Set(
        network.elements.flatMap(({ kind, id, between }) =>
          kind === 'source' && between.some((node) => has(named(node))) ? [id] : [],
        ),
      ),
    };
  });
}

const known = new WeakMap<Procedure, Map<string, readonly Piece[]>>();

/** Kept by what the bench looks like, since most steps do not change it. */
export function piecesOn(procedure: Procedure, world: World): readonly Piece[] {
  const here = known.get(procedure) ?? new Map<string, readonly Piece[]>();
  known.set(procedure, here);
  const key = JSON.stringify([world.connectors, world.loads]);
  const pieces = here.get(key) ?? merged(procedure, world);
  here.set(key, pieces);
  return pieces;
}

/** The same while a step is done: an instrument that carries a current joins what its two sides hang on. */
export function piecesDuring(procedure: Procedure, world: World, step: Step): readonly Piece[] {
  const pieces = piecesOn(procedure, world);
  if (step.verb !== 'measure' || step.carrying?.kind !== 'series') return pieces;
  const points = pointsProbed(procedure, step);
  const isJoined = (piece: Piece): boolean => points.some((point) => piece.points.has(point));
  const joined = pieces.filter(isJoined);
  const all = (of: keyof Piece): ReadonlySet<string> => new Set(joined.flatMap((piece) => [...piece[of]]));
  const one: Piece = {
    points: all('points'),
    parts: all('parts'),
    connectors: all('connectors'),
    monitors: all('monitors'),
    drawn: all('drawn'),
  };
  return [...pieces.filter((piece) => !isJoined(piece)), one];
}

export const piecesBuilt = (procedure: Procedure, world: World): readonly Piece[] =>
  piecesOn(procedure, asBuilt(world));

/** The piece as built that a piece on the bench is cut from, or is. */
export function builtAround(procedure: Procedure, world: World, piece: Piece): readonly Piece[] {
  return piecesBuilt(procedure, world).filter(({ points }) =>
    [...points].some((one) => piece.points.has(one)),
  );
}

/**
 * Whether a high-voltage source is on for ever where it stands: it is drawn, and so are contacts of the connector that
 * isolates it, in one circuit as built. Otherwise its `disconnect` takes it away from everything.
 */
export function isForever(procedure: Procedure, source: Source): boolean {
  if (source.kind !== 'high-voltage' || source.isolatedBy === null) return false;
  const { id, isolatedBy } = source;
  return netPieces(procedure).some(({ members }) => members.has(id) && members.has(isolatedBy));
}

/** Where the probes of a measurement are, ground left out. */
export function pointsProbed(
  procedure: Procedure,
  { across }: Extract<Step, { readonly verb: 'measure' }>,
): string[] {
  const named = namedIn(procedure);
  return across
    .map((probe) => named('node' in probe ? probe.node : `${probe.connector}.${probe.side}.${probe.pin}`))
    .filter((point) => point !== GROUND);
}
