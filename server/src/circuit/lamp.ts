import type { Span } from '../quantity/quantity.ts';

/**
 * How many times its cold resistance a tungsten filament has while it glows as rated: an estimate. Published lamps: 8.8
 * times (Halliday and Resnick, 2.9 V 0.30 A), 13.7 times (OpenStax College Physics, heated by 2830 K).
 */
export const hotToCold = { least: 8, most: 15 } as const;

/** Ohms of a filament while it glows as rated, from volts and watts. */
export function hotResistance(volts: number, watts: number): number {
  return volts ** 2 / watts;
}

/** Ohms of a cold filament, estimated from its rating. The nominal value lies at equal ratios from both ends. */
export function coldResistance(volts: number, watts: number): Span {
  const hot = hotResistance(volts, watts);
  return {
    least: hot / hotToCold.most,
    nominal: hot / Math.sqrt(hotToCold.least * hotToCold.most),
    most: hot / hotToCold.least,
  };
}
