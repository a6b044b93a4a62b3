import type { Indication } from '../circuit/circuit.ts';
import { formatQuantity } from '../quantity/quantity.ts';

/** What an instrument can show, for people: `1.65 Ω to 2.81 Ω`, `open`, or both. To four digits. */
export function shownInWords(indication: Indication | null): string {
  if (indication === null) return 'not known';
  const { value, canBeOpen } = indication;
  if (value === null) return 'open';
  const number = `${ohmsInWords(value.least)} to ${ohmsInWords(value.most)}`;
  return canBeOpen ? `${number}, or open` : number;
}

export function ohmsInWords(ohms: number): string {
  return formatQuantity(Number(ohms.toPrecision(4)), 'resistance');
}
