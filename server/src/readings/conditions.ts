import type { ConditionRanges } from '../circuit/circuit.ts';
import type { Span } from '../quantity/span.ts';
import type { Entry, Procedure } from '../model/procedure.ts';

/** The temperatures that a procedure holds for. What an entry's range says is what is entered: the truth may be off by its accuracy. */
export function conditionsOf(procedure: Procedure): ConditionRanges {
  const entered = new Map<string, Span>();
  for (const entry of procedure.entries.values()) {
    const span = trueRange(entry);
    if (span !== null) entered.set(entry.id, span);
  }
  return { ambient: procedure.ambient, entered };
}

/** The same where the nominal value of every entry was entered: what is known in the moment of one reading. */
export function conditionsAtNominal(procedure: Procedure): ConditionRanges {
  const entered = new Map<string, Span>();
  for (const { id, range, accuracy } of procedure.entries.values()) {
    if (range === null || accuracy === null) continue;
    const { nominal } = range;
    entered.set(id, widened({ least: nominal, nominal, most: nominal }, accuracy));
  }
  return { ambient: procedure.ambient, entered };
}

/** The temperatures in °C that there may be where anything within the range of an entry is entered; null: not known. */
export function trueRange({ range, accuracy }: Entry): Span | null {
  if (range === null || accuracy === null) return null;
  return widened(range, accuracy);
}

/** A temperature can be nothing below absolute zero. */
const absoluteZero = -273.15;

export function widened({ least, nominal, most }: Span, by: number): Span {
  return { least: Math.max(least - by, absoluteZero), nominal, most: most + by };
}
