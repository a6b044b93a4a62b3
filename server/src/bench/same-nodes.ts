import type { Id, Loop, NodeName, Probe, Procedure } from '../model/procedure.ts';
import { nameGroups } from './name-groups.ts';

/** One name for all the names of a node: a terminal is the node that its pin leads to on its side. Ground stays `ground`. */
export type SameNodes = (node: NodeName) => NodeName;

const known = new WeakMap<Procedure, SameNodes>();

/** The names of all nodes of the network, whether connectors are mated or not. */
export function sameNodes(procedure: Procedure): SameNodes {
  const made = known.get(procedure) ?? makeSameNodes(procedure);
  known.set(procedure, made);
  return made;
}

function makeSameNodes({ network, connectors }: Procedure): SameNodes {
  const groups = nameGroups();
  for (const element of network.elements) {
    if (element.kind !== 'connector') continue;
    const sides = connectors.get(element.id)?.sides ?? [];
    for (const [at, side] of sides.entries())
      groups.join(`${element.id}.${side}.${element.pin}`, element.between[at === 0 ? 0 : 1]);
  }
  return (node) => (groups.of(node) === groups.of('ground') ? 'ground' : groups.of(node));
}

/** The terminals of the pins that a loop uses. */
export function terminalsOf(
  { connectors }: Procedure,
  { pins }: Loop,
): readonly { readonly connector: Id; readonly node: NodeName }[] {
  return [...pins].flatMap(([connector, used]) =>
    (connectors.get(connector)?.sides ?? []).flatMap((side) =>
      used.map((pin) => ({ connector, node: `${connector}.${side}.${pin}` })),
    ),
  );
}

/** A probe by the name of the node that it touches. */
export function nodeOf(probe: Probe): NodeName {
  return 'node' in probe ? probe.node : `${probe.connector}.${probe.side}.${probe.pin}`;
}
