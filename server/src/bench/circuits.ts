import type { Id, Loop, NodeName, Procedure } from '../model/procedure.ts';
import { carriedHazards } from './hazards.ts';
import type { Hazard } from './hazards.ts';
import { connectorsOfPiece, membersOfPiece, piecesOf } from './pieces.ts';
import { isStage } from '../model/part-kinds.ts';
import { isHighVoltage } from '../model/source-kinds.ts';
import { sameNodes, terminalsOf } from './same-nodes.ts';
import type { Piece } from './pieces.ts';

/**
 * A circuit as built: a loop with all of the network that hangs on it, or a piece of the network, with ground taken out.
 * What feeds it, and whether it holds a live stage.
 */
export interface Circuit {
  /** Of the loop; of a piece of the network its first node. */
  readonly id: Id;
  readonly loop: Loop | null;
  /** Its monitors, connectors, parts, sources and nodes. */
  readonly members: ReadonlySet<Id>;
  readonly connectors: readonly Id[];
  readonly liveParts: readonly Id[];
  /** High-voltage sources that stand in it or feed something of it: it is live by them alone. */
  readonly highVoltage: readonly Id[];
  /** Ids of the sources that feed it, in the order of the file. */
  readonly sources: readonly Id[];
}

export interface Circuits {
  readonly all: readonly Circuit[];
  /** Those that hold a live part, or that high voltage leads to. */
  readonly live: readonly Circuit[];
  /** All that must be dead before hands go there. */
  readonly hazards: readonly Hazard[];
  /** Those that hands on this connector, part or monitor concern. */
  readonly hazardsAt: (id: Id) => readonly Hazard[];
  /** The circuits that a connector, part, monitor or node stands in. */
  readonly holding: (id: Id) => readonly Circuit[];
  /** The sources that feed a monitor. */
  readonly feeding: (monitor: Id) => readonly Id[];
}

export function circuitsOf(procedure: Procedure): Circuits {
  const all = piecesOf(procedure, 'apart').flatMap((piece) => circuitsOfPiece(procedure, piece));
  const holding = remember((id) => all.filter(({ members }) => members.has(id)));
  const live = all.filter(isLive);
  const hazards = [...live.map((circuit) => hazardOf(procedure, circuit)), ...carriedHazards(procedure)];
  const hazardsAt = remember((id) => {
    const near = procedure.parts.has(id) ? neighbouringConnectors(procedure, id) : [];
    const ids = [id, ...near];
    return hazards.filter(({ touches }) => ids.some(touches));
  });
  const feeding = remember((id) =>
    [...procedure.sources.values()].filter((source) => source.feeds.includes(id)).map((source) => source.id),
  );
  return { all, live, hazards, hazardsAt, holding, feeding };
}

export function isLive({ liveParts, highVoltage }: Circuit): boolean {
  return liveParts.length > 0 || highVoltage.length > 0;
}

export function connectorsOf(loop: Loop): readonly Id[] {
  return loop.elements.filter((element) => element.kind === 'connector').map((element) => element.id);
}

/** What hangs together has the same sources and stages; each loop of it is a circuit by its own name. */
function circuitsOfPiece(procedure: Procedure, piece: Piece): readonly Circuit[] {
  const members = membersOfPiece(piece);
  const liveParts = [...members].filter((id) => procedure.parts.get(id)?.live === true);
  const shared = {
    members,
    connectors: connectorsOfPiece(piece),
    liveParts,
    highVoltage: [...procedure.sources.values()]
      .filter(isHighVoltage)
      .filter(({ id, feeds }) => members.has(id) || feeds.some((fed) => members.has(fed)))
      .map(({ id }) => id),
    sources: feedingAny(procedure, members),
  };
  if (piece.loops.length > 0) return piece.loops.map((loop) => ({ ...shared, id: loop.id, loop }));
  const name = piece.nodes.find((node) => node !== 'ground') ?? piece.elements[0]?.id ?? '';
  return [{ ...shared, id: name, loop: null }];
}

/** The sources that feed something of a circuit or stand in it, by themselves or through a regulated supply. */
function feedingAny({ sources, regulated }: Procedure, members: ReadonlySet<Id>): readonly Id[] {
  const behind = [...regulated.values()].flatMap(({ id, from }) =>
    from !== null && members.has(id) ? [from] : [],
  );
  return [...sources.values()]
    .filter(
      ({ id, feeds }) => members.has(id) || behind.includes(id) || feeds.some((fed) => members.has(fed)),
    )
    .map(({ id }) => id);
}

function hazardOf(
  { parts }: Procedure,
  { id, loop, members, sources, liveParts, highVoltage, connectors }: Circuit,
): Hazard {
  return {
    id,
    sources,
    live: liveParts.length > 0 ? liveParts : highVoltage,
    connectors,
    isOfStages: highVoltage.length === 0 && liveParts.every((part) => isStage(parts.get(part))),
    isLoop: loop !== null,
    holds: (place) => (place.loop === null ? members.has(place.connector) : place.loop === loop?.id),
    touches: (touched) => members.has(touched),
  };
}

function neighbouringConnectors(procedure: Procedure, part: Id): readonly Id[] {
  const near: Id[] = [...besideInNetwork(procedure, part)];
  for (const { elements } of procedure.loops.values())
    for (const [index, element] of elements.entries()) {
      if (element.id !== part) continue;
      for (const beside of [elements[index - 1], elements[index + 1]])
        if (beside?.kind === 'connector') near.push(beside.id);
    }
  return near;
}

/** The connectors that share a node with a part of the network, ground aside. */
function besideInNetwork(procedure: Procedure, part: Id): readonly Id[] {
  const { elements } = procedure.network;
  const same = sameNodes(procedure);
  const element = elements.find(({ kind, id }) => kind === 'part' && id === part);
  const nodes = new Set<NodeName>(element?.between.map(same).filter((node) => node !== 'ground'));
  const isBeside = (node: NodeName): boolean => nodes.has(same(node));
  const ofNetwork = elements.filter(({ kind, between }) => kind === 'connector' && between.some(isBeside));
  const ofLoops = [...procedure.loops.values()]
    .flatMap((loop) => terminalsOf(procedure, loop))
    .filter(({ node }) => isBeside(node));
  return [...ofLoops.map(({ connector }) => connector), ...ofNetwork.map(({ id }) => id)];
}

/** Computes once for each id. */
export function remember<T>(compute: (id: Id) => T): (id: Id) => T {
  const known = new Map<Id, T>();
  return (id) => {
    const value = known.get(id) ?? compute(id);
    known.set(id, value);
    return value;
  };
}
