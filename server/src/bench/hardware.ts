import type { Connector, Id, Loop, Place, Procedure, Side, Step } from '../model/procedure.ts';
import { changesOf } from './changes.ts';
import type { Change, ConnectorState } from './changes.ts';

/** Connectors that are not mated and loads that are fitted, of those that are watched; both sorted by id. */
export interface Hardware {
  readonly connectors: ReadonlyMap<Id, 'unlocked' | 'unplugged'>;
  readonly loads: ReadonlyMap<Id, Place>;
}

/** Every connector mated, no load fitted. */
export const hardwareAtStart: Hardware = { connectors: new Map(), loads: new Map() };

/** What a watcher sees of the bench: these connectors, and loads while they sit on one of them. */
export interface Cone {
  readonly connectors: ReadonlySet<Id>;
}

/** Whether a side is the half away from the monitor, or the second in the network. */
export function isFarSide({ connectors }: Procedure, connector: Id, side: Side): boolean {
  return connectors.get(connector)?.sides[1] === side;
}

/** Connectors and loads after a step's verb; the same object where the step does not concern the cone. */
export function hardwareAfter(hardware: Hardware, step: Step, cone: Cone): Hardware {
  return changesOf(step).reduce((before, change) => changed(before, change, cone), hardware);
}

function changed(hardware: Hardware, change: Change, cone: Cone): Hardware {
  switch (change.of) {
    case 'connector':
      return withConnector(hardware, cone, change.id, change.to);
    case 'load':
      return withLoad(hardware, cone, change.id, change.at);
    case 'ignition':
    case 'source':
    case 'things':
    case 'codes':
    case 'time':
      return hardware;
  }
}

export function hardwareKey(hardware: Hardware): string {
  const connectors = [...hardware.connectors].map(([id, state]) => `${id}:${state}`);
  const loads = [...hardware.loads].map(([id, place]) => `${id}@${placeKey(place)}`);
  return `${connectors.join()}/${loads.join()}`;
}

export function placeKey(place: Place): string {
  return `${place.connector}.${place.side}.${place.loop ?? ''}`;
}

/** A side as it is written in a file: `K30.monitor`. */
export function placeInWords(place: Place): string {
  return `${place.connector}.${place.side}`;
}

export function stateOf(hardware: Hardware, connector: Id): ConnectorState {
  return hardware.connectors.get(connector) ?? 'mated';
}

/** Loads that sit on a side of a connector, or on either side. */
export function loadsAt(hardware: Hardware, connector: Id, side?: Side): readonly Id[] {
  const there = ([, place]: [Id, Place]): boolean =>
    place.connector === connector && (side === undefined || place.side === side);
  return [...hardware.loads].filter(there).map(([id]) => id);
}

const reach: Readonly<Record<ConnectorState, number>> = { mated: 0, unlocked: 1, unplugged: 2 };

/** Closed when the connector is at or beyond the state that closes it, and no adapter on its side holds it open. */
export function barIsClosed(procedure: Procedure, connector: Connector, hardware: Hardware): boolean {
  const bar = connector.shortingBar;
  if (bar === null || reach[stateOf(hardware, connector.id)] < reach[bar.closes]) return false;
  const there = loadsAt(hardware, connector.id, bar.side);
  return !there.some((load) => procedure.loads.get(load)?.opensShortingBar === true);
}

/** Whether every connector of the loop is mated and no load is fitted in it. */
export function isWhole(hardware: Hardware, loop: Loop): boolean {
  return (
    loop.elements.every(({ id }) => !hardware.connectors.has(id)) &&
    ![...hardware.loads.values()].some((place) => place.loop === loop.id)
  );
}

function withConnector(hardware: Hardware, cone: Cone, id: Id, state: ConnectorState): Hardware {
  if (!cone.connectors.has(id) || stateOf(hardware, id) === state) return hardware;
  const connectors = new Map(hardware.connectors);
  if (state === 'mated') connectors.delete(id);
  else connectors.set(id, state);
  return { ...hardware, connectors: sorted(connectors) };
}

function withLoad(hardware: Hardware, cone: Cone, id: Id, place: Place | null): Hardware {
  const before = hardware.loads.get(id);
  const after = place !== null && cone.connectors.has(place.connector) ? place : undefined;
  if (before === after) return hardware;
  const loads = new Map(hardware.loads);
  if (after === undefined) loads.delete(id);
  else loads.set(id, after);
  return { ...hardware, loads: sorted(loads) };
}

function sorted<V>(map: ReadonlyMap<Id, V>): ReadonlyMap<Id, V> {
  return new Map([...map].sort(([a], [b]) => (a < b ? -1 : 1)));
}
