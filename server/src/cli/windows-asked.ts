import type { Explanation } from '../readings/explain.ts';
import type { Entered } from './entered.ts';
import type { Reading, Readings } from '../readings/reading.ts';

/** What is printed of the readings of a file. */
export interface Asked {
  /** Steps by index. */
  readonly steps: ReadonlySet<number>;
  /** Where the window of a reading comes from; null: it was not asked for, or it is not known. */
  readonly explanation: (reading: Reading) => Explanation | null;
  /** What was measured and entered, °C. */
  readonly entered: Entered;
}

/** The readings of the steps asked for. */
export function readingsAsked({ readings }: Readings, { steps }: Asked): readonly Reading[] {
  return readings.filter(({ index }) => steps.has(index));
}
