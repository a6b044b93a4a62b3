import type { Id, Place, Step } from '../model/procedure.ts';
import { changesTo } from './changes.ts';
import type { Circuits } from './circuits.ts';
import type { Watcher } from '../paths/explore.ts';
import { hardwareAfter, hardwareAtStart, hardwareKey, placeKey } from './hardware.ts';
import type { Hardware } from './hardware.ts';
import { powerAfter, powerAtStart, powerKey } from './power.ts';
import type { Power } from './power.ts';

/** Whether a source is connected after a step. */
export function connectedAfter(connected: boolean, step: Step, source: Id): boolean {
  return changesTo('source', step).findLast(({ id }) => id === source)?.isConnected ?? connected;
}

/** Where a load sits after a step; null: it is not fitted. */
export function placeAfter(at: Place | null, step: Step, load: Id): Place | null {
  const change = changesTo('load', step).findLast(({ id }) => id === load);
  return change === undefined ? at : change.at;
}

/** The automaton of one source: connected or not. */
export function sourceItem(source: Id): Watcher<boolean> {
  return {
    watches: `whether ${source} is connected`,
    start: true,
    key: String,
    step: (connected, step) => connectedAfter(connected, step, source),
  };
}

/** The automaton of one load: where it sits. */
export function loadItem(load: Id): Watcher<Place | null> {
  return {
    watches: `the place of ${load}`,
    start: null,
    key: (at) => (at === null ? '' : placeKey(at)),
    step: (at, step) => placeAfter(at, step, load),
  };
}

/** The automaton of one connector and the loads on it. */
export function connectorWithLoads(connector: Id): Watcher<Hardware> {
  const cone = { connectors: new Set([connector]) };
  return {
    watches: `${connector} and the loads on it`,
    start: hardwareAtStart,
    key: hardwareKey,
    step: (hardware, step) => hardwareAfter(hardware, step, cone),
  };
}

/** A connector, with the power of all that it opens. */
export interface PoweredConnector {
  readonly power: Power;
  readonly hardware: Hardware;
}

/** The automaton of one connector, without the loads on it, and the power of what it opens. */
export function connectorItem({ hazards }: Circuits, connector: Id): Watcher<PoweredConnector> {
  const opened = hazards.filter(({ connectors }) => connectors.includes(connector));
  const sources = [...new Set(opened.flatMap((hazard) => hazard.sources))];
  const cone = { connectors: new Set([connector]) };
  return {
    watches: `${connector} and the power of its circuits`,
    start: { power: powerAtStart, hardware: hardwareAtStart },
    key: ({ power, hardware }) => `${powerKey(power)}/${hardwareKey({ ...hardware, loads: new Map() })}`,
    step: (state, step) => {
      const power = powerAfter(state.power, step, sources);
      const hardware = hardwareAfter(state.hardware, step, cone);
      return power === state.power && hardware === state.hardware ? state : { power, hardware };
    },
  };
}

/** Where a load sits (null: it is not fitted), with the power of all that can be live. */
export interface PoweredLoad {
  readonly power: Power;
  readonly at: Place | null;
}

/** The automaton of one load and the power of the circuits. */
export function poweredLoadItem({ hazards }: Circuits, load: Id): Watcher<PoweredLoad> {
  const sources = [...new Set(hazards.flatMap((hazard) => hazard.sources))];
  return {
    watches: `the place of ${load} and the power of the circuits`,
    start: { power: powerAtStart, at: null },
    key: ({ power, at }) => `${powerKey(power)}/${at === null ? '' : placeKey(at)}`,
    step: (state, step) => {
      const power = powerAfter(state.power, step, sources);
      const at = placeAfter(state.at, step, load);
      return power === state.power && at === state.at ? state : { power, at };
    },
  };
}
