import { guardedVoltage, guardedWindow } from '../circuit/circuit.ts';
import { formatWindow, roundInward } from '../quantity/quantity.ts';
import type { Span } from '../quantity/quantity.ts';
import type { Quantity } from '../model/procedure.ts';
import { quantityFacts } from '../model/quantity-kinds.ts';
import { instrumentOf, voltmeterOf } from './instruments.ts';
import type { GoodOnBench, Reading } from './reading.ts';

/**
 * Readings in ohms or volts, limits included, that prove the circuit itself good; a side that is infinite is not limited.
 * `empty`: the instrument has none such.
 */
export type Guarded = { readonly least: number; readonly most: number } | 'empty';

/**
 * The numbers on the display that prove the circuit itself good on a bench: within the author's window, else within what
 * a sound circuit may have there, whatever the error of the instrument. It is reported, and never decides. null: there
 * is none to be had, where open is good, where what is good depends on a temperature that is entered, of a voltage that
 * says nothing of the circuit, and within an outer bound, unless even all of that has none.
 */
export function guardedOf(reading: Reading, bench: GoodOnBench): Guarded | null {
  const limits = reading.byEntry.length > 0 ? null : limitsOf(reading, bench);
  if (limits === null || reading.instrument === null) return null;
  const guarded = guardedBy(reading.instrument, limits);
  const { accepted } = reading;
  const isOuter = !bench.exact && accepted !== null && accepted !== 'open' && accepted.from === 'computed';
  return isOuter && guarded !== 'empty' ? null : guarded;
}

function guardedBy(instrument: NonNullable<Reading['instrument']>, limits: Span): Guarded | null {
  const meter = voltmeterOf(instrument);
  if (meter !== null) return onDisplay(guardedVoltage(limits, meter), meter);
  const ohmmeter = instrumentOf(instrument, limits.nominal);
  return ohmmeter === null ? null : onDisplay(guardedWindow(limits, ohmmeter), ohmmeter);
}

function onDisplay(
  window: { readonly least: number; readonly most: number } | null,
  { resolution }: { readonly resolution: number },
): Guarded {
  return window === null ? 'empty' : (roundInward(window, resolution) ?? 'empty');
}

/** A resistance is never below zero, so zero is as good as no limit; a voltage may be. */
const leastOf: Readonly<Record<Quantity, number>> = {
  resistance: 0,
  insulation: 0,
  voltage: -Infinity,
  current: -Infinity,
};

function limitsOf({ accepted, quantity }: Reading, { circuit, floating }: GoodOnBench): Span | null {
  if (circuit === 'open' || circuit === 'unknown' || accepted === null || accepted === 'open') return null;
  if (floating) return null;
  if (accepted.from === 'computed')
    return quantityFacts[quantity].byOwnCurrent || !isZero(circuit) ? circuit : null;
  const least = accepted.least ?? leastOf[quantity];
  const most = accepted.most ?? Infinity;
  return { least, nominal: circuit.nominal, most };
}

/** Of a voltage: no source drives anything there, and a broken circuit reads the same as a sound one. */
function isZero({ least, most }: Span): boolean {
  return least === 0 && most === 0;
}

/** `a reading of 1.96..2.42 Ω shows that the circuit is good …`, for the nearest bench of a reading; null: nothing is to be said. */
export function guardedInWords(reading: Reading): string | null {
  const [nearest] = reading.good;
  const guarded = nearest === undefined ? null : guardedOf(reading, nearest);
  if (guarded === null) return null;
  if (guarded === 'empty')
    return 'no reading shows that the circuit is good: the error of the instrument is too large';
  const printed = formatWindow(
    guarded,
    reading.instrument?.resolution ?? 0,
    quantityFacts[reading.quantity].dimension,
  );
  return `a reading of ${printed} shows that the circuit is good, even at the largest error of the instrument`;
}
