import type { Accuracy, Span } from '../quantity/quantity.ts';
import type { Indication } from './instrument.ts';
import type { Element } from './network.ts';

/** An instrument that reads voltage. Volts; the digits of the accuracy count steps of the resolution. */
export interface Voltmeter {
  /** The same on either side of zero. */
  readonly range: Span;
  readonly accuracy: Accuracy;
  readonly resolution: number;
  /** Ohms between its terminals. */
  readonly input: Span;
}

/** What stands between its leads while it reads: a part like any other, so that a weak source is read with its load. */
export function inputOf({ input }: Voltmeter, from: string, to: string): Element {
  return { id: 'input of the meter', between: [from, to], part: { kind: 'stated', resistance: input } };
}

/**
 * Error first, then range: V volts are shown from V - (p|V| + c) to V + (p|V| + c). Beyond the range, either side, no
 * number is shown; that is told as open, as of a resistance.
 */
export function indicateVoltage(volts: Span, { range, accuracy, resolution }: Voltmeter): Indication {
  const error = (value: number): number =>
    accuracy.fraction * Math.abs(value) + accuracy.constant + accuracy.digits * resolution;
  const least = volts.least - error(volts.least);
  const most = volts.most + error(volts.most);
  const end = range.most * (1 + forgiven);
  if (least > end || most < -end) return { value: null, canBeOpen: true };
  const show = (value: number): number => Math.min(Math.max(value, -range.most), range.most);
  return {
    value: { least: show(least), nominal: show(volts.nominal), most: show(most) },
    canBeOpen: most > end || least < -end,
  };
}

/** Relative: a value that is this near to the end of the range has reached it, not passed it. */
const forgiven = 1e-12;
