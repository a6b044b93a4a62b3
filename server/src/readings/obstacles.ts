import { nameGroups } from '../bench/name-groups.ts';
import type { Element } from '../circuit/circuit.ts';
import type { Id, Quantity } from '../model/procedure.ts';
import { quantityFacts } from '../model/quantity-kinds.ts';
import type { Island } from './islands.ts';
import { isJoin } from './island-network.ts';
import type { IslandNetwork } from './island-network.ts';
import { ownerOf, probesOf } from './loop-network.ts';
import { onSimplePaths } from './simple-paths.ts';

/**
 * Why nothing can be said of what is measured: a source is on there, or between the probes lies a monitor, or a consumer
 * whose resistance is asked for.
 */
export interface Obstacle {
  readonly kind: 'source' | 'monitor' | 'consumer';
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
  const source = quantityFacts[quantity].byOwnCurrent ? sourceAt(island, compiled, probes) : null;
  if (source !== null) return { kind: 'source', id: source };
  const ways = onTheWay(island, compiled, probes);
  const monitor = ways.find((link) => link.monitor !== null)?.monitor ?? null;
  if (monitor !== null) return { kind: 'monitor', id: monitor };
  const consumer = ways.find((link) => link.consumer !== null)?.consumer ?? null;
  return consumer === null || !quantityFacts[quantity].byOwnCurrent
    ? null
    : { kind: 'consumer', id: consumer };
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
  readonly source: Id | null;
  readonly consumer: Id | null;
}

const nothing = { element: null, monitor: null, source: null, consumer: null };

/** Connections without resistance make one node of two; a monitor connects all of its terminals, and ground. */
function onTheWay(
  island: Island,
  { network, sources, consumers, resting }: IslandNetwork,
  probes: Pair,
): readonly Way[] {
  const nodeOf = nameGroups(network.filter(isJoin)).of;
  const at = ([one, other]: Pair): Pair => [nodeOf(one), nodeOf(other)];
  const elements = network.filter((element) => !isJoin(element));
  const ways: readonly Way[] = [
    ...elements.map((element) => ({ ...nothing, between: at(element.between), element })),
    ...sources.map(({ between, id }) => ({ ...nothing, between: at(between), source: id })),
    ...[...consumers, ...resting].map(({ between, id }) => ({
      ...nothing,
      between: at(between),
      consumer: id,
    })),
    ...island.loops.flatMap((loop) => {
      const { monitor } = loop;
      if (monitor === null) return [];
      const inside = `inside ${monitor}`;
      return [ground, ...probesOf(loop)].map((terminal): Way => ({
        ...nothing,
        between: at([terminal, inside]),
        monitor,
      }));
    }),
  ];
  const [from, to] = at(probes);
  return onSimplePaths(ways, from, to);
}

/**
 * A source that is on in what hangs together with the probes, or whose current can flow through them; null: there is
 * none. Ground alone connects nothing with a source: an unplugged sensor that ends at it may be measured.
 */
function sourceAt(island: Island, compiled: IslandNetwork, probes: Pair): Id | null {
  const { network, sources } = compiled;
  const joined = nameGroups(network.filter(isJoin));
  const isGround = (node: string): boolean => joined.of(node) === joined.of(ground);
  const isApart = ({ between }: { readonly between: Pair }): boolean => !between.some(isGround);
  const { of } = nameGroups([...network, ...sources].filter(isApart));
  const groups = probes.filter((probe) => !isGround(probe)).map(of);
  const near = sources.find(({ between }) =>
    between.some((node) => !isGround(node) && groups.includes(of(node))),
  );
  if (near !== undefined) return near.id;
  return onTheWay(island, compiled, probes).find(({ source }) => source !== null)?.source ?? null;
}

const ground = 'ground';
