import type { Span } from '../quantity/quantity.ts';
import { withError, withLeads } from './instrument.ts';
import type { Instrument } from './instrument.ts';
import { errorOfVoltage } from './instrument-voltage.ts';
import type { Voltmeter } from './instrument-voltage.ts';

/**
 * The numbers, in ohms and before the display step, that prove the circuit itself to lie between its least and its most:
 * no error of the instrument can make one of them out of a circuit outside. null: it can of every number, the instrument
 * is too coarse for these limits.
 *
 * It is the guard band of JCGM 106 with the whole error limit as its width. A circuit that may be 0 Ω has no least
 * value to guard, one that may be open no greatest.
 */
export function guardedWindow(
  circuit: Span,
  instrument: Instrument,
): { readonly least: number; readonly most: number } | null {
  const { range, resolution } = instrument;
  const whole = guardedLeads(circuit, instrument);
  const least = circuit.least > 0 ? withError(whole.least, instrument).most : 0;
  const most = withError(whole.most, instrument).least;
  // The least of the range is shown for everything below it, so it proves nothing; one step above it is a number of its own.
  const firstProving = least > 0 && least <= range.least ? range.least + resolution : range.least;
  const inRange = { least: Math.max(least, firstProving), most: Math.min(most, range.most) };
  return inRange.least > inRange.most ? null : inRange;
}

/** Leads count at their most where the circuit is at its least, and the other way round: they are unknown on each reading. */
function guardedLeads(circuit: Span, instrument: Instrument): Span {
  const { leads } = instrument;
  if (leads === undefined) return circuit;
  return withLeads(circuit, {
    ...instrument,
    leads: { least: leads.most, nominal: leads.nominal, most: leads.least },
  });
}

/**
 * The same in volts: the numbers that prove the voltage between the probes, with the meter there, to lie within limits.
 * A limit that is infinite is none, and stays so: unlike a resistance a voltage has no least value of its own.
 */
export function guardedVoltage(
  limits: { readonly least: number; readonly most: number },
  meter: Voltmeter,
): { readonly least: number; readonly most: number } | null {
  const end = meter.range.most;
  const least = limits.least === -Infinity ? -Infinity : limits.least + errorOfVoltage(limits.least, meter);
  const most = limits.most === Infinity ? Infinity : limits.most - errorOfVoltage(limits.most, meter);
  // Beyond its range on either side the meter shows no number.
  const inRange = {
    least: least === -Infinity ? least : Math.max(least, -end),
    most: most === Infinity ? most : Math.min(most, end),
  };
  return Math.max(inRange.least, -end) > Math.min(inRange.most, end) ? null : inRange;
}
