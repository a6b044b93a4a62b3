import type { Span } from '../quantity/quantity.ts';

/**
 * What is so at one moment. Temperatures in °C: that of the place, and those that somebody has measured and entered, by
 * id.
 */
export interface Conditions {
  readonly ambient: number;
  readonly entered: ReadonlyMap<string, number>;
  /** Where the wipers of potentiometers stand, by id, as a part of the track. One that is not among them may stand anywhere in its range. */
  readonly wipers?: ReadonlyMap<string, number>;
}

/** The same as far as they are known beforehand. The temperatures in them are independent of each other. */
export interface ConditionRanges {
  readonly ambient: Span;
  readonly entered: ReadonlyMap<string, Span>;
}

/**
 * The temperature that a part has: that of the place, one that is measured and entered, or anything within a range that
 * is stated for the part alone.
 */
export type Temperature = 'ambient' | { readonly entry: string } | { readonly stated: Span };

/** The temperature of a part under conditions, °C. An entry that is not among them makes it not a number. */
export function temperatureAt(temperature: Temperature, { ambient, entered }: Conditions): Span {
  if (temperature === 'ambient') return exactly(ambient);
  if ('stated' in temperature) return temperature.stated;
  return exactly(entered.get(temperature.entry) ?? Number.NaN);
}

/** The same where the conditions are known as ranges only. */
export function temperatureWithin(temperature: Temperature, { ambient, entered }: ConditionRanges): Span {
  if (temperature === 'ambient') return ambient;
  if ('stated' in temperature) return temperature.stated;
  return entered.get(temperature.entry) ?? exactly(Number.NaN);
}

export function exactly(value: number): Span {
  return { least: value, nominal: value, most: value };
}
