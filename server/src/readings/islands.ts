import { connectorsOfPiece, piecesOf } from '../bench/pieces.ts';
import type { Piece } from '../bench/pieces.ts';
import type { Id, Loop, NetworkElement, Probe, Procedure } from '../model/procedure.ts';
import { grouped, remembered } from '../model/remembered.ts';

/** All that a reading can depend on as built: loops, the network that hangs on them, and their sources. */
export interface Island {
  readonly loops: readonly Loop[];
  readonly elements: readonly NetworkElement[];
  readonly connectors: readonly Id[];
  /** Those that can be taken away, also as what a regulated supply runs on. */
  readonly sources: readonly Id[];
}

export interface Islands {
  readonly ofLoop: (loop: Loop) => Island;
  /** Of both probes: what hangs on either. */
  readonly ofProbes: (across: readonly Probe[]) => Island;
}

const known = new WeakMap<Procedure, Islands>();

/** The islands of a procedure. Ground is a node like any other to an instrument. */
export function islandsOf(procedure: Procedure): Islands {
  const made = known.get(procedure) ?? makeIslands(procedure);
  known.set(procedure, made);
  return made;
}

function makeIslands(procedure: Procedure): Islands {
  const pieces = piecesOf(procedure, 'through');
  const standing = grouped(
    pieces.flatMap((piece, at) => [...new Set(placesIn(piece))].map((place) => [place, at] as const)),
  );
  const ofLoop = new Map(pieces.flatMap((piece) => piece.loops.map((loop) => [loop, piece] as const)));
  const alone = remembered((piece: Piece) => islandOf(procedure, [piece]));
  return {
    ofLoop: (loop) => {
      const piece = ofLoop.get(loop);
      return piece === undefined ? islandOf(procedure, []) : alone(piece);
    },
    ofProbes: (across) => {
      const found = new Set(across.flatMap((probe) => standing.get(placeOf(probe)) ?? []));
      return islandOf(
        procedure,
        [...found].sort((a, b) => a - b).flatMap((at) => pieces[at] ?? []),
      );
    },
  };
}

function islandOf(procedure: Procedure, pieces: readonly Piece[]): Island {
  const elements = pieces.flatMap((piece) => piece.elements);
  const sources = elements.flatMap(({ kind, id }) => (kind === 'source' ? rootOf(procedure, id) : []));
  return {
    loops: pieces.flatMap(({ loops }) => loops),
    elements,
    connectors: [...new Set(pieces.flatMap(connectorsOfPiece))],
    sources: [...new Set(sources)],
  };
}

function rootOf({ regulated }: Procedure, source: Id): readonly Id[] {
  const supply = regulated.get(source);
  if (supply === undefined) return [source];
  return supply.from === null ? [] : [supply.from];
}

function placeOf(probe: Probe): string {
  return 'node' in probe ? `node ${probe.node}` : placeOfPin(probe.connector, probe.pin);
}

function placeOfPin(connector: Id, pin: string): string {
  return `pin ${connector}.${pin}`;
}

/** Where a probe can stand. A terminal stands where its connector does: all pins that it has in this piece or another. */
function placesIn({ nodes, loops, elements }: Piece): readonly string[] {
  return [
    ...nodes.map((node) => `node ${node}`),
    ...loops.flatMap(({ pins }) =>
      [...pins].flatMap(([connector, both]) => both.map((pin) => placeOfPin(connector, pin))),
    ),
    ...elements.flatMap((element) =>
      element.kind === 'connector' ? [placeOfPin(element.id, element.pin)] : [],
    ),
  ];
}
