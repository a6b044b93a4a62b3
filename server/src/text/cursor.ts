/*
 * Where a cursor stands in a text that is being typed, and so is seldom whole: read from the lines and their indentation,
 * not from a tree. Flow maps and lists are followed on the line of the cursor.
 */

/** An item of a list, in a path of which the index does not matter. */
export const item = '#';

export interface CursorPlace {
  /** The map or list that the cursor is in: `['steps', '#']`, `['parts', 'stage-1']`. */
  readonly path: readonly string[];
  /** Whether a key is typed, or the value of one, or an item of a list. */
  readonly part: 'key' | 'value' | 'item';
  /** Of a value its key; else empty. */
  readonly key: string;
  /** The keys of the map that the cursor is in, with what is written behind them. */
  readonly beside: ReadonlyMap<string, string>;
  /** The keys of the entry or step that all this belongs to. */
  readonly entry: ReadonlyMap<string, string>;
  /** Items that a list on this line holds already. */
  readonly items: readonly string[];
  /** Inside `{ }` or `[ ]`. */
  readonly inFlow: boolean;
  /** Only blanks stand before the cursor on its line. */
  readonly onBlankLine: boolean;
  /** The column of the keys of this map. */
  readonly column: number;
  /** What is typed of the value, from its start to the cursor. */
  readonly typed: string;
}

interface Line {
  /** Column of the dash. */
  readonly dash: number | null;
  /** Column of what follows the indentation and the dash. */
  readonly column: number;
  readonly key: string | null;
  readonly value: string;
}

const shape = /^( *)(?:(-)( +|$))?(?:([A-Za-z0-9][A-Za-z0-9-]*):(?:\s+(.*)|$)|(.*))?$/;

function lineOf(text: string): Line | null {
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

/** null: in a comment, where nothing is to be offered. */
export function cursorPlace(text: string, offset: number): CursorPlace | null {
  const before = text.slice(0, offset).split(/\r?\n/);
  const typed = before.at(-1) ?? '';
  if (/(^|\s)#/.test(typed.replace(/'[^']*'|"[^"]*"/g, ''))) return null;
  const above = before.slice(0, -1).map(lineOf);
  const below = text.slice(offset).split(/\r?\n/).slice(1).map(lineOf);
  const isBlank = typed.trim() === '';
  const column = isBlank ? columnOnBlankLine(above, typed.length) : (lineOf(typed)?.column ?? typed.length);
  const here = lineOf(typed) ?? { dash: null, column, key: null, value: '' };
  const path = blockPath(above, here.dash, column);
  const lines = [...above, { ...here, key: null }, ...below];
  const beside = mapAround(lines, above.length, column);
  const base = { path, beside, entry: entryAround(lines, above.length, column, path), items: [] };
  const place = { ...base, inFlow: false, onBlankLine: isBlank, column, typed: here.value };
  if (here.key === null) {
    const isItem = here.dash !== null && path.at(-1) === item && path[0] !== 'steps';
    return { ...place, part: isItem ? 'item' : 'key', key: '' };
  }
  const value = { ...place, part: 'value', key: here.key } as const;
  return inFlow(value) ?? value;
}

/** An empty line may be indented anyhow: it continues the map above whose column it reaches. */
function columnOnBlankLine(above: readonly (Line | null)[], typed: number): number {
  for (const line of above.toReversed()) {
    if (line === null) continue;
    if (line.key !== null && line.value === '' && typed > line.column) return typed;
    if (line.column <= typed) return line.column;
  }
  return typed;
}

function blockPath(above: readonly (Line | null)[], dash: number | null, column: number): readonly string[] {
  const path: string[] = dash === null ? [] : [item];
  // A key above is further to the left; above an item it may stand as far to the left as the dash.
  let [keysLeftOf, dashesLeftOf] = dash === null ? [column, column] : [dash + 1, dash];
  for (const line of above.toReversed()) {
    if (line === null) continue;
    if (line.key !== null && line.column < keysLeftOf && (line.dash === null || line.dash < dashesLeftOf)) {
      path.unshift(line.key);
      keysLeftOf = line.column;
      dashesLeftOf = line.column;
    }
    if (line.dash !== null && line.dash < dashesLeftOf && line.column >= keysLeftOf) {
      path.unshift(item);
      keysLeftOf = line.dash + 1;
      dashesLeftOf = line.dash;
    }
  }
  return path;
}

/** The keys of the block map around a line, up to its start and down to its end. */
function mapAround(
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

/** The map of the entry or step: it stands two levels below the root. */
function entryAround(
  lines: readonly (Line | null)[],
  index: number,
  column: number,
  path: readonly string[],
): ReadonlyMap<string, string> {
  let [at, limit] = [index, column];
  for (let depth = path.length; depth > 2; depth--) {
    const parent = lines.slice(0, at).findLastIndex((line) => line?.key != null && line.column < limit);
    if (parent === -1) break;
    at = parent;
    limit = lines[parent]?.column ?? 0;
  }
  return mapAround(lines, at, limit);
}

interface Frame {
  readonly isMap: boolean;
  readonly entries: Map<string, string>;
  readonly items: string[];
  key: string | null;
  word: string;
}

/** Follows brackets on the line; null where none is open. */
function inFlow(place: CursorPlace): CursorPlace | null {
  const frames: Frame[] = [];
  const path: string[] = [...place.path];
  let outer: string | null = place.key;
  const end = (frame: Frame | undefined): void => {
    if (frame === undefined) return;
    const word = frame.word.trim();
    if (frame.isMap && frame.key !== null) frame.entries.set(frame.key, word);
    if (!frame.isMap && word !== '') frame.items.push(word);
    frame.key = null;
    frame.word = '';
  };
  for (const character of place.typed) {
    const frame = frames.at(-1);
    if (character === '{' || character === '[') {
      path.push(frame?.isMap === false ? item : (frame?.key ?? outer ?? ''));
      outer = null;
      frames.push({ isMap: character === '{', entries: new Map(), items: [], key: null, word: '' });
    } else if (character === '}' || character === ']') {
      frames.pop();
      path.pop();
    } else if (character === ',') end(frame);
    else if (character === ':' && frame?.isMap === true && frame.key === null) {
      frame.key = frame.word.trim();
      frame.word = '';
    } else if (frame !== undefined) frame.word += character;
  }
  const frame = frames.at(-1);
  if (frame === undefined) return null;
  const typed = frame.word.trimStart();
  const inside = { ...place, path, inFlow: true, beside: frame.entries, items: frame.items, typed };
  if (!frame.isMap) return { ...inside, part: 'item', key: '' };
  return frame.key === null
    ? { ...inside, part: 'key', key: '' }
    : { ...inside, part: 'value', key: frame.key };
}
