import type { Id, Loop, NetworkElement, NodeName, Procedure } from '../model/procedure.ts';
import { nameGroups } from './name-groups.ts';
import { sameNodes, terminalsOf } from './same-nodes.ts';

/** What hangs together as built: every connector mated and every switch closed. */
export interface Piece {
  readonly loops: readonly Loop[];
  /** Of the network, in the order of the file. */
  readonly elements: readonly NetworkElement[];
  /** Those that have names, `ground` among them where something stands at it. */
  readonly nodes: readonly NodeName[];
}

/**
 * The pieces of all loops and the network, those with loops first. `through` ground they hang together for the eyes of
 * an instrument; `apart` from it each is a circuit of its own.
 */
export function piecesOf(procedure: Procedure, ground: 'through' | 'apart'): readonly Piece[] {
  const { elements } = procedure.network;
  const groups = nameGroups();
  const loops = [...procedure.loops.values()];
  const same = sameNodes(procedure);
  const keysOf = (nodes: readonly NodeName[]): readonly string[] =>
    nodes
      .map(same)
      .filter((node) => node !== 'ground' || ground === 'through')
      .map((node) => `node ${node}`);
  for (const loop of loops)
    for (const key of keysOf(terminalsOf(procedure, loop).map(({ node }) => node)))
      groups.join(key, keyOfLoop(loop.id));
  for (const element of elements) {
    const [one, ...others] = keysOf(element.between);
    if (one !== undefined) for (const other of others) groups.join(one, other);
  }
  const pieces = new Map<string, { loops: Loop[]; elements: NetworkElement[]; nodes: Set<NodeName> }>();
  const pieceAt = (key: string) => {
    const group = groups.of(key);
    const piece = pieces.get(group) ?? { loops: [], elements: [], nodes: new Set() };
    pieces.set(group, piece);
    return piece;
  };
  for (const loop of loops) pieceAt(keyOfLoop(loop.id)).loops.push(loop);
  for (const element of elements) {
    const [key] = keysOf(element.between);
    if (key === undefined) continue;
    const piece = pieceAt(key);
    piece.elements.push(element);
    for (const node of element.between) if (!node.includes('.')) piece.nodes.add(node);
  }
  return [...pieces.values()].map((piece) => ({ ...piece, nodes: [...piece.nodes] }));
}

function keyOfLoop(id: Id): string {
  return `loop ${id}`;
}

/** The monitors, connectors, parts, sources and nodes of a piece. */
export function membersOfPiece({ loops, elements, nodes }: Piece): ReadonlySet<Id> {
  return new Set([
    ...loops.flatMap(({ monitor, elements: along }) => [
      ...(monitor === null ? [] : [monitor]),
      ...along.map(({ id }) => id),
    ]),
    ...elements.map(({ id }) => id),
    ...nodes.filter((node) => node !== 'ground'),
  ]);
}

/** The connectors of a piece, each once. */
export function connectorsOfPiece({ loops, elements }: Piece): readonly Id[] {
  const ids = [...loops.flatMap((loop) => loop.elements), ...elements].flatMap(({ kind, id }) =>
    kind === 'connector' ? [id] : [],
  );
  return [...new Set(ids)];
}
