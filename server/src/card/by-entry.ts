import { formatQuantity, formatSpan } from '../quantity/print.ts';
import type { Entry, Id, Procedure } from '../text/procedure.ts';
import type { CardReading, CardTable, Words } from './model.ts';
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

export function tableFor(procedure: Procedure, loop: Id, { rows, quantity }: CardReading): CardTable | null {
  const [first] = rows;
  if (first === undefined) return null;
  const asked = first.entered.map(({ entry }) => procedure.entries.get(entry)?.ask ?? entry);
  return {
    caption: [{ id: loop }, ': take the row of what you measured. On the border of two rows either holds.'],
    headings: [...(asked.length === 1 ? ['Measured'] : asked), 'Should show'],
    rows: rows.map(({ entered, printed }) => ({
      entered: entered.map(({ range }) => range),
      window: printedWindow(printed, quantity).large,
    })),
  };
}
