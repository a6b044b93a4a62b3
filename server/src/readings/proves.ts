import type { Proves } from '../bench/verification.ts';
import { openIsWithin } from './accepted.ts';
import type { Readings } from './reading.ts';

/** A reading proves nothing where an open loop is within its window. A window that is not known is not held against it. */
export function provesBy(readings: Readings): Proves {
  return (step, loop) => {
    const accepted = readings.at(step.index, loop)?.accepted ?? null;
    return accepted === null || !openIsWithin(accepted);
  };
}
