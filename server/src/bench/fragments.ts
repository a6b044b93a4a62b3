import { grouped, remembered } from '../model/remembered.ts';
import type {
  Connector,
  Id,
  Loop,
  NodeName,
  Place,
  Probed,
  Procedure,
  Side,
  Step,
} from '../model/procedure.ts';
import { askedBy } from './asked.ts';
import { changesTo } from './changes.ts';
import { barIsClosed, stateOf } from './hardware.ts';
import type { Hardware } from './hardware.ts';
import { nameGroups } from './name-groups.ts';
import { nodeOf, sameNodes } from './same-nodes.ts';

/*
 * What hangs together on a bench, ground taken out and whatever the values. Fragments never come apart: wires, parts and
 * what is inside of a monitor. Contacts, closed bars and loads join them to pieces.
 */

/** By its place in the list of all fragments. */
export type FragmentIndex = number;

export interface Fragment {
  /** Its parts, monitors and sources, the connectors that have a terminal there, and its nodes by their names. */
  readonly members: ReadonlySet<Id>;
  readonly parts: readonly Id[];
  /** Sources that are drawn in it. */
  readonly sources: readonly Id[];
}

export interface Fragments {
  readonly all: readonly Fragment[];
  /** Where a node or terminal lies; null: it is ground, or nothing hangs there. */
  readonly at: (node: NodeName) => FragmentIndex | null;
  /** Those that hold a part, monitor, source or node, or a terminal of a connector. */
  readonly of: (id: Id) => readonly FragmentIndex[];
  /** Those with a terminal on one side of a connector. */
  readonly onSide: (connector: Id, side: Side) => readonly FragmentIndex[];
  /** Those that a load at a place bridges. */
  readonly under: (place: Place) => readonly FragmentIndex[];
  /** For each fragment one that stands for its piece on a bench. */
  readonly pieces: (hardware: Hardware) => readonly FragmentIndex[];
  /** The same with all mated, and every bar and load there at once that ever can be: what may come to hang together. */
  readonly reach: readonly FragmentIndex[];
}

/** Two fragments that a connector joins, in some of its states. */
interface Joint {
  readonly between: readonly [FragmentIndex, FragmentIndex];
  readonly connector: Id;
  /** `contact`: unless it is unplugged; `bar`: while its shorting bar is closed. */
  readonly by: 'contact' | 'bar';
}

export const fragmentsOf: (procedure: Procedure) => Fragments = remembered(makeFragments);

/** A thing with the nodes that it connects; a connector connects none by itself. */
interface Placed {
  readonly id: Id;
  readonly kind: 'part' | 'monitor' | 'source' | 'terminal';
  readonly nodes: readonly NodeName[];
}

function makeFragments(procedure: Procedure): Fragments {
  const same = sameNodes(procedure);
  const placed = [...procedure.loops.values()].flatMap((loop) => placedInLoop(procedure, loop));
  for (const { id, kind, between } of procedure.network.elements) {
    if (kind !== 'connector') placed.push({ id, kind, nodes: between });
    else for (const node of between) placed.push({ id, kind: 'terminal', nodes: [node] });
  }
  const groups = nameGroups();
  const keysOf = ({ nodes }: Placed): readonly string[] =>
    nodes.map(same).filter((node) => node !== 'ground');
  for (const one of placed) {
    const [first, ...others] = keysOf(one);
    if (first !== undefined) for (const other of others) groups.join(first, other);
  }
  const indices = new Map<string, FragmentIndex>();
  const all: { members: Set<Id>; parts: Id[]; sources: Id[] }[] = [];
  for (const one of placed)
    for (const key of keysOf(one)) {
      const group = groups.of(key);
      const index = indices.get(group) ?? all.push({ members: new Set(), parts: [], sources: [] }) - 1;
      indices.set(group, index);
      const fragment = all[index];
      for (const node of one.nodes) if (isNamed(node)) fragment?.members.add(node);
      if (fragment?.members.has(one.id) !== false) continue;
      fragment.members.add(one.id);
      if (one.kind === 'part') fragment.parts.push(one.id);
      if (one.kind === 'source') fragment.sources.push(one.id);
    }
  const at = (node: NodeName): FragmentIndex | null => indices.get(groups.of(same(node))) ?? null;
  const found = (nodes: readonly NodeName[]): readonly FragmentIndex[] => [
    ...new Set(nodes.map(at).filter((index) => index !== null)),
  ];
  const pins = pinsByConnector(procedure);
  const terminals = (connector: Id, side: string, used?: readonly string[]): readonly NodeName[] =>
    [...(used ?? pins.get(connector)?.all ?? [])].map((pin) => `${connector}.${side}.${pin}`);
  const under = ({ connector, side, loop }: Place): readonly FragmentIndex[] => {
    const used = loop === null ? undefined : procedure.loops.get(loop)?.pins.get(connector);
    return found(terminals(connector, side, used));
  };
  const joints = [...procedure.connectors.values()].flatMap((connector) => {
    const used = pins.get(connector.id);
    return used === undefined ? [] : jointsOf(connector, used, at);
  });
  const holding = grouped(
    all.flatMap(({ members }, index) => [...members].map((id): [Id, FragmentIndex] => [id, index])),
  );
  const places = procedure.steps.flatMap((step) => changesTo('load', step).flatMap(({ at: to }) => to ?? []));
  const joined = (pairs: readonly (readonly FragmentIndex[])[]): readonly FragmentIndex[] => {
    const pieces = nameGroups();
    for (const [first, ...others] of pairs)
      for (const other of others) pieces.join(String(first), String(other));
    return all.map((_, index) => Number(pieces.of(String(index))));
  };
  return {
    all,
    at,
    of: (id) => holding.get(id) ?? [],
    onSide: (connector, side) => found(terminals(connector, side)),
    under,
    pieces: remembered((hardware: Hardware) =>
      joined([
        ...joints.filter((joint) => isClosed(procedure, joint, hardware)).map(({ between }) => between),
        ...[...hardware.loads.values()].map(under),
      ]),
    ),
    reach: joined([...joints.map(({ between }) => between), ...places.map(under)]),
  };
}

/** What a loop is made of. Its two wires are two chains of nodes; a monitor and an end part join them. */
function placedInLoop(procedure: Procedure, { id: loop, monitor, elements, pins }: Loop): Placed[] {
  const placed: Placed[] = [];
  let near: readonly [NodeName, NodeName] = [`${loop}.monitor 1`, `${loop}.monitor 2`];
  if (monitor !== null) placed.push({ id: monitor, kind: 'monitor', nodes: near });
  for (const { kind, id } of elements) {
    if (kind === 'part') {
      const isEnd = procedure.parts.get(id)?.form === 'end';
      const far = isEnd ? near : ([`${near[0]}>${id}`, `${near[1]}>${id}`] as const);
      if (isEnd) placed.push({ id, kind, nodes: near });
      else for (const wire of [0, 1] as const) placed.push({ id, kind, nodes: [near[wire], far[wire]] });
      near = far;
      continue;
    }
    const [one, other] = pins.get(id) ?? [];
    const [nearSide, farSide] = procedure.connectors.get(id)?.sides ?? [];
    if (one === undefined || other === undefined || nearSide === undefined || farSide === undefined) continue;
    placed.push({ id, kind: 'terminal', nodes: [near[0], `${id}.${nearSide}.${one}`] });
    placed.push({ id, kind: 'terminal', nodes: [near[1], `${id}.${nearSide}.${other}`] });
    near = [`${id}.${farSide}.${one}`, `${id}.${farSide}.${other}`];
    for (const node of near) placed.push({ id, kind: 'terminal', nodes: [node] });
  }
  return placed;
}

/** Names that a file gives; terminals and points inside of loops have none. */
function isNamed(node: NodeName): boolean {
  return node !== 'ground' && !node.includes('.');
}

/** The pins of a connector, and which of them each loop uses. */
interface Pins {
  readonly all: ReadonlySet<string>;
  readonly ofLoops: readonly (readonly [string, string])[];
}

function pinsByConnector({ connectors, loops, network }: Procedure): ReadonlyMap<Id, Pins> {
  const made = new Map(
    [...connectors.keys()].map((id) => [id, { all: new Set<string>(), ofLoops: [] as [string, string][] }]),
  );
  for (const { pins } of loops.values())
    for (const [id, [one, other]] of pins) {
      made.get(id)?.all.add(one).add(other);
      made.get(id)?.ofLoops.push([one, other]);
    }
  for (const element of network.elements)
    if (element.kind === 'connector') made.get(element.id)?.all.add(element.pin);
  return made;
}

function jointsOf({ id, sides, shortingBar }: Connector, pins: Pins, at: Fragments['at']): readonly Joint[] {
  const joint = (by: Joint['by'], one: NodeName, other: NodeName): readonly Joint[] => {
    const [from, to] = [at(one), at(other)];
    return from === null || to === null || from === to ? [] : [{ connector: id, by, between: [from, to] }];
  };
  const contacts = [...pins.all].flatMap((pin) =>
    joint('contact', `${id}.${sides[0]}.${pin}`, `${id}.${sides[1]}.${pin}`),
  );
  if (shortingBar === null) return contacts;
  const { side } = shortingBar;
  const bars = bridgedBy(shortingBar.pins, pins).flatMap(([one, other]) =>
    joint('bar', `${id}.${side}.${one}`, `${id}.${side}.${other}`),
  );
  return [...contacts, ...bars];
}

/** The pins that a bar names, else those of each loop there, else the only two. */
function bridgedBy(
  stated: readonly [string, string] | null,
  { all, ofLoops }: Pins,
): readonly (readonly [string, string])[] {
  if (stated !== null) return [stated];
  if (ofLoops.length > 0) return ofLoops;
  const [one, other, third] = all;
  return one !== undefined && other !== undefined && third === undefined ? [[one, other]] : [];
}

function isClosed(procedure: Procedure, { connector, by }: Joint, hardware: Hardware): boolean {
  switch (by) {
    case 'contact':
      return stateOf(hardware, connector) !== 'unplugged';
    case 'bar': {
      const found = procedure.connectors.get(connector);
      return found !== undefined && barIsClosed(procedure, found, hardware);
    }
  }
}

/** Where a multimeter is held by hand, ground aside. */
export function probed(fragments: Fragments, step: Step): readonly FragmentIndex[] {
  const asked = askedBy(step);
  if (asked?.of !== 'points') return [];
  return asked.step.across.map((probe) => fragments.at(nodeOf(probe))).filter((index) => index !== null);
}

/** Where a proof is taken. */
export function provenAt(fragments: Fragments, at: Probed): readonly FragmentIndex[] {
  if ('connector' in at) return fragments.onSide(at.connector, at.side);
  return at
    .map(({ connector, side, pin }) => fragments.at(`${connector}.${side}.${pin}`))
    .filter((index) => index !== null);
}
