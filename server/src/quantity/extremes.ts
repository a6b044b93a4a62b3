/* The ends of any number of numbers: as the arguments of one call very many of them would fill the stack. */

/** Infinity where there is none; NaN where one of them is. */
export function leastOf(numbers: Iterable<number>): number {
  let least = Infinity;
  for (const number of numbers) least = Math.min(least, number);
  return least;
}

/** `floor` where there is none above it; NaN where one of them is. */
export function greatestOf(numbers: Iterable<number>, floor = -Infinity): number {
  let greatest = floor;
  for (const number of numbers) greatest = Math.max(greatest, number);
  return greatest;
}
