import { hardwareKey } from '../bench/hardware.ts';
import type { Hardware } from '../bench/hardware.ts';
import { indicate, networkWindow } from '../circuit/circuit.ts';
import type { ConditionRanges, Indication, Instrument } from '../circuit/circuit.ts';
import type { Span } from '../quantity/span.ts';
import type { Loop, Monitor, Procedure } from '../text/procedure.ts';
import { conditionsOf } from './conditions.ts';
import { loopNetwork } from './loop-network.ts';

/** What a loop without a fault reads on a bench. */
export interface Good {
  /** Ohms between the terminals of the monitor; `unknown` where a value in the loop could not be read. */
  readonly circuit: Span | 'open' | 'unknown';
  /** What the monitor can show, before its display step; null: unknown. */
  readonly indication: Indication | null;
}

export type GoodReadings = (loop: Loop, hardware: Hardware) => Good;

const unknown: Good = { circuit: 'unknown', indication: null };

/** Good readings of a procedure's loops, each computed once for a bench. */
export function goodReadings(procedure: Procedure): GoodReadings {
  const conditions = conditionsOf(procedure);
  const known = new Map<string, Good>();
  return (loop, hardware) => {
    const key = `${loop.id}|${hardwareKey(hardware)}`;
    const value = known.get(key) ?? goodReading(procedure, loop, hardware, conditions);
    known.set(key, value);
    return value;
  };
}

/** The same under other conditions than those that the procedure holds for. */
export function goodReading(
  procedure: Procedure,
  loop: Loop,
  hardware: Hardware,
  ranges: ConditionRanges,
): Good {
  const compiled = loopNetwork(procedure, loop, hardware);
  if (compiled === null) return unknown;
  const { network, probes } = compiled;
  const circuit = networkWindow(network, probes[0], probes[1], ranges);
  const monitor = loop.monitor === null ? undefined : procedure.monitors.get(loop.monitor);
  const instrument = monitor === undefined ? null : instrumentOf(monitor);
  return { circuit, indication: instrument === null ? null : indicate(circuit, instrument) };
}

export function instrumentOf(monitor: Monitor): Instrument | null {
  const { range, accuracy, resolution } = monitor;
  return range === null || accuracy === null || resolution === null ? null : { range, accuracy, resolution };
}
