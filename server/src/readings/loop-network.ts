import { barIsClosed, stateOf } from '../bench/hardware.ts';
import type { Hardware } from '../bench/hardware.ts';
import type { Element, Network, PartModel } from '../circuit/circuit.ts';
import type { Span } from '../quantity/span.ts';
import type { Connector, Id, Loop, Place, Procedure, ShortingBar, Side } from '../model/procedure.ts';

/** A circuit as it stands on the bench, seen from two points. */
export interface SeenNetwork {
  readonly network: Network;
  readonly probes: Pair;
}

export type Pair = readonly [string, string];

/** The terminals of the monitor that reads a loop. */
export function probesOf({ id, monitor }: Loop): Pair {
  return [`${monitor ?? ''}.${id}.1`, `${monitor ?? ''}.${id}.2`];
}

/**
 * Compiles a loop into two-terminal elements. Terminals are nodes named as in the file, `K30.monitor.1`. null where a
 * value in it could not be read.
 */
export function loopElements(procedure: Procedure, loop: Loop, hardware: Hardware): Network | null {
  if (loop.monitor === null || !loop.complete) return null;
  const network: Element[] = [];
  let near = probesOf(loop);
  for (const { kind, id } of loop.elements) {
    const built =
      kind === 'connector'
        ? connectorElements(procedure, loop, id, hardware, near)
        : partElements(procedure, id, near);
    if (built === null) return null;
    for (const element of built.elements) network.push(element);
    near = built.far;
  }
  return network;
}

/** The id of the part, connector or load that an element belongs to. */
export function ownerOf({ id }: Element): Id {
  return id.split('.')[0] ?? id;
}

/** What varies by itself: the two conductors of one part are of one make and vary together, each contact alone. */
export function causeOf(element: Element): string {
  const [owner = element.id, piece] = element.id.split('.');
  return piece === 'contact' || piece === 'shorting-bar' ? element.id : owner;
}

interface Built {
  readonly elements: readonly Element[];
  readonly far: Pair;
}

function partElements(procedure: Procedure, id: Id, near: Pair): Built | null {
  const part = procedure.parts.get(id);
  if (part === undefined || part.resistance === null) return null;
  const model: PartModel = part.resistance;
  if (part.form === 'end') return { elements: [{ id, between: near, part: model }], far: near };
  const far: Pair = [`${near[0]}>${id}`, `${near[1]}>${id}`];
  const elements = [
    { id: `${id}.1`, between: [near[0], far[0]], part: model },
    { id: `${id}.2`, between: [near[1], far[1]], part: model },
  ] as const;
  return { elements, far };
}

function connectorElements(
  procedure: Procedure,
  loop: Loop,
  id: Id,
  hardware: Hardware,
  near: Pair,
): Built | null {
  const connector = procedure.connectors.get(id);
  const pins = loop.pins.get(id);
  const contact = connector?.contact ?? null;
  if (connector === undefined || pins === undefined || contact === null) return null;
  const [nearSide, farSide] = connector.sides.map((side) => poles(id, side, pins)) as [Pair, Pair];
  const elements: Element[] = [join(near[0], nearSide[0]), join(near[1], nearSide[1])];
  if (stateOf(hardware, id) !== 'unplugged')
    for (const pin of pins) elements.push(contactElement(connector, contact, pin));
  const bar = barElement(procedure, connector, loop, hardware);
  if (bar === null) return null;
  for (const element of bar) elements.push(element);
  for (const [load, place] of hardware.loads) {
    if (!sitsIn(place, loop, id)) continue;
    const resistance = procedure.loads.get(load)?.resistance ?? null;
    if (resistance === null) return null;
    elements.push({ id: load, between: poles(id, place.side, pins), part: resistance });
  }
  return { elements, far: farSide };
}

/** The two terminals of one side. */
export function poles(connector: Id, side: Side, [one, other]: Pair): Pair {
  return [`${connector}.${side}.${one}`, `${connector}.${side}.${other}`];
}

/** One mated pin of a connector. */
export function contactElement({ id, sides }: Connector, resistance: Span, pin: string): Element {
  const between: Pair = [`${id}.${sides[0]}.${pin}`, `${id}.${sides[1]}.${pin}`];
  return { id: `${id}.contact.${pin}`, between, part: { kind: 'stated', resistance } };
}

function sitsIn(place: Place, loop: Loop, connector: Id): boolean {
  return place.connector === connector && place.loop === loop.id;
}

/** The bar's element where it is closed and bridges both pins of the loop; none where it is open; null: unreadable. */
function barElement(
  procedure: Procedure,
  connector: Connector,
  loop: Loop,
  hardware: Hardware,
): readonly Element[] | null {
  if (closedBarAcross(procedure, connector, loop, hardware) === null) return [];
  const bar = barBetween(connector, loop);
  return bar === null ? null : [bar];
}

/** The element that the bar of a connector is while it is closed; null: it has none across the pins, or an unreadable one. */
export function barBetween(
  { id, shortingBar: bar }: Connector,
  loop: { readonly pins: ReadonlyMap<Id, Pair> },
): Element | null {
  const pins = loop.pins.get(id);
  if (bar?.resistance == null || pins === undefined || !bridges(bar, pins)) return null;
  return {
    id: `${id}.shorting-bar`,
    between: poles(id, bar.side, pins),
    part: { kind: 'stated', resistance: bar.resistance },
  };
}

/** The shorting bar of a connector, where it is closed across the pins of the loop. */
export function closedBarAcross(
  procedure: Procedure,
  connector: Connector,
  loop: Loop,
  hardware: Hardware,
): ShortingBar | null {
  const bar = connector.shortingBar;
  const pins = loop.pins.get(connector.id);
  if (bar === null || pins === undefined || !bridges(bar, pins)) return null;
  return barIsClosed(procedure, connector, hardware) ? bar : null;
}

function bridges(bar: ShortingBar, pins: Pair): boolean {
  return bar.pins === null || (pins.includes(bar.pins[0]) && pins.includes(bar.pins[1]));
}

export const nothing: Span = { least: 0, nominal: 0, most: 0 };

/** A connection without resistance. */
export function join(a: string, b: string): Element {
  return { id: `${a}=${b}`, between: [a, b], part: { kind: 'stated', resistance: nothing } };
}
