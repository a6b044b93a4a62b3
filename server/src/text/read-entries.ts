import { isKind, kindsOf } from '../format/words.ts';
import type { Kind, KindSection, Section } from '../format/words.ts';
import { didYouMean, suggestion } from './nearest.ts';
import { keyAt, valueAt } from './problem.ts';
import { nothingWritten } from './problems/empty.ts';
import type { Reader } from './reader.ts';
import { entryOf, isEmpty } from './tree.ts';
import type { Entry, MapNode } from './tree.ts';
import type { Path } from '../model/where.ts';

export interface RawEntry {
  readonly id: string;
  readonly path: Path;
  readonly node: MapNode;
}

/** The entries of a section that are maps. What cannot be one is reported and left out. */
export function entriesIn(
  section: Exclude<Section, 'assemblies'> | 'routines',
  { root, report, names }: Reader,
): readonly RawEntry[] {
  const value = entryOf(root, section)?.value;
  if (value?.kind !== 'map') return [];
  return value.entries.flatMap((entry): RawEntry[] => {
    const path = [section, entry.key];
    // A second use of a name is reported; the first one stands.
    if (section !== 'routines' && names.things.get(entry.key)?.path[0] !== section) return [];
    const node = asMap(entry, path, report);
    return node === null ? [] : [{ id: entry.key, path, node }];
  });
}

export interface RawItem {
  readonly path: Path;
  readonly node: MapNode;
}

/** The items of a list that are maps. What cannot be one is reported and left out. */
export function itemsIn(section: string, { root, report }: Reader): readonly RawItem[] {
  const value = entryOf(root, section)?.value;
  if (value?.kind !== 'list') return [];
  return value.items.flatMap((node, index): RawItem[] => {
    const path = [section, index];
    if (node.kind === 'map') return [{ path, node }];
    const message = 'This item takes keys with their values.';
    if (node.kind !== 'unreadable') report({ rule: 'wrong-value', at: valueAt(path), message });
    return [];
  });
}

function asMap({ key, value }: Entry, path: Path, report: Reader['report']): MapNode | null {
  if (value.kind === 'map') return value;
  if (value.kind === 'unreadable') return null;
  if (isEmpty(value)) {
    report(nothingWritten(path, value, 'its keys, such as `{ … }` or indented lines'));
  } else {
    const found = value.kind === 'list' ? 'a list' : 'a text';
    const message = `\`${key}\` takes keys with their values, not ${found}.`;
    report({
      rule: 'wrong-value',
      at: value.kind === 'list' ? keyAt(path) : valueAt(path),
      message,
      subject: key,
    });
  }
  return null;
}

/** The kind of an entry, or null where it is missing, unknown or of a later version, which is then reported. */
export function kindOf<S extends KindSection>(
  section: S,
  { id, path, node }: RawEntry,
  report: Reader['report'],
): Kind<S> | null {
  const known = kindsOf(section);
  const listed = known.map((one) => `\`${one}\``).join(', ');
  const entry = entryOf(node, 'kind');
  if (entry === undefined) {
    const near = node.entries.find(({ key }) => didYouMean(key, ['kind']) !== '');
    const at = keyAt(near === undefined ? path : [...path, near.key]);
    const message =
      near === undefined
        ? `\`${id}\` needs \`kind\`: ${listed}.`
        : `\`${near.key}\` is not a key that is known here. Did you mean \`kind\`?`;
    report({
      rule: near === undefined ? 'missing-key' : 'unknown-key',
      at,
      message,
      subject: near?.key ?? 'kind',
    });
    return null;
  }
  const { value } = entry;
  const at = [...path, 'kind'];
  if (value.kind === 'unreadable') return null;
  if (isEmpty(value)) {
    report(nothingWritten(at, value, listed));
    return null;
  }
  if (value.kind !== 'scalar') {
    report({
      rule: 'wrong-value',
      at: keyAt(at),
      message: `\`kind\` takes one word: ${listed}.`,
      subject: 'kind',
    });
    return null;
  }
  if (isKind(section, value.text)) return value.text;
  const guess = didYouMean(value.text, known);
  const message = `\`${value.text}\` is not a kind that is known here; expected ${listed}.${guess}`;
  const meant = suggestion(value.text, known);
  report({ rule: 'wrong-value', at: valueAt(at), message, subject: value.text, ...meant });
  return null;
}

export function byId<T extends { readonly id: string }>(entries: readonly T[]): ReadonlyMap<string, T> {
  return new Map(entries.map((entry) => [entry.id, entry]));
}
