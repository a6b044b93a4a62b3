import type { Indication } from '../circuit/circuit.ts';
import { roundOutward } from '../quantity/quantity.ts';
import type { ReadingClass } from '../model/finding.ts';
import { quantityFacts } from '../model/quantity-kinds.ts';
import { openIsWithin } from './accepted.ts';
import type { Accepted } from './accepted.ts';
import type { Good } from './good.ts';
import type { ReadBy } from './instruments.ts';

/** Forgiven when a number is held against a bound, as a part of the resolution. */
const forgiven = 1e-9;

/** The classes that an indication can fall into, held against the accepted window. Never empty. */
export function classesShown(
  indication: Indication,
  accepted: Accepted,
  resolution: number,
): readonly ReadingClass[] {
  const { canBeOpen } = indication;
  const value = displayed(indication, resolution);
  const slack = resolution * forgiven;
  const shown = new Set<ReadingClass>();
  if (value !== null) {
    if (accepted === 'open') shown.add('below');
    else {
      const least = accepted.least ?? -Infinity;
      const most = accepted.most ?? Infinity;
      if (value.least < least - slack) shown.add('below');
      if (value.most >= least - slack && value.least <= most + slack) shown.add('within');
      if (value.most > most + slack) shown.add('above');
    }
  }
  if (canBeOpen) shown.add(openIsWithin(accepted) ? 'within' : 'open');
  return classOrder.filter((one) => shown.has(one));
}

/** The numbers that can stand on the display: whether it rounds up or down is not known. */
function displayed(
  { value, displayed: known }: Indication,
  resolution: number,
): { readonly least: number; readonly most: number } | null {
  if (value === null || known != null) return known ?? null;
  const outward = roundOutward(value, resolution);
  return outward === 'open'
    ? value
    : { least: outward.least ?? value.least, most: outward.most ?? value.most };
}

/** The classes that a step has to cover: all that the instrument can show, whatever the circuit does. */
export function classesRequired(
  accepted: Accepted,
  { quantity, range, leakBelow }: ReadBy,
): readonly ReadingClass[] {
  const ceiling = range?.most ?? Infinity;
  // A voltmeter shows the same on either side of zero.
  const floor = quantityFacts[quantity].isSigned ? -ceiling : Math.max(0, range?.least ?? 0);
  const needed = new Set<ReadingClass>(['within']);
  if (leakBelow !== null) needed.add('leak');
  if (accepted === 'open') needed.add('below');
  else {
    if (accepted.least !== null && accepted.least > floor) needed.add('below');
    if (accepted.most !== null && accepted.most < ceiling) needed.add('above');
  }
  if (!openIsWithin(accepted)) needed.add('open');
  return classOrder.filter((one) => needed.has(one));
}

/** The classes that a sound circuit can show on a bench, that of a leak among them; null: not known. */
export function classesOfGood(
  { indication, leak }: Good,
  accepted: Accepted,
  resolution: number,
): readonly ReadingClass[] | null {
  if (indication === null) return null;
  if (leak === 'always') return ['leak'];
  const shown = classesShown(indication, accepted, resolution);
  return leak === 'sometimes' ? ['leak', ...shown] : shown;
}

const classOrder: readonly ReadingClass[] = ['leak', 'below', 'within', 'above', 'open'];
