/**
 * A decimal number: coefficient × 10^exponent. Quantities are calculated in it while they are read and printed, so that
 * `2.2 kΩ ± 1 %` is 2178 to 2222 to the nearest double, whatever binary fractions lie between.
 */
export interface Decimal {
  readonly coefficient: bigint;
  readonly exponent: number;
}

/** Reads digits with an optional point and exponent, as JavaScript writes numbers. Undefined for anything else. */
export function decimalFromText(text: string): Decimal | undefined {
  const match = /^([+-]?)(\d+)(?:\.(\d*))?(?:[eE]([+-]?\d+))?$/.exec(text);
  if (match === null) return undefined;
  const [, sign = '', whole = '', fraction = '', exponent = '0'] = match;
  const magnitude = BigInt(whole + fraction);
  if (magnitude === 0n) return { coefficient: 0n, exponent: 0 };
  return { coefficient: sign === '-' ? -magnitude : magnitude, exponent: Number(exponent) - fraction.length };
}

/** The shortest decimal that reads back as this number. The number must be finite. */
export function decimalFromNumber(value: number): Decimal {
  return decimalFromText(String(value)) ?? { coefficient: 0n, exponent: 0 };
}

/** The nearest double. */
export function toNumber(value: Decimal): number {
  return Number(`${value.coefficient}e${value.exponent}`);
}

export function shift(value: Decimal, places: number): Decimal {
  return { coefficient: value.coefficient, exponent: value.exponent + places };
}

export function add(left: Decimal, right: Decimal): Decimal {
  const exponent = Math.min(left.exponent, right.exponent);
  return { coefficient: aligned(left, exponent) + aligned(right, exponent), exponent };
}

export function subtract(left: Decimal, right: Decimal): Decimal {
  return add(left, { coefficient: -right.coefficient, exponent: right.exponent });
}

export function multiply(left: Decimal, right: Decimal): Decimal {
  return { coefficient: left.coefficient * right.coefficient, exponent: left.exponent + right.exponent };
}

/** The greatest whole number of times that right, above zero, goes into left. Exact. */
export function wholeTimes(left: Decimal, right: Decimal): bigint {
  const exponent = Math.min(left.exponent, right.exponent);
  const over = aligned(left, exponent);
  const under = aligned(right, exponent);
  const towardsZero = over / under;
  return over < 0n && towardsZero * under !== over ? towardsZero - 1n : towardsZero;
}

export function midpoint(left: Decimal, right: Decimal): Decimal {
  return multiply(add(left, right), { coefficient: 5n, exponent: -1 });
}

/** Negative, zero or positive, as left is less than, equal to or greater than right. */
export function compare(left: Decimal, right: Decimal): -1 | 0 | 1 {
  const difference = subtract(left, right).coefficient;
  return difference < 0n ? -1 : difference > 0n ? 1 : 0;
}

/** How many digits stand behind the point when nothing is cut off. */
export function decimalPlaces(value: Decimal): number {
  let { coefficient, exponent } = value;
  if (coefficient === 0n) return 0;
  while (exponent < 0 && coefficient % 10n === 0n) {
    coefficient /= 10n;
    exponent += 1;
  }
  return Math.max(0, -exponent);
}

/** Written out without an exponent and without loss, with at least `places` digits behind the point. */
export function plainText(value: Decimal, places = 0): string {
  const shown = Math.max(places, decimalPlaces(value));
  const scaled = value.exponent + shown;
  const magnitude = value.coefficient < 0n ? -value.coefficient : value.coefficient;
  const digits = (scaled >= 0 ? magnitude * 10n ** BigInt(scaled) : magnitude / 10n ** BigInt(-scaled))
    .toString()
    .padStart(shown + 1, '0');
  const whole = digits.slice(0, digits.length - shown);
  const sign = value.coefficient < 0n ? '-' : '';
  return shown === 0 ? sign + whole : `${sign}${whole}.${digits.slice(-shown)}`;
}

function aligned(value: Decimal, exponent: number): bigint {
  return value.coefficient * 10n ** BigInt(value.exponent - exponent);
}
