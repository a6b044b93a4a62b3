import type { Wire } from '../quantity/quantity.ts';

/** Copper as standardised for conductors. Source: IEC 60028, standard annealed copper at 20 °C. */
export const copper = {
  /** Ω·mm²/m at 20 °C. */
  resistivity: 1 / 58,
  /** Per kelvin, referred to 20 °C, at constant mass. */
  coefficient: 0.00393,
  referenceCelsius: 20,
} as const;

/**
 * The most that a flexible plain copper conductor may have at 20 °C, in ohms per kilometre, by its size in mm².
 * Source: IEC 60228, class 5, plain wires.
 */
const flexibleConductorLimits: ReadonlyMap<number, number> = new Map([
  [0.5, 39.0],
  [0.75, 26.0],
  [1, 19.5],
  [1.5, 13.3],
  [2.5, 7.98],
  [4, 4.95],
  [6, 3.3],
]);

/** Resistance in ohms of a conductor: resistivity in Ω·mm²/m, length in metres, cross-section in mm². */
export function conductorResistance(resistivity: number, length: number, squareMillimetres: number): number {
  return (resistivity * length) / squareMillimetres;
}

/**
 * How many times its resistance at the reference temperature a metal has at another one, by the straight line through
 * its coefficient (per kelvin, referred to that same temperature). Never below zero.
 */
export function temperatureFactor(coefficient: number, referenceCelsius: number, celsius: number): number {
  return Math.max(0, 1 + coefficient * (celsius - referenceCelsius));
}

/** Diameter of a solid wire in millimetres. Source: ASTM B258; 92 is the ratio of AWG 0000 to AWG 36, 39 steps apart. */
export function gaugeDiameter(awg: number): number {
  return 0.127 * 92 ** ((36 - awg) / 39);
}

export function crossSection(wire: Wire): number {
  return 'awg' in wire ? (Math.PI / 4) * gaugeDiameter(wire.awg) ** 2 : wire.squareMillimetres;
}

/**
 * Ohms per metre of a copper wire at 20 °C: `ideal` from its cross-section, `most` from the limit of the standard where
 * it lists the size, else the same as `ideal`.
 */
export function copperPerMetre(wire: Wire): { readonly ideal: number; readonly most: number } {
  const ideal = conductorResistance(copper.resistivity, 1, crossSection(wire));
  const limit = 'awg' in wire ? undefined : flexibleConductorLimits.get(wire.squareMillimetres);
  return { ideal, most: limit === undefined ? ideal : limit / 1000 };
}
