import { positive } from './quantities.ts';
import type { Reader } from './reader.ts';
import { entryOf, textOf } from './tree.ts';
import type { Node } from './tree.ts';
import type { Path } from '../model/where.ts';

/** The volts of an insulation tester that a part, load or connector bears; null: not stated, or not readable. */
export function withstood(entry: Node, path: Path, report: Reader['report']): number | null {
  const written = textOf(entryOf(entry, 'withstands')?.value);
  if (written === undefined || written === '') return null;
  return positive(written, 'voltage', [...path, 'withstands'], report);
}
