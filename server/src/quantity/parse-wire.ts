import type { Cursor } from './amount.ts';
import { begin, expectEnd, peek, takeWritten, toAmount } from './amount.ts';
import { toNumber } from './decimal.ts';
import type { Dimension } from './dimensions.ts';
import { ratingDescription, wireDescription } from './dimensions.ts';
import type { Parsed } from './parsed.ts';
import { failed, parsed } from './parsed.ts';

/** A wire size: its cross-section in mm², or its number in the American gauge. */
export type Wire = { readonly squareMillimetres: number } | { readonly awg: number };

/** The gauge numbers that ASTM B258 lists without noughts before them. */
const thinnestGauge = 56;

/** Reads a wire size: `0.5 mm²`, `0.5 mm2`, `AWG 20`. */
export function parseWire(text: string): Parsed<Wire> {
  const begun = begin(text, 'wire-size', wireDescription);
  if (!begun.ok) return begun;
  const cursor = begun.value;
  const first = peek(cursor);
  if (first?.kind === 'word' && first.text.toUpperCase() === 'AWG') {
    if (first.text !== 'AWG') return failed('Write AWG in capital letters.', first);
    cursor.next += 1;
    return readGauge(cursor);
  }
  const written = takeWritten(cursor);
  if (!written.ok) return written;
  const { number, word } = written.value.terms[0] ?? {};
  if (number !== undefined && word?.text.toUpperCase() === 'AWG') {
    return failed(`Write AWG ${number.text}: the number stands behind AWG.`, written.value);
  }
  const left = expectEnd(cursor);
  if (left !== undefined) return left;
  const amount = toAmount(written.value, cursor);
  if (!amount.ok) return amount;
  const squareMillimetres = toNumber(amount.value.value);
  if (squareMillimetres <= 0) return failed('A wire has a cross-section above zero.', written.value);
  return parsed({ squareMillimetres });
}

/** Reads a rating: `13.5 V 5 W`. Both values are above zero. */
export function parseRating(text: string): Parsed<{ readonly volts: number; readonly watts: number }> {
  const begun = begin(text, 'voltage', ratingDescription);
  if (!begun.ok) return begun;
  const cursor = begun.value;
  const volts = readAboveZero(cursor, 'voltage');
  if (!volts.ok) return volts;
  const watts = readAboveZero(cursor, 'power');
  if (!watts.ok) return watts;
  return expectEnd(cursor) ?? parsed({ volts: volts.value, watts: watts.value });
}

function readAboveZero(cursor: Cursor, dimension: Dimension): Parsed<number> {
  const written = takeWritten(cursor);
  if (!written.ok) return written;
  const amount = toAmount(written.value, { ...cursor, dimension });
  if (!amount.ok) return amount;
  const value = toNumber(amount.value.value);
  return value > 0 ? parsed(value) : failed('A rating is above zero.', written.value);
}

function readGauge(cursor: Cursor): Parsed<Wire> {
  const written = takeWritten(cursor);
  if (!written.ok) return written;
  const { number, word } = written.value.terms[0] ?? {};
  if (word !== null && word !== undefined) return failed('A gauge number has no unit.', word);
  const left = expectEnd(cursor);
  if (left !== undefined) return left;
  const awg = number === undefined ? Number.NaN : toNumber(number.value);
  if (!Number.isInteger(awg) || awg < 0 || awg > thinnestGauge) {
    return failed(`AWG numbers are whole, from 0 to ${thinnestGauge}.`, written.value);
  }
  return parsed({ awg });
}
