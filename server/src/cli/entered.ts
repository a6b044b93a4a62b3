import { formatSpan, parseSpan } from '../quantity/quantity.ts';
import type { Id, Procedure } from '../model/procedure.ts';

/** Values in °C by the entry for which they were measured. */
export type Entered = ReadonlyMap<Id, number>;

/**
 * Reads what was measured: `coolant=25`, `coolant=77.5 °C`, one for each entry. What is wrong comes back as one line: of
 * a value outside of its range nothing is known.
 */
export function readEntered(
  { entries }: Procedure,
  words: readonly string[],
): { readonly values: Entered } | { readonly wrong: string } {
  const values = new Map<Id, number>();
  for (const word of words) {
    const equals = word.indexOf('=');
    const id = word.slice(0, Math.max(0, equals)).trim();
    const written = word.slice(equals + 1).trim();
    if (equals <= 0)
      return { wrong: `--entry ${word}: write the entry and what was measured, as in --entry coolant=25` };
    const entry = entries.get(id);
    if (entry === undefined) return { wrong: `--entry ${word}: ${unknown(id, [...entries.keys()])}` };
    if (values.has(id)) return { wrong: `--entry ${word}: there is a value for ${id} already` };
    const value = degrees(written);
    if (value === null)
      return { wrong: `--entry ${word}: ${written} is no temperature; write it as in 25 or 25.5 °C` };
    const { range } = entry;
    if (range === null || value < range.least || value > range.most) {
      const holds = range === null ? 'is not known' : `is ${formatSpan(range, 'temperature')}`;
      return { wrong: `--entry ${word}: the range of ${id} ${holds}, and beyond it no window is known` };
    }
    values.set(id, value);
  }
  return { values };
}

function unknown(id: string, known: readonly Id[]): string {
  return known.length === 0
    ? 'this file has no entries'
    : `there is no entry ${id} in this file, only ${known.join(', ')}`;
}

/** null: it is no single temperature. */
function degrees(written: string): number | null {
  const withUnit = /[\d.]$/.test(written) ? `${written} °C` : written;
  const read = parseSpan(withUnit, 'temperature', true);
  return read.ok && read.value.least === read.value.most ? read.value.nominal : null;
}
