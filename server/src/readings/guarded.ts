import { guardedWindow } from '../circuit/circuit.ts';
import { formatWindow, roundInward } from '../quantity/quantity.ts';
import type { Span } from '../quantity/quantity.ts';
import { instrumentOf } from './instruments.ts';
import type { GoodOnBench, Reading } from './reading.ts';

/** Readings in ohms, limits included, that prove the circuit itself good; `empty`: the instrument has none such. */
export type Guarded = { readonly least: number; readonly most: number } | 'empty';

/**
 * The numbers on the display that prove the circuit itself good on a bench: within the author's window, else within what
 * a sound circuit may have there, whatever the error of the instrument. It is reported, and never decides. null: there
 * is none to be had, where open is good, or where what is good depends on a temperature that is entered.
 */
export function guardedOf(reading: Reading, bench: GoodOnBench): Guarded | null {
  const limits = reading.byEntry.length > 0 ? null : limitsOf(reading, bench);
  if (limits === null || reading.instrument === null) return null;
  const instrument = instrumentOf(reading.instrument, limits.nominal);
  if (instrument === null) return null;
  const window = guardedWindow(limits, instrument);
  return window === null ? 'empty' : (roundInward(window, instrument.resolution) ?? 'empty');
}

function limitsOf({ accepted }: Reading, { circuit }: GoodOnBench): Span | null {
  if (circuit === 'open' || circuit === 'unknown' || accepted === null || accepted === 'open') return null;
  if (accepted.from === 'computed') return circuit;
  const least = accepted.least ?? 0;
  const most = accepted.most ?? Infinity;
  return { least, nominal: circuit.nominal, most };
}

/** `1.96..2.42 Ω proves the circuit itself good`, for the nearest bench of a reading; null: nothing is to be said. */
export function guardedInWords(reading: Reading): string | null {
  const [nearest] = reading.good;
  const guarded = nearest === undefined ? null : guardedOf(reading, nearest);
  if (guarded === null) return null;
  if (guarded === 'empty') return 'no reading proves the circuit itself good: the instrument is too coarse';
  const printed = formatWindow(guarded, reading.instrument?.resolution ?? 0, reading.quantity);
  return `${printed} proves the circuit itself good`;
}
