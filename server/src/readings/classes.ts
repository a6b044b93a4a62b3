import type { Indication } from '../circuit/circuit.ts';
import type { ReadingClass } from '../text/finding.ts';
import type { Monitor } from '../text/procedure.ts';
import { openIsWithin } from './accepted.ts';
import type { Accepted } from './accepted.ts';

/** Forgiven when a number is held against a bound, as a part of the resolution. */
const forgiven = 1e-9;

/** The classes that an indication can fall into, held against the accepted window. Never empty. */
export function classesShown(
  indication: Indication,
  accepted: Accepted,
  resolution: number,
): readonly ReadingClass[] {
  const { value, canBeOpen } = indication;
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

/** The classes that a step has to cover: all that the instrument can show, whatever the circuit does. */
export function classesRequired(accepted: Accepted, monitor: Monitor): readonly ReadingClass[] {
  const floor = Math.max(0, monitor.range?.least ?? 0);
  const ceiling = monitor.range?.most ?? Infinity;
  const needed = new Set<ReadingClass>(['within']);
  if (monitor.leakBelow !== null) needed.add('leak');
  if (accepted === 'open') needed.add('below');
  else {
    if (accepted.least !== null && accepted.least > floor) needed.add('below');
    if (accepted.most !== null && accepted.most < ceiling) needed.add('above');
  }
  if (!openIsWithin(accepted)) needed.add('open');
  return classOrder.filter((one) => needed.has(one));
}

const classOrder: readonly ReadingClass[] = ['leak', 'below', 'within', 'above', 'open'];
