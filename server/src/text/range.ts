import { child, entryOf } from './tree.ts';
import type { Entry, Node } from './tree.ts';
import { verbsIn } from './read-steps.ts';
import type { Range, Where } from '../model/where.ts';

/**
 * Where something stands in the text. Never longer than a line, always inside the file. At the empty path `within`
 * counts from the start of the file; that is how findings about the text itself say where they are.
 */
export function rangeOf(
  root: Node | null,
  text: string,
  where: Pick<Where, 'path' | 'part' | 'within'>,
): Range {
  if (where.path.length === 0 && where.within !== undefined) {
    return oneLine(text, { from: where.within[0], to: where.within[1] });
  }
  let node: Node | undefined = root ?? undefined;
  let entry: Entry | null = null;
  let item: Node | null = null;
  for (const step of where.path) {
    const below = child(node, step) ?? onlyOne(node, step);
    // What is not there is shown at the nearest thing above it.
    if (below === undefined) return oneLine(text, keyRange(entry, item, root, text));
    entry = typeof step === 'string' ? (entryOf(node, step) ?? null) : null;
    item = typeof step === 'number' ? below : null;
    node = below;
  }
  if (where.part === 'key' || node === undefined) return oneLine(text, keyRange(entry, item, root, text));
  if (where.within !== undefined && node.kind === 'scalar' && node.start !== null) {
    const [from, to] = where.within;
    const length = node.text.length;
    return oneLine(text, {
      from: node.start + Math.min(from, length),
      to: node.start + Math.min(to, length),
    });
  }
  if (node.range.from === node.range.to && entry !== null) return oneLine(text, entry.keyRange);
  return oneLine(text, node.range);
}

/** Where a list is admitted, one value may stand without brackets: it is the first item. */
function onlyOne(node: Node | undefined, step: string | number): Node | undefined {
  return step === 0 && node?.kind === 'scalar' ? node : undefined;
}

/** The key of an entry; of a list item its verb or first key; of the file its first key. */
function keyRange(entry: Entry | null, item: Node | null, root: Node | null, text: string): Range {
  if (entry !== null) return entry.keyRange;
  const node = item ?? root;
  if (node === null) return { from: 0, to: text.length };
  if (node.kind !== 'map') return node.range;
  const [verb] = verbsIn(node);
  const shown = (verb === undefined ? undefined : entryOf(node, verb)) ?? node.entries[0];
  return shown?.keyRange ?? node.range;
}

/** Cut to its first line with anything on it, and widened to a character where it is empty. */
export function oneLine(text: string, range: Range): Range {
  let from = clamp(range.from, 0, text.length);
  const end = clamp(range.to, from, text.length);
  const blank = end - from - text.slice(from, end).trimStart().length;
  if (from + blank < end) from += blank;
  let to = from;
  while (to < end && !isBreak(text.charAt(to))) to += 1;
  if (to > from) return { from, to };
  if (from < text.length && !isBreak(text.charAt(from))) return { from, to: from + 1 };
  // On an empty line: the last character before it, or the first one behind.
  let before = from;
  while (before > 0 && isBreak(text.charAt(before - 1))) before -= 1;
  if (before > 0) return { from: before - 1, to: before };
  let after = from;
  while (after < text.length && isBreak(text.charAt(after))) after += 1;
  return { from: after, to: Math.min(after + 1, text.length) };
}

function isBreak(character: string): boolean {
  return character === '\n' || character === '\r';
}

function clamp(value: number, least: number, most: number): number {
  return Math.min(Math.max(value, least), most);
}
