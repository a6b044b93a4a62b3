import type { Cursor, Written } from './amount.ts';
import { begin, expectEnd, takeSign, takeWritten, toAmount } from './amount.ts';
import { shift, toNumber } from './decimal.ts';
import type { Dimension } from './dimensions.ts';
import { describeQuantity } from './dimensions.ts';
import type { Parsed } from './parsed.ts';
import { failed, parsed } from './parsed.ts';
import type { Accuracy } from './span.ts';

type Term = keyof Accuracy;

/**
 * Reads the error limit of an instrument: `3 % + 0.1 Ω`, `0.8 % + 3 digits`, each term at most once, with or without ±
 * in front. The constant is in the base unit of the dimension.
 */
export function parseAccuracy(text: string, dimension: Dimension): Parsed<Accuracy> {
  const begun = begin(text, dimension, describeQuantity('accuracy', dimension));
  if (!begun.ok) return begun;
  const cursor = begun.value;
  takeSign(cursor, '±');
  const terms = new Map<Term, number>();
  do {
    const written = takeWritten(cursor);
    if (!written.ok) return written;
    const term = readTerm(written.value, cursor);
    if (!term.ok) return term;
    const [name, value] = term.value;
    if (terms.has(name)) return failed('This kind of error is stated twice; add the two.', written.value);
    terms.set(name, value);
  } while (takeSign(cursor, '+') !== undefined);
  const left = expectEnd(cursor);
  if (left !== undefined) return left;
  return parsed({
    fraction: terms.get('fraction') ?? 0,
    constant: terms.get('constant') ?? 0,
    digits: terms.get('digits') ?? 0,
  });
}

function readTerm(written: Written, cursor: Cursor): Parsed<readonly [Term, number]> {
  const { number, word } = written.terms[0] ?? {};
  if (number !== undefined && number.value.coefficient < 0n) {
    return failed('An accuracy is never negative: it holds in both directions.', written);
  }
  if (number !== undefined && word?.text === '%') {
    if (cursor.dimension === 'temperature') {
      return failed(
        `A temperature takes its accuracy in °C, not in percent; expected ${cursor.expected}.`,
        written,
      );
    }
    const fraction = toNumber(shift(number.value, -2));
    if (fraction >= 1) return failed('An error of 100 % or more leaves nothing of the reading.', written);
    return parsed(['fraction', fraction]);
  }
  if (number !== undefined && (word?.text === 'digits' || word?.text === 'digit')) {
    const digits = toNumber(number.value);
    if (!Number.isInteger(digits)) return failed('Digits of the display are counted whole.', written);
    return parsed(['digits', digits]);
  }
  const amount = toAmount(written, cursor);
  return amount.ok ? parsed(['constant', toNumber(amount.value.value)]) : amount;
}
