import type { Uncertain } from './uncertain.ts';

/** Where most sound circuits read, in ohms or volts, before the display step. */
export interface Likely {
  readonly least: number;
  readonly most: number;
  /** Standard uncertainty. */
  readonly standard: number;
}

/** Coverage factor: about 95 of 100 for a sum of many causes. Source: JCGM 100:2008, 6.2 and G.6.6. */
const coverage = 2;

/** One standard uncertainty as a part of the width of a range. Source: JCGM 100:2008, 4.3.7. */
const standardPart = 1 / (2 * Math.sqrt(3));

/**
 * The root of the sum of the squares: every independent quantity lies evenly in its range, of half width a, so its
 * standard uncertainty is a / √3 around the middle (JCGM 100:2008, 4.3.7 and 4.3.8). Each moves the reading by half the
 * difference between one standard uncertainty more and one less (5.1.3, note 2), all elements of one cause together;
 * each temperature is a cause. The interval is twice the combined standard uncertainty on either side, cut to the worst
 * case.
 *
 * null: there is no path, or no number can be shown.
 */
export function rootSumSquare({ worst, reckoned, shown }: Uncertain): Likely | null {
  if (worst === null) return null;
  const { quantities, at } = reckoned;
  const middle = new Float64Array(quantities).fill(0.5);
  const moves = Array.from(middle, (_, quantity) => {
    const [more, less] = [0.5 + standardPart, 0.5 - standardPart].map((place) =>
      at(middle.with(quantity, place)),
    );
    return ((more ?? NaN) - (less ?? NaN)) / 2;
  });
  const standard = Math.sqrt(moves.reduce((sum, move) => sum + move ** 2, 0));
  const likely = (amount: number): number => shown(Math.min(Math.max(amount, worst.least), worst.most));
  return {
    least: likely(at(middle) - coverage * standard),
    most: likely(at(middle) + coverage * standard),
    standard,
  };
}
