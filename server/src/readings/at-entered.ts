import type { Id, Procedure } from '../model/procedure.ts';
import { multiplesIn, rowOf } from './by-entry.ts';
import type { Band, EntryRow } from './by-entry.ts';
import type { Reading } from './reading.ts';

/* The window of a reading at values that are entered: narrower than any row of a table, which holds for many values. */

/**
 * The window where these values are entered, °C; null where it depends on none of them. Of another entry that it depends
 * on, anything within its range may be entered. Out of the range of an entry nothing is known.
 */
export function windowAt(
  procedure: Procedure,
  reading: Reading,
  values: ReadonlyMap<Id, number>,
): EntryRow | null {
  const bands = (reading.byEntry[0]?.bands ?? []).flatMap(({ entry }): readonly Band[] => {
    const value = values.get(entry);
    return value === undefined ? [] : [{ entry, entered: { least: value, nominal: value, most: value } }];
  });
  const resolution = reading.instrument?.resolution ?? null;
  if (bands.length === 0 || resolution === null) return null;
  const benches = reading.good.map(({ arrival }) => arrival.state);
  return rowOf(procedure, reading, benches, resolution, bands);
}

/** So many values are shown to somebody who has entered none yet. */
const mostValues = 12;

const steps = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];

/** The window at round values over the range of each entry, to be looked over; empty where it depends on none. */
export function windowsOver(procedure: Procedure, reading: Reading): readonly EntryRow[] {
  const entries = (reading.byEntry[0]?.bands ?? []).map(({ entry }) => entry);
  const each = Math.floor(mostValues ** (1 / Math.max(1, entries.length)));
  const combined = entries.reduce<readonly ReadonlyMap<Id, number>[]>(
    (sofar, entry) =>
      roundValues(procedure, entry, each).flatMap((value) =>
        sofar.map((values) => new Map([...values, [entry, value]])),
      ),
    [new Map<Id, number>()],
  );
  return combined.flatMap((values) => windowAt(procedure, reading, values) ?? []);
}

/** The ends of the range of an entry and round values between, no more than so many. */
function roundValues({ entries }: Procedure, entry: Id, most: number): readonly number[] {
  const range = entries.get(entry)?.range ?? null;
  if (range === null) return [];
  const ends = range.least === range.most ? [range.least] : [range.least, range.most];
  for (const step of steps) {
    const between = multiplesIn(range, step);
    if (between.length + ends.length <= most) return [...ends, ...between].sort((a, b) => a - b);
  }
  return ends;
}
