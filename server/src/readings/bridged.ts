import { stateOf } from '../bench/hardware.ts';
import type { Hardware } from '../bench/hardware.ts';
import { networkWindow } from '../circuit/circuit.ts';
import type { Element, PartModel } from '../circuit/circuit.ts';
import type { Id, Place, Procedure, ShortingBar } from '../model/procedure.ts';
import { conditionsOf } from './conditions.ts';
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

/** Nominal ohms of the load alone and of load and bar together; null where one of them could not be read. */
export function nominally(
  procedure: Procedure,
  { load, bar }: Bridged,
): { readonly alone: number; readonly together: number } | null {
  const resistance = procedure.loads.get(load)?.resistance ?? null;
  if (resistance === null || bar.resistance === null) return null;
  const ranges = conditionsOf(procedure);
  const ohms = (...parts: readonly PartModel[]): number => {
    const across = parts.map((part): Element => ({ id: part.kind, between: ['1', '2'], part }));
    const { value } = networkWindow(across, '1', '2', ranges);
    return value === 'open' ? Infinity : value.nominal;
  };
  return {
    alone: ohms(resistance),
    together: ohms(resistance, { kind: 'stated', resistance: bar.resistance }),
  };
}
