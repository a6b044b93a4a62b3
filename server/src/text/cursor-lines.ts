/* The lines of a text that is being typed, each by itself: what its indentation, its dash and its key say. */

export interface Line {
  /** Column of the dash. */
  readonly dash: number | null;
  /** Column of what follows the indentation and the dash. */
  readonly column: number;
  readonly key: string | null;
  /** What follows the key; without a key what follows the dash. */
  readonly value: string;
}

const shape = /^( *)(?:(-)( +|$))?(?:([A-Za-z0-9][A-Za-z0-9-]*):(?:\s+(.*)|$)|(.*))?$/s;

/** null: nothing stands there but blanks or a comment. */
export function lineOf(text: string): Line | null {
  if (/^\s*(#.*)?$/.test(text)) return null;
  const match = shape.exec(text);
  if (match === null) return null;
  const [, indent = '', dash, gap = '', key, value = '', rest = ''] = match;
  const column = indent.length + (dash === undefined ? 0 : 1 + gap.length);
  return {
    dash: dash === undefined ? null : indent.length,
    column,
    key: key ?? null,
    value: key === undefined ? rest : value,
  };
}

/** A comment starts with a `#` behind a blank, but not within quotes. */
export function withoutComment(text: string): string {
  let quote: string | null = null;
  for (let at = 0; at < text.length; at++) {
    const [before, character] = [text[at - 1] ?? ' ', text.charAt(at)];
    if (quote !== null) quote = character === quote ? null : quote;
    else if (/["']/.test(character) && /[\s[{,:]/.test(before)) quote = character;
    else if (character === '#' && /\s/.test(before)) return text.slice(0, at);
  }
  return text;
}

/** The keys of the block map around a line, up to its start and down to its end. */
export function mapAround(
  lines: readonly (Line | null)[],
  index: number,
  column: number,
): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  const take = (line: Line): void => {
    if (line.key !== null && line.column === column) found.set(line.key, line.value);
  };
  const own = lines[index];
  if (own != null) take(own);
  const startsItem = own?.dash != null && own.column === column;
  for (const line of startsItem ? [] : lines.slice(0, index).toReversed()) {
    if (line === null) continue;
    if (line.column < column) break;
    take(line);
    if (line.dash !== null && line.column === column) break;
  }
  for (const line of lines.slice(index + 1)) {
    if (line === null) continue;
    if (line.column < column || (line.dash !== null && line.dash < column)) break;
    take(line);
  }
  return found;
}

/** The map of the entry or step that a line belongs to, so many keys further out. */
export function entryAround(
  lines: readonly (Line | null)[],
  index: number,
  column: number,
  keys: number,
): ReadonlyMap<string, string> {
  let [at, limit] = [index, column];
  for (let left = keys; left > 0; left--) {
    const parent = lines.slice(0, at).findLastIndex((line) => line?.key != null && line.column < limit);
    if (parent === -1) break;
    at = parent;
    limit = lines[parent]?.column ?? 0;
  }
  return mapAround(lines, at, limit);
}

/** What the other dashes hold of the list that a line with a dash belongs to. */
export function itemsAround(lines: readonly (Line | null)[], index: number, dash: number): readonly string[] {
  const onOneSide = (side: readonly (Line | null)[]): readonly string[] => {
    const found: string[] = [];
    for (const line of side) {
      if (line === null) continue;
      if ((line.dash ?? line.column) < dash || (line.dash === null && line.column === dash)) break;
      if (line.dash === dash) found.push(line.value.trim());
    }
    return found;
  };
  return [...onOneSide(lines.slice(0, index).toReversed()), ...onOneSide(lines.slice(index + 1))];
}

/** The section of the file that a line stands in, and the column of its entries or dashes. */
export interface SectionAround {
  readonly name: string;
  readonly column: number;
}

/** As `SectionAround`; null above the first key of the file. The line itself says nothing. */
export function sectionAround(lines: readonly (Line | null)[], index: number): SectionAround | null {
  const isRootKey = (line: Line | null | undefined): boolean =>
    line?.key != null && line.dash === null && line.column === 0;
  const start = lines.slice(0, index).findLastIndex(isRootKey);
  const name = lines[start]?.key;
  if (name == null) return null;
  for (const [at, line] of lines.entries()) {
    if (at <= start || at === index || line === null) continue;
    if (isRootKey(line)) break;
    return { name, column: line.dash ?? line.column };
  }
  return { name, column: 2 };
}
