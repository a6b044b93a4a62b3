import type { Id, Loop, NetworkElement, NodeName, Procedure } from '../text/procedure.ts';
import { nameGroups } from './name-groups.ts';

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
  const keysOf = ({ between }: NetworkElement): readonly string[] =>
    between
      .filter((node) => node !== 'ground' || ground === 'through')
      .map((node) => keyOfNode(procedure, node));
  for (const element of elements) {
    const [one, other] = keysOf(element);
    if (one !== undefined && other !== undefined) groups.join(one, other);
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
    const [key] = keysOf(element);
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

/** Terminals belong to the loop that uses their pin, or are the node that the pin leads to on their side. */
function keyOfNode({ loops, network, connectors }: Procedure, node: NodeName): string {
  const [connector = '', side, pin] = node.split('.');
  if (side === undefined || pin === undefined) return `node ${node}`;
  const loop = [...loops.values()].find(({ pins }) => pins.get(connector)?.includes(pin) === true);
  if (loop !== undefined) return keyOfLoop(loop.id);
  const contact = network.elements.find(
    (element) => element.kind === 'connector' && element.id === connector && element.pin === pin,
  );
  const isFirst = connectors.get(connector)?.sides[0] === side;
  const beside = contact?.between[isFirst ? 0 : 1];
  return beside === undefined || beside.includes('.') ? `node ${node}` : `node ${beside}`;
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
