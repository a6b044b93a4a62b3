import { verbsIn } from './read-steps.ts';
import { entryOf, nodeAt, textOf } from './tree.ts';
import type { Node } from './tree.ts';
import type { Path } from '../model/where.ts';

/** What a step does, as a name that stays when lines move; empty where the path leads to no step. */
export type ContentOf = (path: Path) => string;

/** Of a step in a routine the routine stands before it: `make-safe: wait 3 min`. */
export function contentsOf(root: Node | null): ContentOf {
  const known = new Map<string, readonly string[]>();
  return (path) => {
    const list = listHolding(path);
    if (list === null) return '';
    const key = list.join('/');
    const contents = known.get(key) ?? stepContents(nodeAt(root, list));
    known.set(key, contents);
    const content = contents[Number(path[list.length])] ?? '';
    return list.length === 1 ? content : `${list[1] ?? ''}: ${content}`;
  };
}

/** The list of steps that a path leads into: `['steps']` or `['routines', 'make-safe', 'steps']`; null: none. */
export function listHolding(path: Path): Path | null {
  const [first, routine, steps] = path;
  if (first === 'steps' && typeof routine === 'number') return ['steps'];
  if (first === 'routines' && routine !== undefined && steps === 'steps' && typeof path[3] === 'number')
    return [first, routine, steps];
  return null;
}

/** For each item its id, or its verb and what follows; a count tells apart those that are alike. */
function stepContents(list: Node | undefined): readonly string[] {
  const used = new Map<string, number>();
  const items = list?.kind === 'list' ? list.items : [];
  return items.map((item) => {
    const id = textOf(entryOf(item, 'id')?.value);
    if (id !== undefined && id !== '') return id;
    const verb = verbsIn(item)[0] ?? (item.kind === 'map' ? item.entries[0]?.key : undefined) ?? '';
    const base = `${verb} ${writtenBehind(nodeAt(item, [verb])).slice(0, longest)}`.trim();
    const count = (used.get(base) ?? 0) + 1;
    used.set(base, count);
    return count === 1 ? base : `${base} (${count})`;
  });
}

/** So much of a text names its step: every finding about it carries the name. */
const longest = 200;

function writtenBehind(node: Node | undefined): string {
  if (node?.kind === 'list') return node.items.map((item) => textOf(item) ?? '').join(' ');
  return textOf(node) ?? '';
}
