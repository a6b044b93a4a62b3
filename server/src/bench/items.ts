import type { Id, Place, Step } from '../text/procedure.ts';
import type { Watcher } from './explore.ts';
import { hardwareAfter, hardwareAtStart, hardwareKey, placeKey } from './hardware.ts';
import type { Hardware } from './hardware.ts';

/** Whether a source is connected after a step. */
export function connectedAfter(connected: boolean, step: Step, source: Id): boolean {
  if ((step.verb !== 'disconnect' && step.verb !== 'reconnect') || step.source !== source) return connected;
  return step.verb === 'reconnect';
}

/** Where a load sits after a step; null: it is not fitted. */
export function placeAfter(at: Place | null, step: Step, load: Id): Place | null {
  switch (step.verb) {
    case 'fit':
      return step.load === load ? step.at : at;
    case 'move':
      return step.load === load ? step.to : at;
    case 'remove':
      return step.load === load ? null : at;
    default:
      return at;
  }
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

/** The automaton of one connector, without the loads on it. */
export function connectorItem(connector: Id): Watcher<Hardware> {
  const cone = { connectors: new Set([connector]) };
  return {
    watches: connector,
    start: hardwareAtStart,
    key: (hardware) => hardwareKey({ ...hardware, loads: new Map() }),
    step: (hardware, step) => hardwareAfter(hardware, step, cone),
  };
}
