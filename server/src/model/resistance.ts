import type { Span } from '../quantity/span.ts';

/*
 * What a file says of the resistance of a part, in SI units, temperatures in °C. What it amounts to is computed
 * elsewhere, from the same shapes.
 */

export type WireSize = { readonly squareMillimetres: number } | { readonly awg: number };

/** Of the place, of an entry of the file, or stated for the part alone. */
export type Temperature = 'ambient' | { readonly entry: string } | { readonly stated: Span };

export type Series = 'E6' | 'E12' | 'E24' | 'E48' | 'E96' | 'E192';

/** A part of the resistance, or kelvin. */
export type SensorTolerance = { readonly fraction: number } | { readonly kelvin: number };

export type SensorCurve =
  | { readonly r25: Span; readonly beta: Span }
  | { readonly coefficients: readonly [a: number, b: number, c: number] };

export type Resistance =
  /** `hot`: what it has under power, where that is another or not known. */
  | { readonly kind: 'stated'; readonly resistance: Span; readonly hot?: Span | 'unstated' }
  /** Of a series of preferred values; without a spread it has the tolerance of the series. */
  | { readonly kind: 'preferred'; readonly resistance: Span; readonly series: Series }
  | { readonly kind: 'lamp-rating'; readonly volts: number; readonly watts: number }
  | { readonly kind: 'heater-rating'; readonly volts: number; readonly watts: number }
  /** A blade fuse by its rated current. */
  | { readonly kind: 'fuse-rating'; readonly amperes: number }
  | FollowingResistance;

export type FollowingResistance = { readonly temperature: Temperature } & (
  | { readonly kind: 'copper-wire'; readonly wire: WireSize; readonly length: Span }
  /** Wound of copper, `resistance` stated at `at` °C. */
  | { readonly kind: 'copper-coil'; readonly resistance: Span; readonly at: number }
  | {
      readonly kind: 'thermistor';
      readonly curve: SensorCurve;
      /** null: none beyond that of the curve. */
      readonly tolerance: SensorTolerance | null;
    }
  | { readonly kind: 'platinum'; readonly r0: number; readonly class: 'AA' | 'A' | 'B' }
);

export function followsTemperature(resistance: Resistance): resistance is FollowingResistance {
  return 'temperature' in resistance;
}
