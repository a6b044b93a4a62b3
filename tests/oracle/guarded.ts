import type { MeterRange } from '../../server/src/text/procedure.ts';
import type { Interval } from './values.ts';

/* Which numbers on a display prove a circuit good, by trying each of them. */

/** Whether some number on the display can come of no circuit outside the limits, whatever the leads have. null: not known. */
export function someReadingProves(
  { range, accuracy, resolution }: MeterRange,
  limits: Interval,
  leads: Interval = { least: 0, most: 0 },
): boolean | null {
  if (range === null || accuracy === null || resolution === null) return null;
  const constant = accuracy.constant + accuracy.digits * resolution;
  const slack = 1e-9 * resolution;
  // What circuits just outside the limits come closest to.
  const fromBelow =
    limits.least > 0 ? (limits.least + leads.most) * (1 + accuracy.fraction) + constant : -Infinity;
  const fromAbove = (limits.most + leads.least) * (1 - accuracy.fraction) - constant;
  const steps = Math.floor(range.most / resolution + 1e-9);
  return Array.from({ length: steps + 1 }, (_, step) => step * resolution).some(
    (shown) => shown >= range.least - slack && shown >= fromBelow - slack && shown <= fromAbove + slack,
  );
}
