import { formatQuantity, formatSpan } from '../quantity/quantity.ts';
import type { Band, EntryRow } from './by-entry.ts';
import type { Reading } from './reading.ts';

/** A row of a table over entered temperatures: `coolant 15..20 °C: 2.31..3.42 kΩ`. */
export function rowInWords({ bands, printed, exact }: EntryRow): string {
  const window = printed === '' ? 'not known' : `${printed}${exact ? '' : ' (an outer bound)'}`;
  return `${bands.map(bandInWords).join(', ')}: ${window}`;
}

function bandInWords({ entry, entered }: Band): string {
  const { least, most } = entered;
  return `${entry} ${least === most ? formatQuantity(least, 'temperature') : formatSpan(entered, 'temperature')}`;
}

/** The entries that a reading depends on: `coolant`; empty where there are none. */
export function entriesInWords({ byEntry: [first] }: Reading): string {
  return first?.bands.map(({ entry }) => entry).join(' and ') ?? '';
}
