import type { Instrument, Voltmeter } from '../circuit/circuit.ts';
import type { Span } from '../quantity/span.ts';
import type { Id, MeterRange, Monitor, Multimeter, Quantity } from '../text/procedure.ts';

/** The instrument of a reading, in the range in which it reads; null: not readable, or there is none. */
export interface ReadBy extends MeterRange {
  readonly id: Id;
  readonly quantity: Quantity;
  /** Ohms of both leads; null: there are none, or they are zeroed. */
  readonly leads: Span | null;
  /** Of a voltmeter, the ohms between its terminals. */
  readonly input: Span | null;
  /** A monitor that sees paths to ground or a supply below this many ohms. */
  readonly leakBelow: number | null;
}

export function readByMonitor({ id, range, accuracy, resolution, leakBelow }: Monitor): ReadBy {
  return { id, quantity: 'resistance', range, accuracy, resolution, leads: null, input: null, leakBelow };
}

/** null: it has no range for the quantity. */
export function readByMultimeter(meter: Multimeter, quantity: Quantity): ReadBy | null {
  const { id, resistance, voltage, zeroed } = meter;
  const leads = zeroed ? null : meter.leads;
  if (quantity === 'resistance')
    return resistance && { id, quantity, ...resistance, leads, input: null, leakBelow: null };
  return voltage && { id, quantity, ...voltage, leads: null, leakBelow: null };
}

/** What reads resistance; null: a value could not be read. */
export function instrumentOf({ quantity, range, accuracy, resolution, leads }: ReadBy): Instrument | null {
  if (quantity !== 'resistance' || range === null || accuracy === null || resolution === null) return null;
  return { range, accuracy, resolution, ...(leads === null ? {} : { leads }) };
}

/** What reads voltage; null: a value could not be read. */
export function voltmeterOf({ quantity, range, accuracy, resolution, input }: ReadBy): Voltmeter | null {
  if (quantity !== 'voltage' || range === null || accuracy === null) return null;
  return resolution === null || input === null ? null : { range, accuracy, resolution, input };
}
