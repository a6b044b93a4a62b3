import { seededRandom } from './random.ts';
import type { Uncertain } from './uncertain.ts';

/** What many drawn circuits read, in ohms or volts, before the display step. */
export interface Drawn {
  /** In rising order; those beyond the range, which read open, come last as Infinity and make the mean infinite. */
  readonly shown: Float64Array;
  readonly mean: number;
  /** Standard deviation of the draws. */
  readonly standard: number;
}

/**
 * Propagation of distributions by drawing (JCGM 101:2008, clause 7): every independent quantity evenly in its range,
 * elements of one cause together. The same seed gives the same draws.
 */
export function* drawReadings(
  { reckoned, shown: shownOf, isBeyond }: Uncertain,
  draws: number,
  seed: number,
): Generator<number, Drawn> {
  const { quantities, at } = reckoned;
  const random = seededRandom(seed);
  const places = new Float64Array(quantities);
  const shown = new Float64Array(draws);
  let sum = 0;
  for (let draw = 0; draw < draws; draw += 1) {
    const amount = at(places.map(random));
    shown[draw] = isBeyond(amount) ? Infinity : shownOf(amount);
    sum += shown[draw] ?? 0;
    if (draw % drawsBetweenYields === 0) yield draw;
  }
  shown.sort();
  const mean = sum / draws;
  const standard = Math.sqrt(shown.reduce((total, each) => total + (each - mean) ** 2, 0) / (draws - 1));
  return { shown, mean, standard };
}

const drawsBetweenYields = 500;

/** The interval that leaves the same part of the draws out on either side. Source: JCGM 101:2008, 7.7. */
export function middlePart(
  { shown }: Drawn,
  part: number,
): { readonly least: number; readonly most: number } {
  const inside = Math.round(part * shown.length);
  const first = Math.round((shown.length - inside) / 2);
  return { least: shown[first] ?? NaN, most: shown[first + inside - 1] ?? NaN };
}
