import type { Span } from '../quantity/quantity.ts';

/*
 * Platinum resistance thermometers. Source of every number: IEC 60751, industrial platinum resistance thermometers and
 * sensors, temperature coefficient 3.851e-3 per kelvin.
 */

export type PlatinumClass = 'AA' | 'A' | 'B';

/** Callendar-Van Dusen: R = R0 (1 + A t + B t² + C (t - 100 °C) t³), C below 0 °C only; t in °C. */
const a = 3.9083e-3;
const b = -5.775e-7;
const c = -4.183e-12;

/** How many times its resistance at 0 °C a platinum sensor has at a temperature in °C. */
export function platinumRatio(celsius: number): number {
  const cubic = celsius < 0 ? c * (celsius - 100) * celsius ** 3 : 0;
  return 1 + a * celsius + b * celsius ** 2 + cubic;
}

interface Tolerance {
  /** °C at 0 °C, and °C more for each degree away from it. */
  readonly constant: number;
  readonly slope: number;
  /** °C between which the class is defined, for wire-wound sensors, the wider of the two ranges. */
  readonly from: number;
  readonly to: number;
}

const classes: Readonly<Record<PlatinumClass, Tolerance>> = {
  AA: { constant: 0.1, slope: 0.0017, from: -50, to: 250 },
  A: { constant: 0.15, slope: 0.002, from: -100, to: 450 },
  B: { constant: 0.3, slope: 0.005, from: -196, to: 600 },
};

/** The temperatures in °C between which the tolerance of a class holds. */
export function platinumRange(name: PlatinumClass): { readonly from: number; readonly to: number } {
  const { from, to } = classes[name];
  return { from, to };
}

/** By how many °C a sensor of the class may be off at a temperature. */
export function platinumTolerance(name: PlatinumClass, celsius: number): number {
  const { constant, slope } = classes[name];
  return constant + slope * Math.abs(celsius);
}

/** Ohms of any sensor of the class at one temperature in °C, from its resistance at 0 °C. */
export function platinumResistance(r0: number, name: PlatinumClass, celsius: number): Span {
  const off = platinumTolerance(name, celsius);
  return {
    least: r0 * platinumRatio(celsius - off),
    nominal: r0 * platinumRatio(celsius),
    most: r0 * platinumRatio(celsius + off),
  };
}
