import type { CheckedEntry } from './check-entry.ts';
import { lookUp } from './names.ts';
import { valueAt } from './problem.ts';
import type { Entry, Id } from '../model/procedure.ts';
import { span } from './quantities.ts';
import type { Reader } from './reader.ts';
import type { Temperature } from '../model/resistance.ts';
import type { Path } from '../model/where.ts';

/** The key `temperature` of a part at a path. null: unreadable. */
export function temperatureOf(
  { values, bad }: CheckedEntry<{ readonly temperature?: string | undefined }>,
  path: Path,
  { names, report }: Reader,
  entries: ReadonlyMap<Id, Entry>,
): Temperature | null {
  const at = [...path, 'temperature'];
  if (bad.has('temperature')) return null;
  const text = values.temperature?.trim();
  if (text === undefined) return 'ambient';
  if (/^[A-Za-z]/.test(text)) {
    if (lookUp(names, text, ['entries'], valueAt(at), report) === null) return null;
    const entry = entries.get(text);
    if (entry === undefined || entry.range === null || entry.accuracy === null) return null;
    return { entry: text };
  }
  const range = span(values.temperature, 'temperature', at, report);
  return range === null ? null : { stated: range };
}
