import { stateOf } from '../bench/hardware.ts';
import type { Hardware } from '../bench/hardware.ts';
import { resistanceBetween } from '../circuit/circuit.ts';
import type { Id, Place, Procedure, ShortingBar } from '../text/procedure.ts';
import { closedBarAcross } from './loop-network.ts';

/** A load that lies in parallel with a closed shorting bar of its own connector. */
export interface Bridged {
  readonly load: Id;
  readonly place: Place;
  readonly bar: ShortingBar;
}

/** Bar and load lie in parallel on one side, and on both where the halves still touch. */
export function bridgedLoads(procedure: Procedure, hardware: Hardware): readonly Bridged[] {
  return [...hardware.loads].flatMap(([load, place]) => {
    const loop = place.loop === null ? undefined : procedure.loops.get(place.loop);
    const connector = procedure.connectors.get(place.connector);
    if (loop === undefined || connector === undefined) return [];
    const bar = closedBarAcross(procedure, connector, loop, hardware);
    if (bar === null) return [];
    const touch = place.side === bar.side || stateOf(hardware, connector.id) !== 'unplugged';
    return touch ? [{ load, place, bar }] : [];
  });
}

/** Ohms of load and bar together, all at nominal; null where one of them could not be read. */
export function nominalTogether(procedure: Procedure, { load, bar }: Bridged): number | null {
  const ohms = procedure.loads.get(load)?.resistance?.nominal;
  if (ohms === undefined || bar.resistance === null) return null;
  const pair = [ohms, bar.resistance.nominal].map((one) => ({ a: 0, b: 1, ohms: one }));
  return resistanceBetween(pair, 2, 0, 1);
}
