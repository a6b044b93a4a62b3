import type { Span } from '../quantity/quantity.ts';

/* Thermistors whose resistance falls with temperature (NTC). */

/** From its resistance at 25 °C, ohms, and its B value, kelvin. */
export interface BetaCurve {
  readonly r25: Span;
  readonly beta: Span;
}

/** Steinhart and Hart: 1/T = A + B ln R + C (ln R)³, T in kelvin, R in ohms. B is above zero, C not below it. */
export interface SteinhartHartCurve {
  readonly coefficients: readonly [a: number, b: number, c: number];
}

export type ThermistorCurve = BetaCurve | SteinhartHartCurve;

/** How far a sensor may be from its curve: by a part of its resistance, or as if it were so many kelvin warmer or colder. */
export type ThermistorTolerance = { readonly fraction: number } | { readonly kelvin: number };

const zeroCelsius = 273.15;
const roomCelsius = 25;

/** Ohms at one temperature in °C above absolute zero, of any sensor within its tolerance; null: none beyond the curve's own. */
export function thermistorResistance(
  curve: ThermistorCurve,
  tolerance: ThermistorTolerance | null,
  celsius: number,
): Span {
  if (tolerance === null) return onCurve(curve, celsius);
  const { nominal } = onCurve(curve, celsius);
  if ('fraction' in tolerance) {
    const { least, most } = onCurve(curve, celsius);
    return { least: least * (1 - tolerance.fraction), nominal, most: most * (1 + tolerance.fraction) };
  }
  // Warmer is less.
  const coldest = Math.max(celsius - tolerance.kelvin, -zeroCelsius);
  return {
    least: onCurve(curve, celsius + tolerance.kelvin).least,
    nominal,
    most: onCurve(curve, coldest).most,
  };
}

function onCurve(curve: ThermistorCurve, celsius: number): Span {
  const inverse = 1 / (celsius + zeroCelsius);
  if ('coefficients' in curve) {
    const ohms = Math.exp(logarithmAt(curve.coefficients, inverse));
    return { least: ohms, nominal: ohms, most: ohms };
  }
  const { r25, beta } = curve;
  const from25 = inverse - 1 / (roomCelsius + zeroCelsius);
  // Above 25 °C a greater B makes the resistance less, below it makes it more.
  const [low, high] = from25 < 0 ? [beta.most, beta.least] : [beta.least, beta.most];
  return {
    least: r25.least * Math.exp(low * from25),
    nominal: r25.nominal * Math.exp(beta.nominal * from25),
    most: r25.most * Math.exp(high * from25),
  };
}

/**
 * Solves A + B x + C x³ = 1/T for x, the logarithm of the resistance: one real root, since B and C are not negative.
 * Written with hyperbolic functions the root of the cubic has no difference of nearly equal numbers.
 */
function logarithmAt([a, b, c]: SteinhartHartCurve['coefficients'], inverse: number): number {
  const rest = inverse - a;
  if (c === 0) return rest / b;
  const third = Math.sqrt(b / (3 * c));
  return 2 * third * Math.sinh(Math.asinh((3 * rest) / (2 * b * third)) / 3);
}
