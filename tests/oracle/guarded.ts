import type { MeterRange } from '../../server/src/model/procedure.ts';
import type { Interval } from './values.ts';

/* Which numbers on a display prove a circuit good, by trying each of them. */

/**
 * Whether some number on the display can come of no circuit outside the limits, whatever the leads have; a voltage
 * lies on either side of nought. null: not known.
 */
export function someReadingProves(
  { range, accuracy, resolution }: MeterRange,
  limits: Interval,
  leads: Interval = { least: 0, most: 0 },
  isVoltage = false,
): boolean | null {
  if (range === null || accuracy === null || resolution === null) return null;
  const constant = accuracy.constant + accuracy.digits * resolution;
  const slack = 1e-9 * resolution;
  const { fraction } = accuracy;
  // What circuits just outside the limits come closest to. No resistance is below nought.
  const below = limits.least + leads.most;
  const fromBelow = isVoltage || limits.least > 0 ? below + Math.abs(below) * fraction + constant : -Infinity;
  const above = limits.most + leads.least;
  const fromAbove = above - Math.abs(above) * fraction - constant;
  const first = isVoltage ? -range.most : range.least;
  const steps = Math.floor((range.most - first) / resolution + 1e-9);
  return Array.from({ length: steps + 1 }, (_, step) => first + step * resolution).some(
    (shown) => shown >= fromBelow - slack && shown <= fromAbove + slack,
  );
}
