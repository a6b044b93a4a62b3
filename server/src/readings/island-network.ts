import { barIsClosed, stateOf } from '../bench/hardware.ts';
import type { Hardware } from '../bench/hardware.ts';
import type { Power } from '../bench/power.ts';
import { withInner } from '../circuit/circuit.ts';
import type { Consumer, Element, Network, PartModel, Source } from '../circuit/circuit.ts';
import type { Span } from '../quantity/span.ts';
import type { Connector, Id, Loop, NetworkElement, Procedure } from '../model/procedure.ts';
import { islandsOf } from './islands.ts';
import type { Island } from './islands.ts';
import type { LoopBench } from './loop-bench.ts';
import { barBetween, contactElement, join, loopElements, nothing, poles, probesOf } from './loop-network.ts';
import type { Pair, SeenNetwork } from './loop-network.ts';

/** An island as it stands on the bench. Terminals are nodes named as in the file, `K4.end.1`. */
export interface IslandNetwork {
  readonly network: Network;
  /** Those that are on: what is taken away is no connection. */
  readonly sources: readonly DrawnSource[];
  /** Those that draw their current. */
  readonly consumers: readonly Consumer[];
  /** The other ones: of their resistance nothing is known. */
  readonly resting: readonly Consumer[];
}

/** What is inside of a source stands beside it as a part, where it is stated. */
export interface DrawnSource extends Source {
  readonly innerIsStated: boolean;
}

/** null where a value in it could not be read. */
export function islandNetwork(
  procedure: Procedure,
  island: Island,
  bench: LoopBench,
  drawing: readonly Id[] = [],
): IslandNetwork | null {
  const { hardware } = bench;
  if (island.elements.length > 0 && !procedure.network.complete) return null;
  const network: Element[] = [];
  const sources: DrawnSource[] = [];
  const consumers: Consumer[] = [];
  const resting: Consumer[] = [];
  for (const loop of island.loops) {
    const elements = loopElements(procedure, loop, hardware);
    if (elements === null) return null;
    for (const one of elements) network.push(one);
  }
  for (const element of island.elements) {
    const draws = element.kind === 'part' ? (procedure.parts.get(element.id)?.draws ?? null) : null;
    if (element.kind === 'part' && draws !== null) {
      if (draws.amperes === null) return null;
      const consumer = { id: element.id, between: endsOf(element), draws: draws.amperes };
      (draws.always || drawing.includes(element.id) ? consumers : resting).push(consumer);
      continue;
    }
    const built = builtOf(procedure, element, bench);
    if (built === null) return null;
    for (const one of built.network) network.push(one);
    for (const one of built.sources) sources.push(one);
  }
  const connectors = island.elements.flatMap((one) => (one.kind === 'connector' ? [one.id] : []));
  for (const id of new Set(connectors)) {
    const across = bridging(procedure, id, hardware);
    if (across === null) return null;
    for (const one of across) network.push(one);
  }
  return { network, sources, consumers, resting };
}

/**
 * A loop with all that hangs on it, from the terminals of its monitor. A monitor measures by a change of its current, to
 * which a source that is on is a joint.
 */
export function loopNetwork(procedure: Procedure, loop: Loop, bench: LoopBench): SeenNetwork | null {
  const compiled = islandNetwork(procedure, islandsOf(procedure).ofLoop(loop), bench);
  if (compiled === null || loop.monitor === null) return null;
  const joints = compiled.sources.map(({ between }) => join(between[0], between[1]));
  return { network: [...compiled.network, ...joints], probes: probesOf(loop) };
}

/** Whether an element is a connection without resistance, made by the compiler. */
export function isJoin(element: Element): boolean {
  return element.id.includes('=');
}

/** What an element of the network comes to on the bench; null where a value of it could not be read. */
function builtOf(
  procedure: Procedure,
  element: NetworkElement,
  { hardware, power }: LoopBench,
): Pick<IslandNetwork, 'network' | 'sources'> | null {
  switch (element.kind) {
    case 'part': {
      const network = partElement(procedure, element);
      return network && { network, sources: [] };
    }
    case 'connector': {
      const network = pinElements(procedure, element, hardware);
      return network && { network, sources: [] };
    }
    case 'source': {
      return sourceOf(procedure, element, power);
    }
  }
}

type PartElement = NetworkElement & { readonly kind: 'part' };

/** The two nodes of all that is no potentiometer. */
function endsOf({ between: [from, to] }: PartElement): Pair {
  return [from, to];
}

function partElement({ parts }: Procedure, element: PartElement): Network | null {
  const { id } = element;
  const { resistance = null, wiper = null } = parts.get(id) ?? {};
  const model: PartModel | null = resistance;
  if (model === null) return null;
  if (wiper !== null && model.kind === 'stated') return trackElements(element, model.resistance, wiper);
  return [{ id, between: endsOf(element), part: model }];
}

/** Both sides of the wiper, and its contact with the track, which counts as nothing and may be open. */
function trackElements(
  { id, between: [first, wiper, second = first] }: PartElement,
  track: Span,
  place: Span,
): Network {
  const on = `${id}>wiper`;
  const side = { kind: 'track', track, wiper: { id, place } } as const;
  return [
    { id: `${id}.1`, between: [first, on], part: { ...side, end: 'first' } },
    { id: `${id}.2`, between: [on, second], part: { ...side, end: 'second' } },
    { id: `${id}.wiper`, between: [on, wiper], part: { kind: 'stated', resistance: nothing } },
  ];
}

function pinElements(
  { connectors }: Procedure,
  { id, pin, between: [from, to] }: NetworkElement & { readonly kind: 'connector' },
  hardware: Hardware,
): Network | null {
  const connector = connectors.get(id);
  const contact = connector?.contact ?? null;
  if (connector === undefined || contact === null) return null;
  const [one, other] = connector.sides;
  const joined = [join(from, `${id}.${one}.${pin}`), join(`${id}.${other}.${pin}`, to)];
  if (stateOf(hardware, id) === 'unplugged') return joined;
  return [...joined, contactElement(connector, contact, pin)];
}

/** What lies across pins of a connector in the network: its bar where that is closed, and loads that are fitted there. */
function bridging(procedure: Procedure, id: Id, hardware: Hardware): Network | null {
  const connector = procedure.connectors.get(id);
  const pins = connector === undefined ? null : bridgedPins(procedure, connector);
  if (connector === undefined || pins === null) return [];
  const elements: Element[] = [];
  if (connector.shortingBar !== null && barIsClosed(procedure, connector, hardware)) {
    if (connector.shortingBar.resistance === null) return null;
    const bar = barBetween(connector, { pins: new Map([[id, pins]]) });
    if (bar !== null) elements.push(bar);
  }
  for (const [load, place] of hardware.loads) {
    if (place.connector !== id || place.loop !== null) continue;
    const resistance = procedure.loads.get(load)?.resistance ?? null;
    if (resistance === null) return null;
    elements.push({ id: load, between: poles(id, place.side, pins), part: resistance });
  }
  return elements;
}

/** The pins that a bar bridges, or a load: those of the bar, else the only two in the network. */
function bridgedPins({ network }: Procedure, { id, shortingBar }: Connector): Pair | null {
  const pins = network.elements.flatMap((one) =>
    one.kind === 'connector' && one.id === id ? [one.pin] : [],
  );
  const [one, other, third] = pins;
  if (one !== undefined && other !== undefined && third === undefined) return [one, other];
  const ofBar = shortingBar?.pins ?? null;
  return ofBar?.every((pin) => pins.includes(pin)) === true ? ofBar : null;
}

function sourceOf(
  { sources, regulated }: Procedure,
  { id, between }: NetworkElement & { readonly kind: 'source' },
  power: Power,
): Pick<IslandNetwork, 'network' | 'sources'> | null {
  const supply = regulated.get(id);
  const source = sources.get(supply?.from ?? id);
  const { voltage = null, resistance = null } = supply ?? source ?? {};
  if (source === undefined || voltage === null || resistance === null) return null;
  const waits = supply?.needsIgnition === true && !power.ignitionOn;
  if (waits || power.disconnected.includes(source.id)) return { network: [], sources: [] };
  const ideal = { id, between, kind: 'voltage', value: voltage } as const;
  if (resistance === 'unstated') return { network: [], sources: [{ ...ideal, innerIsStated: false }] };
  const { source: drawn, inner } = withInner(ideal, resistance);
  return { network: [inner], sources: [{ ...drawn, innerIsStated: true }] };
}
