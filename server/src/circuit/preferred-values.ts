import type { Span } from '../quantity/quantity.ts';

/* Preferred values of resistors. Source: IEC 60063. */

export type PreferredSeries = 'E6' | 'E12' | 'E24' | 'E48' | 'E96' | 'E192';

/** The values of a decade that follow no rule. */
const e24 = [10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91];

/** Three digits: the geometric steps of the series, rounded; but E192 has 920 where that gives 919. */
function rounded(steps: number): readonly number[] {
  return Array.from({ length: steps }, (_, step) => {
    const value = Math.round(100 * 10 ** (step / steps));
    return value === 919 ? 920 : value;
  });
}

/** The values of one decade as whole numbers of `digits` digits. */
const decades: Readonly<
  Record<PreferredSeries, { readonly digits: number; readonly values: readonly number[] }>
> = {
  E6: { digits: 2, values: e24.filter((_, index) => index % 4 === 0) },
  E12: { digits: 2, values: e24.filter((_, index) => index % 2 === 0) },
  E24: { digits: 2, values: e24 },
  E48: { digits: 3, values: rounded(48) },
  E96: { digits: 3, values: rounded(96) },
  E192: { digits: 3, values: rounded(192) },
};

/** The tolerance that goes with a series where none is stated, as a part of the value. Usual, not binding, since 2015. */
const tolerances: Readonly<Record<PreferredSeries, number>> = {
  E6: 0.2,
  E12: 0.1,
  E24: 0.05,
  E48: 0.02,
  E96: 0.01,
  E192: 0.005,
};

export function usualTolerance(series: PreferredSeries): number {
  return tolerances[series];
}

/** The value of a series that is nearest in ratio, ohms; the given one itself where it belongs to the series. */
export function nearestPreferred(ohms: number, series: PreferredSeries): number {
  const { digits, values } = decades[series];
  const decade = Math.floor(Math.log10(ohms));
  const candidates = [decade - 1, decade, decade + 1].flatMap((power) =>
    // As decimal text, so that 4.7 kΩ is 4700 and not 4700.000000000001.
    values.map((value) => Number(`${value}e${power + 1 - digits}`)),
  );
  const distance = (value: number): number => Math.abs(Math.log(value / ohms));
  return candidates.reduce((best, value) => (distance(value) < distance(best) ? value : best), Infinity);
}

/** Ohms of a resistor of a series: with its stated spread, or where it has none with the tolerance of the series. */
export function preferredResistance(stated: Span, series: PreferredSeries): Span {
  const { least, nominal, most } = stated;
  if (least < most) return stated;
  const tolerance = usualTolerance(series);
  return { least: nominal * (1 - tolerance), nominal, most: nominal * (1 + tolerance) };
}
