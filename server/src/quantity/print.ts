import type { Decimal } from './decimal.ts';
import { compare, decimalFromNumber, midpoint, plainText, shift, toNumber } from './decimal.ts';
import type { Dimension } from './dimensions.ts';
import type { Wire } from './parse-wire.ts';
import type { Accuracy, Limit, Span } from './span.ts';
import type { Unit } from './units.ts';
import { printingUnits } from './units.ts';

/** Numbers that come out of a calculation are printed with this many significant digits. */
const significantDigits = 12;

/** One value for a sentence: `3 min`, `1 min 30 s`, `12.6 V`, `4.7 kΩ`, `40 mA`. To 12 significant digits. */
export function formatQuantity(value: number, dimension: Dimension): string {
  if (!Number.isFinite(value)) return value > 0 ? 'without limit' : 'unknown';
  const clean = Number(value.toPrecision(significantDigits));
  if (dimension === 'time' && clean >= 60) return formatDuration(clean);
  const unit = unitFor(clean, dimension);
  return `${plainText(inUnit(clean, unit))} ${unit.symbol}`;
}

/** A computed value with all of its significant digits, zeros too: `3.000 Ω`, `20.00 mV`; nothing at all is `0 V`. */
export function formatDigits(value: number, digits: number, dimension: Dimension): string {
  if (!Number.isFinite(value) || value === 0) return formatQuantity(value, dimension);
  const rounded = Number(value.toPrecision(digits));
  const unit = unitFor(rounded, dimension);
  const shown = inUnit(rounded, unit);
  const before = Math.floor(Math.log10(Math.abs(toNumber(shown)))) + 1;
  return `${plainText(shown, Math.max(0, digits - before))} ${unit.symbol}`;
}

/** A wait that somebody must keep, in seconds: rounded up to whole seconds, never down. `2 min 41 s`. */
export function formatWait(seconds: number): string {
  return formatQuantity(Math.ceil(seconds - 1e-9), 'time');
}

/** A value with its spread, as it can be written in a file: `2.0 Ω`, `1.7..2.3 Ω`, `1.7..1.9..2.3 Ω`. Without loss. */
export function formatSpan({ least, nominal, most }: Span, dimension: Dimension): string {
  if (!Number.isFinite(most)) return `above ${formatExactly(least, dimension)}`;
  if (least === most) return formatExactly(nominal, dimension);
  const centred = toNumber(midpoint(decimalFromNumber(least), decimalFromNumber(most))) === nominal;
  const values = centred ? [least, most] : [least, nominal, most];
  const unit = unitFor(Math.max(Math.abs(least), Math.abs(most)), dimension);
  return `${values.map((value) => plainText(inUnit(value, unit))).join('..')} ${unit.symbol}`;
}

/** `below 1 Ω`, `above 4.5 Ω`. Without loss. */
export function formatLimit(limit: Limit, dimension: Dimension): string {
  return 'below' in limit
    ? `below ${formatExactly(limit.below, dimension)}`
    : `above ${formatExactly(limit.above, dimension)}`;
}

/** `3 % + 0.1 Ω`, `0.8 % + 3 digits`. An accuracy of nothing is `0` of the base unit. */
export function formatAccuracy({ fraction, constant, digits }: Accuracy, dimension: Dimension): string {
  const terms: string[] = [];
  if (fraction !== 0) terms.push(`${plainText(shift(decimalFromNumber(fraction), 2))} %`);
  if (constant !== 0 || (fraction === 0 && digits === 0)) terms.push(formatExactly(constant, dimension));
  if (digits !== 0) terms.push(`${digits} ${digits === 1 ? 'digit' : 'digits'}`);
  return terms.join(' + ');
}

/** `0.5 mm²`, `AWG 20`. */
export function formatWire(wire: Wire): string {
  return 'awg' in wire ? `AWG ${wire.awg}` : formatExactly(wire.squareMillimetres, 'wire-size');
}

function formatExactly(value: number, dimension: Dimension): string {
  const unit = unitFor(value, dimension);
  return `${plainText(inUnit(value, unit))} ${unit.symbol}`;
}

function formatDuration(seconds: number): string {
  const whole = Math.floor(seconds / 60);
  const rest = decimalFromNumber(Number((seconds - whole * 60).toPrecision(significantDigits)));
  const parts = [
    ...(whole >= 60 ? [`${Math.floor(whole / 60)} h`] : []),
    ...(whole % 60 > 0 ? [`${whole % 60} min`] : []),
    ...(rest.coefficient > 0n ? [`${plainText(rest)} s`] : []),
  ];
  return parts.join(' ');
}

/** The unit in which a value of this size is said in the trade. */
export function unitFor(value: number, dimension: Dimension): Unit {
  const { ladder, base, baseFrom } = printingUnits(dimension);
  const magnitude = Math.abs(value);
  if (magnitude === 0 || (magnitude >= baseFrom && magnitude < 1)) return base;
  const exact = decimalFromNumber(magnitude);
  const fitting = ladder.filter(({ factor }) => compare(factor, exact) <= 0);
  return fitting.at(-1) ?? ladder[0] ?? base;
}

export function inUnit(value: number, unit: Unit): Decimal {
  return shift(decimalFromNumber(value), -unit.factor.exponent);
}
