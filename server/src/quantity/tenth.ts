import { compare, decimalFromNumber, shift } from './decimal.ts';

/** Whether a value is more than a tenth of another, as the decimals that people write: 40 mA is no more than that of 0.4 A. */
export function isMoreThanTenth(value: number, of: number): boolean {
  return compare(shift(decimalFromNumber(value), 1), decimalFromNumber(of)) > 0;
}
