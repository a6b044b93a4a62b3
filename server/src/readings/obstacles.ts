import { nameGroups } from '../bench/name-groups.ts';
import type { Element } from '../circuit/circuit.ts';
import type { Id, Quantity } from '../text/procedure.ts';
import type { Island } from './islands.ts';
import { isJoin } from './island-network.ts';
import type { IslandNetwork } from './island-network.ts';
import { ownerOf, probesOf } from './loop-network.ts';
import { onSimplePaths } from './simple-paths.ts';

/** Why nothing can be said of what is measured: a source is on there, or a monitor lies between the probes. */
export interface Obstacle {
  readonly kind: 'source' | 'monitor';
  readonly id: Id;
}

type Pair = readonly [string, string];

/** null: nothing is in the way. */
export function obstacleBetween(
  island: Island,
  compiled: IslandNetwork,
  probes: Pair,
  quantity: Quantity,
): Obstacle | null {
  const source = quantity === 'resistance' ? sourceAt(compiled, probes) : null;
  if (source !== null) return { kind: 'source', id: source };
  const monitor = onTheWay(island, compiled, probes).find((link) => link.monitor !== null)?.monitor ?? null;
  return monitor === null ? null : { kind: 'monitor', id: monitor };
}

/** The parts, connectors and loads on some way from one probe to the other, whatever their values. */
export function ownersBetween(island: Island, compiled: IslandNetwork, probes: Pair): ReadonlySet<Id> {
  const owners = onTheWay(island, compiled, probes).flatMap(({ element }) =>
    element === null ? [] : [ownerOf(element)],
  );
  return new Set(owners);
}

interface Way {
  readonly between: Pair;
  readonly element: Element | null;
  readonly monitor: Id | null;
}

/** Connections without resistance make one node of two; a monitor connects all of its terminals, and ground. */
function onTheWay(island: Island, { network, sources }: IslandNetwork, probes: Pair): readonly Way[] {
  const nodeOf = nameGroups(network.filter(isJoin)).of;
  const at = ([one, other]: Pair): Pair => [nodeOf(one), nodeOf(other)];
  const elements = network.filter((element) => !isJoin(element));
  const ways: readonly Way[] = [
    ...elements.map((element) => ({ between: at(element.between), element, monitor: null })),
    ...sources.map(({ between }) => ({ between: at(between), element: null, monitor: null })),
    ...island.loops.flatMap((loop) => {
      const { monitor } = loop;
      if (monitor === null) return [];
      const inside = `inside ${monitor}`;
      return ['ground', ...probesOf(loop)].map((terminal): Way => ({
        between: at([terminal, inside]),
        element: null,
        monitor,
      }));
    }),
  ];
  return onSimplePaths(ways, ...at(probes));
}

/** A source that is on in what hangs together with the probes; null: there is none. */
function sourceAt({ network, sources }: IslandNetwork, probes: Pair): Id | null {
  const groupOf = nameGroups([...network, ...sources]).of;
  const groups = probes.map(groupOf);
  return sources.find(({ between: [plus] }) => groups.includes(groupOf(plus)))?.id ?? null;
}
