import type { Link } from './solve.ts';
import type { Interval } from './values.ts';

/*
 * Potentiometers: two ways that share a track and the place of a wiper on it. Over both the least and the most are looked
 * for by trying both ends and the middle, and by the golden section where a parabola through these turns inside.
 */

/** One side of a wiper. */
export interface OnTrack {
  readonly id: string;
  readonly end: 'first' | 'second';
  readonly track: Interval;
  readonly place: Interval;
}

export const sideOhms = ({ track, place, end }: OnTrack): Interval => {
  const [least, most] = end === 'first' ? [place.least, place.most] : [1 - place.most, 1 - place.least];
  return { least: track.least * least, most: track.most * most };
};

/** The greatest of a function over a stretch on which it turns once at most. */
function greatest(value: (at: number) => number, { least, most }: Interval): number {
  const middle = (least + most) / 2;
  const [low, half, high] = [value(least), value(middle), value(most)];
  const best = Math.max(low, half, high);
  const bend = low - 2 * half + high;
  // Where the parabola turns, from -1 at the least to 1 at the most.
  const turn = (low - high) / (2 * bend);
  if (!(bend < 0) || Math.abs(turn) > 1.3) return best;
  const ratio = (Math.sqrt(5) - 1) / 2;
  let [from, to] = [least, most];
  for (let round = 0; round < 45; round += 1) {
    const [one, other] = [to - ratio * (to - from), from + ratio * (to - from)];
    if (value(one) > value(other)) to = other;
    else from = one;
  }
  return Math.max(best, value((from + to) / 2));
}

/**
 * The least and the most of what is made of ways, over the track and the wiper of the potentiometer among them; all
 * others have one value each.
 */
export function overTrack(
  links: readonly Link[],
  sides: readonly OnTrack[],
  value: (links: readonly Link[]) => number,
  ends: readonly { readonly a: string; readonly b: string }[],
): Interval {
  const [first] = sides;
  if (first === undefined) {
    const only = value(links);
    return { least: only, most: only };
  }
  if (sides.some(({ id }) => id !== first.id))
    throw new Error('The oracle knows one potentiometer at a time.');
  const at = (track: number, place: number): number =>
    value([
      ...links,
      ...sides.map(({ end }, side) => ({
        a: ends[side]?.a ?? '',
        b: ends[side]?.b ?? '',
        ohms: track * (end === 'first' ? place : 1 - place),
      })),
    ]);
  const most = (sign: 1 | -1): number =>
    greatest((place) => greatest((track) => sign * at(track, place), first.track), first.place);
  const [top, bottom] = [most(1), most(-1)];
  return { least: -bottom, most: top };
}
