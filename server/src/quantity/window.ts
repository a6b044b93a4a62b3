import type { Decimal } from './decimal.ts';
import {
  add,
  decimalFromNumber,
  decimalPlaces,
  multiply,
  plainText,
  shift,
  toNumber,
  wholeTimes,
} from './decimal.ts';
import type { Dimension } from './dimensions.ts';
import { inUnit, unitFor } from './print.ts';
import type { Unit } from './units.ts';
import { printingUnits } from './units.ts';

/**
 * What a reading may show, limits included, in the base unit. null: no limit on that side. `open`: no number, the
 * circuit is open.
 */
export type Window = { readonly least: number | null; readonly most: number | null } | 'open';

/** A limit that lies on a display step but for this part of it stays on the step. */
const forgiven: Decimal = { coefficient: 1n, exponent: -9 };

/**
 * Widens a window to whole steps of the display: the least value down, the greatest up. Limits that miss a step by less
 * than 1e-9 of it stay on the step; the results are the nearest doubles to the decimals that the display shows.
 */
export function roundOutward(window: Window, resolution: number): Window {
  if (window === 'open') return window;
  const { least, most } = window;
  return {
    least: least === null ? null : roundDown(least, resolution),
    most: most === null ? null : roundUp(most, resolution),
  };
}

/**
 * Narrows an interval to whole steps of the display: the least value up, the greatest down, forgiving as much. null:
 * no step lies in it.
 */
export function roundInward(
  { least, most }: { readonly least: number; readonly most: number },
  resolution: number,
): { readonly least: number; readonly most: number } | null {
  const inner = { least: roundUp(least, resolution), most: roundDown(most, resolution) };
  return inner.least > inner.most ? null : inner;
}

/**
 * A window as it is printed and can be pasted: `1.96..3.63 Ω`, `below 1.00 Ω`, `above 9.32 Ω`, `open`. Decimals follow
 * the resolution; more are printed where a number has more, so that the text always reads back as the same numbers.
 */
export function formatWindow(window: Window, resolution: number, dimension: Dimension): string {
  if (window === 'open') return 'open';
  const least = finiteOrNone(window.least);
  const most = finiteOrNone(window.most);
  if (least === null && most === null) return 'any value';
  const unit = unitKeepingStep(Math.max(Math.abs(least ?? 0), Math.abs(most ?? 0)), resolution, dimension);
  const places = decimalPlaces(inUnit(resolution, unit));
  const text = (value: number): string => plainText(inUnit(value, unit), places);
  if (least === null) return `below ${text(most ?? 0)} ${unit.symbol}`;
  if (most === null) return `above ${text(least)} ${unit.symbol}`;
  return `${text(least)}..${text(most)} ${unit.symbol}`;
}

/** One number as a display with this step shows it, rounded to the nearest step: `3.10 Ω`. */
export function formatOnDisplay(value: number, resolution: number, dimension: Dimension): string {
  const step = decimalFromNumber(resolution);
  const half = multiply(step, { coefficient: 5n, exponent: -1 });
  const shown = resolution > 0 ? toNumber(stepAtOrBelow(add(decimalFromNumber(value), half), step)) : value;
  const unit = unitKeepingStep(Math.abs(shown), resolution, dimension);
  return `${plainText(inUnit(shown, unit), decimalPlaces(inUnit(resolution, unit)))} ${unit.symbol}`;
}

/** A smaller unit is taken only where the display step is a decimal of it, else the digits would promise more than it shows. */
function unitKeepingStep(greatest: number, resolution: number, dimension: Dimension): Unit {
  const wanted = unitFor(greatest, dimension);
  if (wanted.factor.exponent >= 0) return wanted;
  const allowed = printingUnits(dimension).ladder.filter(
    ({ factor }) =>
      factor.exponent >= 0 || toNumber(shift(decimalFromNumber(resolution), -factor.exponent)) <= 1,
  );
  return allowed.find(({ factor }) => factor.exponent >= wanted.factor.exponent) ?? wanted;
}

/** The greatest whole number of display steps that is no more than the value. In decimals: no quotient is rounded. */
function stepAtOrBelow(value: Decimal, step: Decimal): Decimal {
  const steps = wholeTimes(add(value, multiply(step, forgiven)), step);
  return multiply({ coefficient: steps, exponent: 0 }, step);
}

function roundDown(value: number, resolution: number): number {
  if (!Number.isFinite(value) || !(resolution > 0)) return value;
  return toNumber(stepAtOrBelow(decimalFromNumber(value), decimalFromNumber(resolution)));
}

function roundUp(value: number, resolution: number): number {
  // Adding zero turns the -0 of an upper limit of zero into 0.
  return -roundDown(-value, resolution) + 0;
}

function finiteOrNone(value: number | null): number | null {
  return value === null || Number.isFinite(value) ? value : null;
}
