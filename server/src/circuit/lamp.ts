import type { Span } from '../quantity/quantity.ts';

/**
 * How many times its cold resistance a tungsten filament has while it glows as rated: an estimate. Published lamps: 8.8
 * times (Halliday and Resnick, 2.9 V 0.30 A), 13.7 times (OpenStax College Physics, heated by 2830 K).
 */
export const hotToCold = { least: 8, most: 15 } as const;

/**
 * The resistance of a tungsten filament under power goes with the voltage across it to this power. Rerating formulas, as
 * published: current with the power 0.55 of the voltage, watts with 1.6, so resistance with 0.45 or 0.40. Straight
 * tungsten in vacuum has 0.37 to 0.40 from 1500 to 2500 K (Jones and Langmuir, from memory); current with the square root
 * of the voltage, the usual rule, gives 0.5.
 */
export const filamentExponent: Span = { least: 0.37, nominal: 0.45, most: 0.5 };

/**
 * Far below its rated voltage a filament in gas is cooler than that: what the gas carries away falls with the temperature
 * alone, what is radiated with its fourth power (Carlà, Am. J. Phys. 81, 2013). The least resistance falls with this
 * power of the voltage below this part of the rated one: an estimate for up to a fifth of the heat going by the gas.
 */
const inGas = { below: 0.5, exponent: 0.75 } as const;

/** How far the watts of a lamp at its rated voltage may lie from its rating, as a part of them. Common practice, no source. */
export const ratedSpread = 0.1;

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

/**
 * Ohms of a filament with so many volts across it, in either direction: as rated at its rated voltage, with its power of
 * the voltage elsewhere, and never below what it has cold. Each of the three rises with the voltage, more slowly than the
 * voltage itself, so more voltage always drives more current, and a circuit of resistors, sources and one lamp settles
 * at one point alone.
 */
export function filamentResistance(
  rated: { readonly volts: number; readonly watts: number },
  volts: number,
): Span {
  const hot = hotResistance(rated.volts, rated.watts);
  const cold = coldResistance(rated.volts, rated.watts);
  const part = Math.abs(volts) / rated.volts;
  const { least, nominal, most } = filamentExponent;
  const [flat, steep] = [part ** least, steepest(part, most)];
  return {
    least: Math.max(cold.least, (hot / (1 + ratedSpread)) * Math.min(flat, steep)),
    nominal: Math.max(cold.nominal, hot * part ** nominal),
    most: Math.max(cold.most, (hot / (1 - ratedSpread)) * Math.max(flat, steep)),
  };
}

/** Below the rated voltage the least, above it the most that a filament may have, as a part of what it has as rated. */
function steepest(part: number, exponent: number): number {
  if (part >= inGas.below) return part ** exponent;
  return inGas.below ** exponent * (part / inGas.below) ** inGas.exponent;
}
