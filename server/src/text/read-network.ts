import { checkEntry } from './check-entry.ts';
import { lookUp } from './names.ts';
import { keyAt, valueAt } from './problem.ts';
import type { Connector, Id, Loop, Network, NetworkElement, NodeName, Part } from '../model/procedure.ts';
import { hasSide } from './read-circuit.ts';
import { itemsIn } from './read-entries.ts';
import type { RawItem } from './read-entries.ts';
import type { LoopElements } from './read-loops.ts';
import type { Reader } from './reader.ts';
import { grouped, remembered } from '../model/remembered.ts';
import { entryOf } from './tree.ts';
import type { Path } from '../model/where.ts';

/** What a network is made of. */
interface NetworkParts extends LoopElements {
  readonly loops: ReadonlyMap<Id, Loop>;
}

const definitions = {
  part: 'network-part',
  connector: 'network-connector',
  source: 'network-source',
} as const;

type ElementKind = keyof typeof definitions;

const kinds: readonly ElementKind[] = ['part', 'connector', 'source'];

/** The network with the elements that could be read; the others are reported. */
export function readNetwork(reader: Reader, circuit: NetworkParts): Network {
  const written = entryOf(reader.root, 'network')?.value;
  if (written === undefined) return { elements: [], complete: true };
  const items = itemsIn('network', reader);
  const found = items.flatMap((item) => readElement(item, reader, circuit) ?? []);
  const unlisted = written.kind !== 'list' || written.items.length > items.length;
  const elements = once(found, circuit, reader.report);
  const known = elements.filter((element) => nodesAreKnown(element, elements, reader, circuit));
  return { elements: known, complete: !unlisted && known.length === items.length };
}

function readElement({ path, node }: RawItem, reader: Reader, circuit: NetworkParts): NetworkElement | null {
  const { names, report } = reader;
  const [kind, second] = kinds.filter((key) => entryOf(node, key) !== undefined);
  if (kind === undefined || second !== undefined) {
    const message = 'An element of the network is one of `part`, `connector` or `source`, with `between`.';
    const at = kind === undefined ? keyAt(path) : keyAt([...path, second ?? kind]);
    report({ rule: kind === undefined ? 'missing-key' : 'wrong-value', at, message });
    return null;
  }
  const named = `The ${kind} in the network`;
  const { values, bad } = checkEntry(definitions[kind], node, path, { named, missingAt: path }, report);
  const id = (values as Readonly<Record<string, unknown>>)[kind];
  const [from, to, third] = values.between ?? [];
  if (bad.size > 0 || typeof id !== 'string' || from === undefined || to === undefined) return null;
  const at = valueAt([...path, kind]);
  const isKnown = lookUp(names, id, [`${kind}s`], at, report) !== null;
  const nodes = [from, to, ...(third === undefined ? [] : [third])];
  const again = nodes.findIndex((node, index) => nodes.indexOf(node) < index);
  if (again >= 0) {
    const message = `An element stands between ${third === undefined ? 'two' : 'three'} different nodes.`;
    const subject = nodes[again] ?? to;
    report({ rule: 'wrong-value', at: valueAt([...path, 'between', again]), message, subject });
    return null;
  }
  const element = { path, between: [from, to] as const, id };
  if (!isKnown) return null;
  switch (kind) {
    case 'source':
      return { ...element, kind };
    case 'part': {
      const part = circuit.parts.get(id);
      const between = third === undefined ? element.between : ([from, to, third] as const);
      if (part === undefined || !hasItsNodes(part, between.length, path, report)) return null;
      return { ...element, kind, between };
    }
    case 'connector': {
      const pin = 'pin' in values ? values.pin : undefined;
      if (pin === undefined || !circuit.connectors.has(id)) return null;
      return { ...element, kind, pin: String(pin) };
    }
  }
}

/** A potentiometer has three nodes, any other part two. */
function hasItsNodes({ id, kind }: Part, nodes: number, path: Path, report: Reader['report']): boolean {
  const isPotentiometer = kind === 'potentiometer';
  if (isPotentiometer === (nodes === 3)) return true;
  const message = isPotentiometer
    ? `\`${id}\` is a potentiometer and stands between three nodes: one end, the wiper, the other end.`
    : `\`${id}\` stands between two nodes. Three are for a potentiometer: one end, the wiper, the other end.`;
  report({ rule: 'wrong-value', at: valueAt([...path, 'between']), message, subject: id });
  return false;
}

/** A part, a source and a pin stand in one place; a second one is reported and left out. */
function once(
  elements: readonly NetworkElement[],
  { loops }: NetworkParts,
  report: Reader['report'],
): readonly NetworkElement[] {
  const taken = new Map<string, Path>();
  for (const loop of loops.values()) {
    for (const [index, { kind, id }] of loop.elements.entries())
      if (kind === 'part') taken.set(id, [...loop.path, 'path', index + 1]);
    for (const [connector, pins] of loop.pins)
      for (const pin of pins) taken.set(`${connector} ${pin}`, loop.path);
  }
  return elements.filter((element) => {
    const { id, kind, path } = element;
    const key = kind === 'connector' ? `${id} ${element.pin}` : id;
    const earlier = taken.get(key);
    if (earlier === undefined) {
      taken.set(key, path);
      return true;
    }
    const what = kind === 'connector' ? `Pin ${element.pin} of \`${id}\`` : `\`${id}\``;
    const message = `${what} stands in another place already. It stands once in all loops and the network.`;
    const related = [{ at: valueAt(earlier), message: 'It stands here.' }];
    const at = valueAt([...path, kind === 'connector' ? 'pin' : kind]);
    report({ rule: 'wrong-loop', at, message, subject: id, related });
    return false;
  });
}

/** A node has a name of its own, or is a terminal that a loop or another element makes. */
function nodesAreKnown(
  { between, path }: NetworkElement,
  elements: readonly NetworkElement[],
  { names, report }: Reader,
  circuit: NetworkParts,
): boolean {
  const known = between.map((node, index) => {
    const at = [...path, 'between', index];
    const named = names.things.get(node);
    if (named !== undefined) {
      const message = `\`${node}\` is the name of something else already. A node has a name of its own.`;
      const related = [{ at: keyAt(named.path), message: 'It is named here.' }];
      report({ rule: 'wrong-id', at: valueAt(at), message, subject: node, related });
      return false;
    }
    const [connector = '', side, pin] = node.split('.');
    if (side === undefined || pin === undefined) return true;
    const within = valueAt(at, [0, connector.length]);
    if (lookUp(names, connector, ['connectors'], within, report) === null) return false;
    const found = circuit.connectors.get(connector);
    if (found === undefined || !hasSide(found, side, at, report)) return false;
    if (pinsOf(connector, circuit.loops, elements).includes(pin)) return true;
    const message = `Pin ${pin} of \`${connector}\` stands in no loop and nowhere in the network.`;
    report({ rule: 'wrong-id', at: valueAt(at), message, subject: node });
    return false;
  });
  return !known.includes(false);
}

/** The pins of a connector that stand in a loop or in the network. */
export function pinsOf(
  connector: Id,
  loops: ReadonlyMap<Id, Loop>,
  elements: readonly NetworkElement[],
): readonly string[] {
  return [...(pinsInLoops(loops).get(connector) ?? []), ...(pinsInNetwork(elements).get(connector) ?? [])];
}

type PinsByConnector = ReadonlyMap<Id, readonly string[]>;

const pinsInLoops = remembered((loops: ReadonlyMap<Id, Loop>): PinsByConnector =>
  grouped(
    [...loops.values()].flatMap(({ pins }) =>
      [...pins].flatMap(([id, pair]) => pair.map((pin) => [id, pin] as const)),
    ),
  ),
);

const pinsInNetwork = remembered((elements: readonly NetworkElement[]): PinsByConnector =>
  grouped(
    elements.flatMap((element) => (element.kind === 'connector' ? [[element.id, element.pin] as const] : [])),
  ),
);

/** The nodes of the network that have names; `ground` is one of them where something stands at it. */
export const namedNodes = remembered(
  ({ elements }: Network): ReadonlySet<NodeName> =>
    new Set(elements.flatMap(({ between }) => between.filter((node) => !node.includes('.')))),
);

/** The two pins of a connector between which something bridges it: those of its only loop, or its only two in the network. */
export function onlyPins(
  { id }: Pick<Connector, 'id'>,
  loops: ReadonlyMap<Id, Loop>,
  elements: readonly NetworkElement[],
): readonly [string, string] | null {
  const [one, other, third] = pinsOf(id, loops, elements);
  return one === undefined || other === undefined || third !== undefined ? null : [one, other];
}
