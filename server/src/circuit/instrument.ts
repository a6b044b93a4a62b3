import type { Accuracy, Span } from '../quantity/quantity.ts';

/** An instrument that reads resistance. All in ohms; the digits of the accuracy count steps of the resolution. */
export interface Instrument {
  readonly range: Span;
  readonly accuracy: Accuracy;
  readonly resolution: number;
  /** Ohms, in series with the circuit. Absent: there are none, or they are zeroed. */
  readonly leads?: Span;
}

/** What an instrument can show for a circuit, after its error and range and before its display step. */
export interface Indication {
  /** Ohms. null: it can show no number. */
  readonly value: Span | null;
  readonly canBeOpen: boolean;
  /** Of an instrument with several ranges each end by the display step of the range in which it is shown. */
  readonly displayed?: { readonly least: number; readonly most: number } | null;
}

/** The least and the most that the error makes of a number of ohms. */
export function withError(
  ohms: number,
  { accuracy, resolution }: Instrument,
): { readonly least: number; readonly most: number } {
  const constant = accuracy.constant + accuracy.digits * resolution;
  return {
    least: ohms * (1 - accuracy.fraction) - constant,
    most: ohms * (1 + accuracy.fraction) + constant,
  };
}

/** What the display can say of a number of ohms inside its range: never below zero or the ends of the range. */
export function withinRange(ohms: number, { range }: Instrument): number {
  return Math.min(Math.max(ohms, range.least, 0), range.most);
}

/** What is between the tips of the leads and the leads themselves. */
export function withLeads(circuit: Span, { leads }: Instrument): Span {
  if (leads === undefined) return circuit;
  return {
    least: circuit.least + leads.least,
    nominal: circuit.nominal + leads.nominal,
    most: circuit.most + leads.most,
  };
}

/** A value that passes the end of the range by less than this part of a display step has reached it, not passed it. */
const forgiven = 1e-9;

export function passesEnd(ohms: number, { range, resolution }: Instrument): boolean {
  return ohms > range.most + forgiven * resolution;
}

/**
 * Leads, then error, then range. For R ohms, circuit and leads, the instrument shows from R(1 - p) - c to R(1 + p) + c, p
 * the percent of the reading and c the constant and the digits. Below zero, or below the least of its range, it shows
 * that least value; beyond its range it shows open. The nominal value is R itself, kept inside the range.
 */
export function indicate(circuit: Span | 'open', instrument: Instrument): Indication {
  if (circuit === 'open') return { value: null, canBeOpen: true };
  const whole = withLeads(circuit, instrument);
  const { least } = withError(whole.least, instrument);
  const { most } = withError(whole.most, instrument);
  if (passesEnd(least, instrument)) return { value: null, canBeOpen: true };
  const show = (ohms: number): number => withinRange(ohms, instrument);
  return {
    value: { least: show(least), nominal: show(whole.nominal), most: show(most) },
    canBeOpen: passesEnd(most, instrument),
  };
}
