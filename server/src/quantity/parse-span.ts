import type { Cursor, Written } from './amount.ts';
import { begin, expectEnd, expectNotNegative, takeSign, takeWritten, toAmount } from './amount.ts';
import type { Decimal } from './decimal.ts';
import { add, compare, midpoint, multiply, shift, subtract, toNumber } from './decimal.ts';
import type { Dimension } from './dimensions.ts';
import { describeQuantity } from './dimensions.ts';
import type { Parsed } from './parsed.ts';
import { failed, parsed } from './parsed.ts';
import type { Stretch } from './scan.ts';
import type { Span } from './span.ts';

/**
 * Reads a value with its spread: `2.0 Ω`, `2.0 Ω ± 0.3 Ω`, `2.2 kΩ ± 1 %` (of the nominal), `1.7..2.3 Ω` (the nominal is
 * the midpoint), `1.7..2.0..2.3 Ω`. The result is in the base unit of the dimension. `signed`: it may lie below zero.
 */
export function parseSpan(text: string, dimension: Dimension, signed = false): Parsed<Span> {
  const begun = begin(text, dimension, describeQuantity('ranged', dimension), signed);
  if (!begun.ok) return begun;
  const cursor = begun.value;
  const first = takeWritten(cursor);
  if (!first.ok) return first;
  const plusMinus = takeSign(cursor, '±');
  if (plusMinus !== undefined) return withTolerance(first.value, plusMinus, cursor);
  return asRange(first.value, cursor);
}

/** Reads one value without a spread, in the base unit of the dimension. */
export function parseExact(text: string, dimension: Dimension): Parsed<number> {
  const begun = begin(text, dimension, describeQuantity('exact', dimension));
  if (!begun.ok) return begun;
  const cursor = begun.value;
  const written = takeWritten(cursor);
  if (!written.ok) return written;
  const left = expectEnd(cursor);
  if (left !== undefined) return left;
  const amount = toAmount(written.value, cursor);
  if (!amount.ok) return amount;
  return expectNotNegative(amount.value.value, written.value, cursor) ?? parsed(toNumber(amount.value.value));
}

function withTolerance(nominal: Written, plusMinus: Stretch, cursor: Cursor): Parsed<Span> {
  const tolerance = takeWritten(cursor);
  if (!tolerance.ok) return tolerance;
  const left = expectEnd(cursor);
  if (left !== undefined) return left;
  // Of a place the percent are those of the track.
  const percent = cursor.dimension === 'place' ? undefined : asPercentage(tolerance.value);
  if (percent === undefined) {
    const width = toAmount(tolerance.value, cursor);
    if (!width.ok) return width;
    const middle = toAmount(nominal, cursor, width.value.unit);
    if (!middle.ok) return middle;
    return around(nominal, middle.value.value, tolerance.value, width.value.value, cursor);
  }
  const middle = toAmount(nominal, cursor);
  if (!middle.ok) return middle;
  if (cursor.dimension === 'temperature') {
    return failed(`A temperature takes its tolerance in °C, not in percent; expected ${cursor.expected}.`, {
      from: plusMinus.from,
      to: tolerance.value.to,
    });
  }
  const width = multiply(magnitude(middle.value.value), shift(percent, -2));
  return around(nominal, middle.value.value, tolerance.value, width, cursor);
}

function around(
  nominalAt: Stretch,
  nominal: Decimal,
  toleranceAt: Written,
  width: Decimal,
  cursor: Cursor,
): Parsed<Span> {
  const negative = expectNotNegative(nominal, nominalAt, cursor);
  if (negative !== undefined) return negative;
  const toleranceBelowZero = toleranceAt.terms.some(({ number }) => number.value.coefficient < 0n);
  if (toleranceBelowZero) return failed('A tolerance is never negative: ± has both signs.', toleranceAt);
  const least = subtract(nominal, width);
  if (expectNotNegative(least, toleranceAt, cursor) !== undefined) {
    return failed(
      `With this tolerance the value would reach below ${cursor.dimension === 'temperature' ? '-273.15 °C' : 'zero'}.`,
      toleranceAt,
    );
  }
  return parsed({ least: toNumber(least), nominal: toNumber(nominal), most: toNumber(add(nominal, width)) });
}

function magnitude(value: Decimal): Decimal {
  return value.coefficient < 0n ? { ...value, coefficient: -value.coefficient } : value;
}

function asPercentage({ terms }: Written): Decimal | undefined {
  const term = terms[0];
  return term?.word?.text === '%' ? term.number.value : undefined;
}

function asRange(first: Written, cursor: Cursor): Parsed<Span> {
  const written = [first];
  while (written.length < 3 && takeSign(cursor, '..') !== undefined) {
    const following = takeWritten(cursor);
    if (!following.ok) return following;
    written.push(following.value);
  }
  const left = expectEnd(cursor);
  if (left !== undefined) return left;
  const values = toValues(written, cursor);
  if (!values.ok) return values;
  for (const [index, value] of values.value.entries()) {
    const at = written[index] ?? first;
    const negative = expectNotNegative(value, at, cursor);
    if (negative !== undefined) return negative;
    const before = values.value[index - 1];
    if (before !== undefined && compare(before, value) > 0) {
      const stretch = { from: written[index - 1]?.from ?? at.from, to: at.to };
      return failed('This range runs backwards: write the least value first.', stretch);
    }
  }
  return spanOf(values.value);
}

/** Units are handed from right to left: the unit may stand once, behind the last number. */
function toValues(written: readonly Written[], cursor: Cursor): Parsed<readonly Decimal[]> {
  const values: Decimal[] = [];
  let unit;
  for (const each of [...written].reverse()) {
    const amount = toAmount(each, cursor, unit);
    if (!amount.ok) return amount;
    unit = amount.value.unit;
    values.unshift(amount.value.value);
  }
  return parsed(values);
}

function spanOf(values: readonly Decimal[]): Parsed<Span> {
  const [first, second, third] = values.map(toNumber);
  if (first === undefined) return failed('Nothing is written here.', { from: 0, to: 0 });
  if (second === undefined) return parsed({ least: first, nominal: first, most: first });
  if (third !== undefined) return parsed({ least: first, nominal: second, most: third });
  const [least, most] = values;
  const nominal = least === undefined || most === undefined ? first : toNumber(midpoint(least, most));
  return parsed({ least: first, nominal, most: second });
}
