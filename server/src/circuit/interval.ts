/** All numbers from one to another, both included. */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

export const zero: Interval = { low: 0, high: 0 };

export function plus(one: Interval, other: Interval): Interval {
  return { low: one.low + other.low, high: one.high + other.high };
}

export function negative({ low, high }: Interval): Interval {
  return { low: -high + 0, high: -low + 0 };
}

export function times(one: Interval, other: Interval): Interval {
  const [a, b] = [one.low * other.low, one.low * other.high];
  const [c, d] = [one.high * other.low, one.high * other.high];
  return { low: Math.min(a, b, c, d) + 0, high: Math.max(a, b, c, d) + 0 };
}

/** 1: nowhere below zero. -1: nowhere above. 0: both signs, or only zero. */
export function signOf({ low, high }: Interval): -1 | 0 | 1 {
  if (low >= 0) return high > 0 ? 1 : 0;
  return high <= 0 ? -1 : 0;
}

/** What lies in both; where rounding leaves nothing, the nearer end. */
export function within(one: Interval, low: number, high: number): Interval {
  return { low: Math.min(Math.max(one.low, low), high), high: Math.max(Math.min(one.high, high), low) };
}
