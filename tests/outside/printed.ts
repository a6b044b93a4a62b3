import { expect } from 'vitest';

/** Half a unit of the last digit that a table prints: what its rounding may hide. */
export function halfDigit(printed: string): number {
  return 0.5 * 10 ** -(printed.split('.')[1]?.length ?? 0);
}

/** Expects a number to round to the digits that a table prints: it lies within half a unit of the last one. */
export function expectPrinted(value: number, printed: string): void {
  const shown = Number(printed);
  // A hair more than half a unit, for the rounding of doubles at a tie.
  expect(Math.abs(value - shown), `${value} is not ${printed}`).toBeLessThanOrEqual(
    halfDigit(printed) * (1 + 1e-9),
  );
}
