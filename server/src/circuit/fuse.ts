import type { Span } from '../quantity/quantity.ts';

/**
 * Ohms of a cold blade fuse (ISO 8820-3, types C and F) with a rated current of 1 A, and the power by which that falls with
 * the rated current. The standard gives no resistance; this lies within 7 % of what makers publish for 1 to 40 A.
 */
const typical = { atOneAmpere: 0.123, power: -1.2 } as const;

/** How far a fuse of any make may be from that: less, and at its rated current, where it is warm, half as much again. */
export const fuseSpread = { least: 0.7, most: 1.5 } as const;

/** Ohms of a blade fuse, estimated from its rated current in ampere. */
export function fuseResistance(amperes: number): Span {
  const nominal = typical.atOneAmpere * amperes ** typical.power;
  return { least: nominal * fuseSpread.least, nominal, most: nominal * fuseSpread.most };
}
