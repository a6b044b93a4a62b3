import type { Accuracy, Span } from '../quantity/quantity.ts';
import type { Indication } from './instrument.ts';
import type { Element } from './network.ts';

/** An instrument that reads on either side of zero. Volts or amperes; the digits of the accuracy count steps of the resolution. */
export interface SignedMeter {
  /** The same on either side of zero. */
  readonly range: Span;
  readonly accuracy: Accuracy;
  readonly resolution: number;
}

/** An instrument that reads voltage. */
export interface Voltmeter extends SignedMeter {
  /** Ohms between its terminals. */
  readonly input: Span;
}

/** What stands between its leads while it reads: a part like any other, so that a weak source is read with its load. */
export function inputOf({ input }: Voltmeter, from: string, to: string): Element {
  return { id: 'input of the meter', between: [from, to], part: { kind: 'stated', resistance: input } };
}

/**
 * Error first, then range: V volts (or amperes) are shown from V - (p|V| + c) to V + (p|V| + c). Beyond the range, either side, no
 * number is shown; that is told as open, as of a resistance.
 */
export function indicateSigned(volts: Span, meter: SignedMeter): Indication {
  const { range } = meter;
  const least = volts.least - errorOfVoltage(volts.least, meter);
  const most = volts.most + errorOfVoltage(volts.most, meter);
  const end = range.most * (1 + forgiven);
  if (least > end || most < -end) return { value: null, canBeOpen: true };
  const show = (value: number): number => withinVoltageRange(value, meter);
  return {
    value: { least: show(least), nominal: show(volts.nominal), most: show(most) },
    canBeOpen: most > end || least < -end,
  };
}

/** The error limit at so many volts, in volts. */
export function errorOfVoltage(volts: number, { accuracy, resolution }: SignedMeter): number {
  return accuracy.fraction * Math.abs(volts) + accuracy.constant + accuracy.digits * resolution;
}

/** What the display can say of a number of volts inside its range. */
export function withinVoltageRange(volts: number, { range }: SignedMeter): number {
  return Math.min(Math.max(volts, -range.most), range.most);
}

/** Relative: a value that is this near to the end of the range has reached it, not passed it. */
const forgiven = 1e-12;
