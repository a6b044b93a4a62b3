import { formatQuantity } from '../../quantity/quantity.ts';
import { subjectInWords } from '../../readings/subject.ts';
import type { Context, Seen } from '../rule.ts';
import { byReading, known, seen } from '../windows/window-sides.ts';

/** Currents of a sound circuit that can be beyond the range of what carries or clamps them. */
export function overloaded(context: Context): readonly Seen[] {
  return byReading(context, (_, reading) => {
    const { quantity, instrument, carrying } = reading;
    const most = instrument?.range?.most;
    if (quantity !== 'current' || instrument === null || most === undefined) return null;
    const side = known(reading).find(({ indication }) => indication.canBeOpen);
    if (side === undefined || typeof side.circuit === 'string') return null;
    const greatest = Math.max(Math.abs(side.circuit.least), Math.abs(side.circuit.most));
    const amperes = formatQuantity(Number(greatest.toPrecision(3)), 'current');
    const harm = carrying?.kind === 'clamp' ? 'it shows no number' : 'its fuse blows, or it is destroyed';
    const message =
      `${subjectInWords(reading)} of a sound circuit can be ${amperes}, and ${instrument.id} reaches ${formatQuantity(most, 'current')}: ${harm}. ` +
      'Use an instrument that carries more, or a clamp.';
    return seen(
      context,
      reading,
      'unfit-meter',
      `${message.charAt(0).toUpperCase()}${message.slice(1)}`,
      [side],
      ['with'],
    );
  });
}
