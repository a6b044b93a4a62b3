import type { Path, Range } from '../model/where.ts';

/** A document with positions, free of everything that only YAML knows. Scalars are text as it was written. */
export type Node = ScalarNode | MapNode | ListNode | UnreadableNode;

export interface ScalarNode {
  readonly kind: 'scalar';
  readonly text: string;
  /** Written without quotes. */
  readonly plain: boolean;
  readonly range: Range;
  /** Where the text starts in the file, if its characters stand there one by one; null with escapes or several lines. */
  readonly start: number | null;
  /** Nothing stands here but a comment: `title: #2`. */
  readonly hidden?: boolean;
}

export interface MapNode {
  readonly kind: 'map';
  /** In written order; of a key that is written twice the first. */
  readonly entries: readonly Entry[];
  readonly byKey: ReadonlyMap<string, Entry>;
  readonly range: Range;
}

export interface ListNode {
  readonly kind: 'list';
  readonly items: readonly Node[];
  readonly range: Range;
}

/** Something that a finding has been made about already. */
export interface UnreadableNode {
  readonly kind: 'unreadable';
  readonly range: Range;
}

export interface Entry {
  readonly key: string;
  readonly keyRange: Range;
  readonly value: Node;
}

/** A map with other entries in the place of its own. */
export function withEntries(map: Pick<MapNode, 'range'>, entries: readonly Entry[]): MapNode {
  const byKey = new Map(entries.map((entry) => [entry.key, entry]));
  return { kind: 'map', range: map.range, entries, byKey };
}

/** Nothing stands after the key: `unplug:`, or a word for nothing: `unplug: null` (YAML 1.2.2, 10.3.2). */
export function isEmpty(node: Node): node is ScalarNode & { readonly plain: true } {
  return node.kind === 'scalar' && node.plain && /^(?:null|Null|NULL|~|)$/.test(node.text);
}

export function entryOf(node: Node | null | undefined, key: string): Entry | undefined {
  return node?.kind === 'map' ? node.byKey.get(key) : undefined;
}

export function child(node: Node | null | undefined, step: string | number): Node | undefined {
  if (typeof step === 'string') return entryOf(node, step)?.value;
  return node?.kind === 'list' ? node.items[step] : undefined;
}

export function nodeAt(root: Node | null, path: Path): Node | undefined {
  let node: Node | undefined = root ?? undefined;
  for (const step of path) node = child(node, step);
  return node;
}

/** The text of a scalar; empty where it stands for nothing. */
export function textOf(node: Node | undefined): string | undefined {
  if (node?.kind !== 'scalar') return undefined;
  return isEmpty(node) ? '' : node.text;
}
