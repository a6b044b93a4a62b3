import { begin, expectEnd, expectNotNegative, peek, takeWritten, toAmount } from './amount.ts';
import { toNumber } from './decimal.ts';
import type { Dimension } from './dimensions.ts';
import { describeQuantity } from './dimensions.ts';
import type { Parsed } from './parsed.ts';
import { failed, parsed } from './parsed.ts';
import type { Limit } from './span.ts';

/** Reads one bound: `below 1.0 Ω` or `above 4.5 Ω`, in the base unit of the dimension; `signed`: it may lie below zero. */
export function parseLimit(text: string, dimension: Dimension, signed = false): Parsed<Limit> {
  const begun = begin(text, dimension, describeQuantity('limit', dimension), signed);
  if (!begun.ok) return begun;
  const cursor = begun.value;
  const side = peek(cursor);
  if (side?.kind !== 'word' || (side.text !== 'below' && side.text !== 'above')) {
    return failed(
      `A limit begins with \`below\` or \`above\`; expected ${cursor.expected}.`,
      side ?? { from: 0, to: text.length },
    );
  }
  cursor.next += 1;
  const written = takeWritten(cursor);
  if (!written.ok) return written;
  const left = expectEnd(cursor);
  if (left !== undefined) return left;
  const amount = toAmount(written.value, cursor);
  if (!amount.ok) return amount;
  const negative = expectNotNegative(amount.value.value, written.value, cursor);
  if (negative !== undefined) return negative;
  const value = toNumber(amount.value.value);
  return parsed(side.text === 'below' ? { below: value } : { above: value });
}
