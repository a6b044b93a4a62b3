import type { Id, Procedure, Source, Step } from '../../server/src/model/procedure.ts';
import { namedIn } from './node-names.ts';
import { allWays, between, hangingOn, pointsOf, sendsCurrent } from './ways.ts';
import type { Measuring } from './ways.ts';
import { asReading } from './wiggled.ts';
import type { World, Wrong } from './world.ts';

/*
 * The network by brute force: circuits by merging what shares a node, and what a measurement meets by following every
 * simple path. Networks of the random procedures are small, and their connectors stand in no loop.
 */

const isNode = (node: string): boolean => node !== 'ground';

/** A piece of the network with ground taken out: its elements' ids and its nodes. */
export interface NetPiece {
  /** Of its first node. */
  readonly id: Id;
  readonly members: ReadonlySet<Id>;
  readonly nodes: ReadonlySet<string>;
  readonly connectors: readonly Id[];
  readonly live: readonly Id[];
  readonly feeders: readonly Source[];
}

export function netPieces(procedure: Procedure): NetPiece[] {
  const named = (nodes: readonly string[]): string[] => nodes.map(namedIn(procedure)).filter(isNode);
  const groups = procedure.network.elements.map((element) => ({ nodes: named(element.between) }));
  for (let merged = true; merged;) {
    merged = false;
    for (const one of groups)
      for (const other of groups)
        if (one !== other && other.nodes.length > 0 && one.nodes.some((node) => other.nodes.includes(node))) {
          one.nodes.push(...other.nodes.splice(0));
          merged = true;
        }
  }
  return groups
    .filter(({ nodes }) => nodes.length > 0)
    .map(({ nodes }) => {
      const here = procedure.network.elements.filter(({ between: ends }) =>
        named(ends).some((node) => nodes.includes(node)),
      );
      const withNames = here.flatMap(({ between: ends }) => ends.filter((node) => !node.includes('.')));
      const members = new Set([...here.map(({ id }) => id), ...withNames.filter(isNode)]);
      const supplied = [...procedure.regulated.values()]
        .filter(({ id }) => members.has(id))
        .map(({ from }) => from);
      return {
        id: withNames.find(isNode) ?? here[0]?.id ?? '',
        first: procedure.network.elements.findIndex((element) => element === here[0]),
        members,
        nodes: new Set(nodes),
        connectors: [...new Set(here.flatMap(({ kind, id }) => (kind === 'connector' ? [id] : [])))],
        live: [...members].filter((id) => procedure.parts.get(id)?.live === true),
        feeders: [...procedure.sources.values()].filter(
          ({ id, feeds }) =>
            members.has(id) || supplied.includes(id) || feeds.some((fed) => members.has(fed)),
        ),
      };
    })
    .sort((a, b) => a.first - b.first);
}

/** What probes touch: connectors and nodes. */
export function probed({ across }: Pick<Measuring, 'across'>): Id[] {
  return [...new Set(across.map((probe) => ('node' in probe ? probe.node : probe.connector)))];
}

/** What stands in the way of a measurement, so that nothing is known of what it shows: a source that is on comes first. */
export function obstacle(
  procedure: Procedure,
  world: World,
  step: Measuring,
): 'power' | { readonly monitor: Id } | null {
  // A way between two names of one node is none.
  const named = namedIn(procedure);
  const ways = allWays(procedure, world)
    .map((way) => ({ ...way, a: named(way.a), b: named(way.b) }))
    .filter(({ a, b }) => a !== b);
  const [from = '', to = ''] = pointsOf(step).map(named);
  const met = between(ways, from, to);
  // Ground alone connects nothing with a source.
  const apart = ways.filter(({ a, b }) => a !== 'ground' && b !== 'ground');
  const near = [from, to].filter(isNode).map((point) => hangingOn(apart, point));
  const isNear = (node: string): boolean => isNode(node) && near.some((points) => points.has(node));
  const powered =
    sendsCurrent(step) &&
    ways.some((way) => way.source !== null && (met.has(way) || isNear(way.a) || isNear(way.b)));
  if (powered) return 'power';
  const monitor = ways.find((way) => met.has(way) && way.monitor !== null)?.monitor ?? null;
  return monitor === null ? null : { monitor };
}

/** A monitor between the probes. */
export function measureWrongs(procedure: Procedure, world: World, taken: Step): Wrong[] {
  const step = asReading(taken);
  const found = step.verb === 'measure' ? obstacle(procedure, world, step) : null;
  if (found === null || found === 'power') return [];
  return [{ rule: 'monitor-in-the-way', subject: found.monitor }];
}
