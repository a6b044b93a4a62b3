import { connectorsOfPiece, piecesOf } from '../bench/pieces.ts';
import type { Piece } from '../bench/pieces.ts';
import type { Id, Loop, NetworkElement, Probe, Procedure } from '../text/procedure.ts';

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
  return {
    ofLoop: (loop) =>
      islandOf(
        procedure,
        pieces.filter(({ loops }) => loops.includes(loop)),
      ),
    ofProbes: (across) =>
      islandOf(
        procedure,
        pieces.filter((piece) => across.some((probe) => stands(piece, probe))),
      ),
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

/** A terminal stands where its connector does: all pins that it has in this piece or another. */
function stands(piece: Piece, probe: Probe): boolean {
  if ('node' in probe) return piece.nodes.includes(probe.node);
  const { connector, pin } = probe;
  return (
    piece.loops.some(({ pins }) => pins.get(connector)?.includes(pin) === true) ||
    piece.elements.some(
      (element) => element.kind === 'connector' && element.id === connector && element.pin === pin,
    )
  );
}
