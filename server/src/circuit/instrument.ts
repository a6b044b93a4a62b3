import type { Accuracy, Span } from '../quantity/quantity.ts';

/** An instrument that reads resistance. All in ohms; the digits of the accuracy count steps of the resolution. */
export interface Instrument {
  readonly range: Span;
  readonly accuracy: Accuracy;
  readonly resolution: number;
}

/** What an instrument can show for a circuit, after its error and range and before its display step. */
export interface Indication {
  /** Ohms. null: it can show no number. */
  readonly value: Span | null;
  readonly canBeOpen: boolean;
}

/** A value that passes the end of the range by less than this part of a display step has reached it, not passed it. */
const forgiven = 1e-9;

/**
 * Error first, then range. For a circuit of R ohms the instrument shows from R(1 - p) - c to R(1 + p) + c, p the percent of
 * the reading and c the constant and the digits. Below zero, or below the least of its range, it shows that least value;
 * beyond its range it shows open. The nominal value is R itself, kept inside the range.
 */
export function indicate(circuit: Span | 'open', { range, accuracy, resolution }: Instrument): Indication {
  if (circuit === 'open') return { value: null, canBeOpen: true };
  const constant = accuracy.constant + accuracy.digits * resolution;
  const least = circuit.least * (1 - accuracy.fraction) - constant;
  const most = circuit.most * (1 + accuracy.fraction) + constant;
  const end = range.most + forgiven * resolution;
  if (least > end) return { value: null, canBeOpen: true };
  const show = (ohms: number): number => Math.min(Math.max(ohms, range.least, 0), range.most);
  return {
    value: { least: show(least), nominal: show(circuit.nominal), most: show(most) },
    canBeOpen: most > end,
  };
}
