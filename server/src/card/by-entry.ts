import { formatQuantity, formatSpan } from '../quantity/print.ts';
import type { Entry, Procedure } from '../model/procedure.ts';
import type { CardReading, CardTable, Words } from './model.ts';
import { subjectWords } from './words.ts';
import { printedWindow } from './windows.ts';

/* Windows that depend on a temperature that is measured and entered: a table over it. */

/** The entries on which the readings of a step depend, each once. */
export function askedFor(procedure: Procedure, readings: readonly CardReading[]): readonly Entry[] {
  const ids = new Set(readings.flatMap(({ rows: [row] }) => row?.entered.map(({ entry }) => entry) ?? []));
  return [...procedure.entries.values()].filter(({ id }) => ids.has(id));
}

/** What to do before reading. */
export function toEnter(procedure: Procedure, readings: readonly CardReading[]): readonly Words[] {
  return askedFor(procedure, readings).map(({ ask, range, accuracy }): Words => {
    const to = accuracy === null ? '' : `, to ± ${formatQuantity(accuracy, 'temperature')}`;
    const within =
      range === null ? '' : ` The table holds for ${formatSpan(range, 'temperature')}; outside of it, stop.`;
    return [{ strong: 'Measure first and write down: ' }, { said: ask }, `${to}.${within}`];
  });
}

/** A table of more rows than this stands in the annex: a step has to keep to its page. */
const mostAtStep = 20;

/** The tables of the annex, each once however many steps read by it. */
export function annexOf(procedure: Procedure, readings: readonly CardReading[]): Annex {
  const long = readings.filter(({ rows }) => rows.length > mostAtStep);
  const byKey = new Map(long.map((reading) => [keyOf(reading), reading]));
  return new Map(
    [...byKey].map(([key, reading], index) => [key, tableOf(procedure, reading, `Table ${index + 1}`)]),
  );
}

/** By what is read and its windows. */
export type Annex = ReadonlyMap<string, CardTable>;

function keyOf({ of, rows }: CardReading): string {
  return JSON.stringify([of, rows]);
}

/** The table of a reading: at its step, or by its title in the annex; null: it has none. */
export function tableFor(
  procedure: Procedure,
  annex: Annex,
  reading: CardReading,
): { readonly here: CardTable } | { readonly title: string } | null {
  if (reading.rows.length === 0) return null;
  const title = annex.get(keyOf(reading))?.title ?? null;
  return title === null ? { here: tableOf(procedure, reading, null) } : { title };
}

/** Nobody leafs back and forth: the window of the row is written down at the step. */
export function rowsToCopy(annex: Annex, readings: readonly CardReading[]): readonly string[] {
  return readings.flatMap((reading) => {
    const title = annex.get(keyOf(reading))?.title;
    return title === undefined || title === null ? [] : [`Window of the row in ${title}`];
  });
}

function tableOf(procedure: Procedure, { of, rows, quantity }: CardReading, title: string | null): CardTable {
  const entries = (rows[0]?.entered ?? []).map(({ entry }) => procedure.entries.get(entry));
  const asked = entries.map((entry) => entry?.ask ?? '');
  return {
    title,
    caption: [
      ...subjectWords(of),
      `: use the row of the value that you measured. At the limit of two rows, use either. ${widening(entries)}`,
    ],
    headings: [...(asked.length === 1 ? ['Measured'] : asked), 'Should show'],
    rows: rows.map(({ entered, printed }) => ({
      entered: entered.map(({ range }) => range),
      window: printedWindow(printed, quantity).large,
    })),
  };
}

/** What makes a row wider than the circuit is at one temperature. */
function widening(entries: readonly (Entry | undefined)[]): string {
  const errors = entries.flatMap((entry) =>
    entry === undefined || entry.accuracy === null || entry.accuracy === 0
      ? []
      : [`± ${formatQuantity(entry.accuracy, 'temperature')}`],
  );
  const and = errors.length === 0 ? '' : ` and for the error of the measurement (${errors.join(', ')})`;
  return `A row allows for every value in it${and}.`;
}
