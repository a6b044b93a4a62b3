import type { Indication } from '../circuit/circuit.ts';
import { formatDigits } from '../quantity/quantity.ts';
import type { Quantity } from '../model/procedure.ts';
import type { Good } from './good.ts';
import { quantityFacts } from '../model/quantity-kinds.ts';

/** What an instrument can show, for people: `1.65 Ω to 2.81 Ω`, `open`, or both. To four digits. */
export function shownInWords(indication: Indication | null, quantity: Quantity = 'resistance'): string {
  if (indication === null) return 'not known';
  const { value, canBeOpen } = indication;
  if (value === null) return 'open';
  const number = `${amountInWords(value.least, quantity)} to ${amountInWords(value.most, quantity)}`;
  return canBeOpen ? `${number}, or open` : number;
}

export function ohmsInWords(ohms: number): string {
  return amountInWords(ohms, 'resistance');
}

/** Ohms or volts, to four digits. */
export function amountInWords(amount: number, quantity: Quantity): string {
  return formatDigits(amount, 4, quantityFacts[quantity].dimension);
}

/** What is to be known of a good reading behind what it shows: ` (an outer bound)`; often nothing. */
export function remarksInWords({ exact, leak, floating }: Good): string {
  const leaks = { never: '', sometimes: ', or reported as a leak', always: ', reported as a leak' };
  const bound = exact ? '' : ' (an outer bound)';
  const ghost = floating ? ' (nothing connects the two points but the instrument)' : '';
  return `${bound}${leaks[leak]}${ghost}`;
}
