import type { Span, Wire } from '../quantity/quantity.ts';

/** Copper as standardised for conductors. Source: IEC 60028, standard annealed copper at 20 °C. */
export const copper = {
  /** Ω·mm²/m at 20 °C. */
  resistivity: 1 / 58,
  /** Per kelvin, referred to 20 °C, at constant mass. */
  coefficient: 0.00393,
  referenceCelsius: 20,
} as const;

/**
 * The most that a flexible copper conductor may have at 20 °C, in ohms per kilometre, by its size in mm². A file does not
 * say whether the wires are coated with metal, so it is the limit of coated ones, up to 3 % more than that of plain ones.
 * Source: IEC 60228, class 5, metal-coated wires.
 */
const flexibleConductorLimits: ReadonlyMap<number, number> = new Map([
  [0.5, 40.1],
  [0.75, 26.7],
  [1, 20.0],
  [1.5, 13.7],
  [2.5, 8.21],
  [4, 5.09],
  [6, 3.39],
  [10, 1.95],
  [16, 1.24],
  [25, 0.795],
  [35, 0.565],
  [50, 0.393],
  [70, 0.277],
  [95, 0.21],
  [120, 0.164],
  [150, 0.132],
  [185, 0.108],
  [240, 0.0817],
  [300, 0.0654],
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

/** Ohms per metre of a copper wire at 20 °C. */
export function copperPerMetre(wire: Wire): Span {
  const ideal = conductorResistance(copper.resistivity, 1, crossSection(wire));
  const { least, most } = copperSpread(wire);
  return { least: ideal * least, nominal: ideal, most: ideal * most };
}

/** What the spread of a wire size rests on. */
export type WireBasis = 'listed' | 'unlisted' | 'gauge';

/** How far from the ideal resistance of its size a wire may be, as factors. */
const spreads = {
  /**
   * A size that IEC 60228 does not list. The limits of those it lists lie 12 to 19 % above the ideal; the copper of a
   * cable may be somewhat more than its size says.
   */
  unlisted: { least: 0.95, most: 1.2 },
  /**
   * Stranded wire of one gauge number differs by its strands: published make-ups lie from 15 % below (AWG 18, 19/30) to
   * 7 % above (AWG 16, 19/29) the solid wire of ASTM B258; tinned strands add some percent (NEC chapter 9 table 8).
   */
  gauge: { least: 0.85, most: 1.1 },
} as const;

export function wireBasis(wire: Wire): WireBasis {
  if ('awg' in wire) return 'gauge';
  return flexibleConductorLimits.has(wire.squareMillimetres) ? 'listed' : 'unlisted';
}

/** Factors on the ideal resistance: least and most. */
export function copperSpread(wire: Wire): { readonly least: number; readonly most: number } {
  const basis = wireBasis(wire);
  if (basis !== 'listed') return spreads[basis];
  const size = crossSection(wire);
  const limit = (flexibleConductorLimits.get(size) ?? Infinity) / 1000;
  return { least: 1, most: limit / conductorResistance(copper.resistivity, 1, size) };
}

/**
 * How many times its resistance at one temperature a copper winding has at another, both in °C. Source: IEC 60034-1,
 * with its constant 234.5 for copper. Never below zero.
 */
export function coilFactor(from: number, to: number): number {
  return Math.max(0, (234.5 + to) / (234.5 + from));
}
