import type { Entry, Node } from './tree.ts';
import type { Path, Range } from '../model/where.ts';

/** What stands at an offset of the text: a key or a value, and the way to it. */
export interface PlaceAt {
  readonly path: Path;
  readonly part: 'key' | 'value';
  readonly range: Range;
  /** The scalar there, as it was written. */
  readonly text: string | null;
}

/** The deepest key or value around an offset; null where there is none, in a comment for one. */
export function placeAt(root: Node | null, offset: number): PlaceAt | null {
  return root === null ? null : within(root, [], offset);
}

function within(node: Node, path: Path, offset: number): PlaceAt | null {
  if (!holds(node.range, offset)) return null;
  switch (node.kind) {
    case 'map':
      return first(node.entries, (entry) => inEntry(entry, path, offset));
    case 'list':
      return first([...node.items.entries()], ([index, item]) => within(item, [...path, index], offset));
    case 'scalar':
      return { path, part: 'value', range: node.range, text: node.text };
    case 'unreadable':
      return null;
  }
}

function inEntry({ key, keyRange, value }: Entry, path: Path, offset: number): PlaceAt | null {
  const here = [...path, key];
  if (holds(keyRange, offset)) return { path: here, part: 'key', range: keyRange, text: key };
  return within(value, here, offset);
}

function holds({ from, to }: Range, offset: number): boolean {
  return from <= offset && offset <= to;
}

function first<T>(items: readonly T[], look: (item: T) => PlaceAt | null): PlaceAt | null {
  for (const item of items) {
    const found = look(item);
    if (found !== null) return found;
  }
  return null;
}
