import { greatestOf, leastOf } from '../quantity/extremes.ts';

/** A stretch of each quantity that is searched. */
export type Box = readonly (readonly [from: number, to: number])[];

/** What a box can hold. */
export interface Look {
  /** Nothing in the box is greater. */
  readonly bound: number;
  /** Something that is met in the box; `bound` itself where that is met. */
  readonly reached: number;
}

/** The greatest, or where signs are turned the least, of a quantity. */
export interface Greatest {
  /** Nothing is greater. */
  readonly bound: number;
  /** Whether it is met, to 1e-10 of itself. */
  readonly isMet: boolean;
}

/** Relative. */
const closeEnough = 1e-10;

/**
 * The greatest value over some boxes: the box with the greatest bound is halved until a value that is met comes up to it.
 * `best` is a value known to be met. Where no more may be halved the bound is an outer one.
 */
export function greatestOver(
  start: readonly Box[],
  look: (box: Box) => Look,
  best: number,
  mayHalve: (halvings: number) => boolean,
): Greatest {
  const whole = lengthsOf(start);
  const looked = (box: Box): Look & { readonly box: Box } => ({ box, ...look(box) });
  let boxes = start.map(looked);
  let met = greatestOf(
    boxes.map(({ reached }) => reached),
    best,
  );
  for (let halvings = 0; ; halvings += 1) {
    const open = boxes.reduce((one, other) => (other.bound > one.bound ? other : one));
    const isMet = open.bound <= met + closeEnough * Math.abs(met);
    const isPoint = open.box.every(([from, to]) => from === to);
    if (isMet || isPoint || !mayHalve(halvings)) return { bound: Math.max(open.bound, met), isMet };
    const halves = halved(open.box, whole).map(looked);
    met = greatestOf(
      halves.map(({ reached }) => reached),
      met,
    );
    boxes = boxes.filter((one) => one !== open && one.bound > met).concat(halves);
  }
}

/** Ranges as boxes, cut where each quantity has a stop inside. */
export function cutAt(
  ranges: readonly { readonly least: number; readonly most: number }[],
  stops: readonly (readonly number[])[],
): readonly Box[] {
  return ranges.reduce<readonly Box[]>(
    (boxes, { least, most }, quantity) => {
      const inside = [...new Set(stops[quantity])].filter((stop) => stop > least && stop < most);
      const ends = [least, ...inside.sort((a, b) => a - b), most];
      const pieces = ends.slice(1).map((to, index) => [ends[index] ?? least, to] as const);
      return boxes.flatMap((box) => pieces.map((piece) => [...box, piece]));
    },
    [[]],
  );
}

/** The length of each quantity over all boxes. */
function lengthsOf(boxes: readonly Box[]): readonly number[] {
  const [first = []] = boxes;
  return first.map(([from, to], at) => {
    const most = greatestOf(boxes.map((box) => box[at]?.[1] ?? to));
    return most - leastOf(boxes.map((box) => box[at]?.[0] ?? from));
  });
}

/** In two, across the stretch that is the longest part of its whole. */
function halved(box: Box, whole: readonly number[]): readonly [Box, Box] {
  const lengths = box.map(([from, to], at) => (to > from ? (to - from) / (whole[at] ?? NaN) : 0));
  const longest = lengths.indexOf(greatestOf(lengths));
  const [from, to] = box[longest] ?? [0, 0];
  const middle = (from + to) / 2;
  return [box.with(longest, [from, middle]), box.with(longest, [middle, to])];
}

export function cornersOf(box: Box): readonly (readonly number[])[] {
  return box.reduce<readonly (readonly number[])[]>(
    (corners, [from, to]) =>
      corners.flatMap((corner) => [
        [...corner, from],
        [...corner, to],
      ]),
    [[]],
  );
}

export function middleOf(box: Box): readonly number[] {
  return box.map(([from, to]) => (from + to) / 2);
}
