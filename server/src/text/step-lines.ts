import { entryOf, nodeAt } from './tree.ts';
import { lineEnd, lineStart, placeToAdd, placesOfItems } from './additions.ts';
import type { Addition } from './additions.ts';
import type { Node } from './tree.ts';
import type { Path, Range } from '../model/where.ts';

/** Where a step stands as lines, for whoever inserts others beside it. */
export interface StepLines {
  /** The offset at which its first line starts. */
  readonly from: number;
  /** The offset behind its last line with anything on it, line break included. */
  readonly to: number;
  /** What stands before the dash. */
  readonly indent: string;
  /** Its `id` on a line of its own, line break included; null where it has none there. */
  readonly idLine: Range | null;
  /** The value of its `wait`. */
  readonly wait: Range | null;
  /** What stands before its keys; null where it is written in braces. */
  readonly keysIndent: string | null;
  /** Where an outcome can be added; null where it has none. */
  readonly outcomes: Addition | null;
  /** Where a name can be added to what it leaves; null where it leaves nothing. */
  readonly leaves: Addition | null;
  /** What to take out for each of the names that it leaves. */
  readonly left: readonly Range[];
}

/** null where the steps are not written as lines with dashes. */
export function stepLines(root: Node | null, text: string, path: Path): StepLines | null {
  const item = nodeAt(root, path);
  if (item?.kind !== 'map') return null;
  const from = lineStart(text, item.range.from);
  const lead = /^([ \t]*)-[ \t]+$/.exec(text.slice(from, item.range.from));
  if (lead === null) return null;
  const last = item.range.from + text.slice(item.range.from, item.range.to).trimEnd().length;
  const id = entryOf(item, 'id');
  const wait = entryOf(item, 'wait')?.value;
  const leaves = entryOf(item, 'leaves');
  return {
    from,
    to: lineEnd(text, last),
    indent: lead[1] ?? '',
    idLine: id === undefined ? null : ownLine(text, { from: id.keyRange.from, to: id.value.range.to }),
    wait: wait?.kind === 'scalar' ? wait.range : null,
    keysIndent: text[item.range.from] === '{' ? null : ' '.repeat(item.range.from - from),
    outcomes: placeToAdd(entryOf(item, 'outcomes')?.value, text),
    leaves: placeToAdd(leaves?.value, text),
    left: leaves === undefined ? [] : placesOfItems(leaves, text),
  };
}

/** The whole line, where nothing stands beside it: a comment would be lost with it. */
function ownLine(text: string, range: Range): Range | null {
  const line = { from: lineStart(text, range.from), to: lineEnd(text, range.to) };
  const before = text.slice(line.from, range.from);
  const after = text.slice(range.to, line.to);
  return before.trim() === '' && after.trim() === '' ? line : null;
}
