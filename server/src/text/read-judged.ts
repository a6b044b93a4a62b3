import type { ActionReader } from './action-reader.ts';
import type { Judged, Quantity } from '../model/procedure.ts';
import { expectOf, windowsOf } from './read-expected.ts';
import { outcomesOfOne } from './read-outcomes.ts';

/** What is accepted of one reading, and where it leads. null: something could not be read, and a finding says so. */
export function judgedOf(
  { expect: expected, windows: named }: Readonly<Record<string, unknown>>,
  quantity: Quantity,
  context: ActionReader,
): Judged | null {
  const { path, reader } = context;
  const expect =
    typeof expected === 'string' ? expectOf(expected, quantity, [...path, 'expect'], reader.report) : null;
  const windows = windowsOf(named, quantity, [...path, 'windows'], reader.report);
  const outcomes = outcomesOfOne(context);
  if (windows === null || (typeof expected === 'string' && expect === null)) return null;
  return { expect, windows, outcomes };
}
