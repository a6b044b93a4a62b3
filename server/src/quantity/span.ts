/**
 * A value with its spread, in SI base units (temperatures in °C): least ≤ nominal ≤ most.
 * An exact value has all three equal.
 */
export interface Span {
  readonly least: number;
  readonly nominal: number;
  readonly most: number;
}

/** One bound, in SI base units: `below 1.0 Ω` or `above 4.5 Ω`. */
export type Limit = { readonly below: number } | { readonly above: number };

/**
 * The error limit of an instrument: a fraction of the reading (0.03 for 3 %), plus a constant in SI base units,
 * plus a count of the display's last digit.
 */
export interface Accuracy {
  readonly fraction: number;
  readonly constant: number;
  readonly digits: number;
}
