/* Chance that can be repeated: the same seed gives the same draws everywhere. */

export interface Chance {
  /** From 0 to below 1. */
  readonly draw: () => number;
  /** A whole number, both ends included. */
  readonly whole: (least: number, most: number) => number;
  readonly happens: (share: number) => boolean;
  readonly pick: <T>(from: readonly T[]) => T;
  /** Each with this share, in order. */
  readonly some: <T>(from: readonly T[], share: number) => T[];
}

/** A 32-bit counter with a fixed odd step, its bits mixed by two multiplications (the mulberry32 recipe, public domain). */
export function chanceFrom(seed: number): Chance {
  let counter = seed >>> 0;
  const draw = (): number => {
    counter = (counter + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(counter ^ (counter >>> 15), counter | 1);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const whole = (least: number, most: number): number => least + Math.floor(draw() * (most - least + 1));
  return {
    draw,
    whole,
    happens: (share) => draw() < share,
    pick: <T>(from: readonly T[]): T => {
      if (from.length === 0) throw new Error('There is nothing to pick from.');
      return from[whole(0, from.length - 1)] as T;
    },
    some: (from, share) => from.filter(() => draw() < share),
  };
}
