import { continuesFlow, flowAt, item, openFlow } from './cursor-flow.ts';
import {
  entryAround,
  itemsAround,
  lineOf,
  mapAround,
  sectionAround,
  withoutComment,
} from './cursor-lines.ts';
import type { Line, SectionAround } from './cursor-lines.ts';

/*
 * Where a cursor stands in a text that is being typed, and so is seldom whole: read from the lines and their indentation,
 * not from a tree.
 */

export { item } from './cursor-flow.ts';

export interface CursorPlace {
  /** The map or list that the cursor is in: `['steps', '#']`, `['parts', 'stage-1']`. A step of a routine is a step. */
  readonly path: readonly string[];
  /** The routine that the step stands in. */
  readonly routine: string | null;
  /** Whether a key is typed, or the value of one, or an item of a list. */
  readonly part: 'key' | 'value' | 'item';
  /** Of a value its key; else empty. */
  readonly key: string;
  /** The other keys of the map that the cursor is in, with what is written behind them. */
  readonly beside: ReadonlyMap<string, string>;
  /** The keys of the entry or step that all this belongs to. */
  readonly entry: ReadonlyMap<string, string>;
  /** The other items of the list that the cursor is in. */
  readonly items: readonly string[];
  /** Inside `{ }` or `[ ]`. */
  readonly inFlow: boolean;
  /** Nothing stands before the cursor on its line but blanks and the word that is being typed. */
  readonly isAlone: boolean;
  /** The column of the keys of this map. */
  readonly column: number;
  /** What is typed of the value, from its start to the cursor. */
  readonly typed: string;
  /** The section of the file around the line, wherever in it the cursor is indented to. */
  readonly section: SectionAround | null;
  /** The column of what stands on the next line that is not blank; 0 at the end of the file. */
  readonly columnBelow: number;
  /** The next line is the first of a map or list that stands behind the key of this one. */
  readonly opensBlock: boolean;
}

/** null: in a comment, where nothing is to be offered. */
export function cursorPlace(text: string, offset: number): CursorPlace | null {
  const before = text.slice(0, offset).split(/\r?\n/);
  const [, ...behind] = text.slice(offset).split(/\r?\n/);
  const last = before.at(-1) ?? '';
  if (withoutComment(last) !== last) return null;
  const open = openFlow(before);
  const start = open?.line ?? before.length - 1;
  const typed = before.slice(start).map(withoutComment).join(' ');
  const above = before.slice(0, start).map(lineOf);
  const below = behind.map(lineOf);
  const next = below.find((line) => line !== null);
  const columnBelow = next == null ? 0 : (next.dash ?? next.column);
  const isBlank = typed.trim() === '';
  const column = isBlank
    ? columnOnBlankLine(above, columnBelow, typed.length)
    : (lineOf(typed)?.column ?? typed.length);
  const here = lineOf(typed) ?? { dash: null, column, key: null, value: '' };
  const written = blockPath(above, here.dash, column);
  const path = asStep(written);
  const lines = [...above, { ...here, key: null }, ...below];
  const place = {
    path,
    routine: path === written ? null : (written[1] ?? null),
    beside: mapAround(lines, above.length, column),
    entry: entryAround(lines, above.length, column, path.slice(2).filter((step) => step !== item).length),
    items: here.dash === null || here.key !== null ? [] : itemsAround(lines, above.length, here.dash),
    inFlow: false,
    isAlone: /^ *(?:[A-Za-z][A-Za-z0-9-]*)?$/.test(typed),
    column,
    typed: here.value,
    section: sectionAround(lines, above.length),
    columnBelow,
    opensBlock: columnBelow > column || (columnBelow === column && next?.dash != null),
  };
  if (open !== null) return inFlow(place, here, restOfFlow(text.slice(offset), open.column));
  if (here.key !== null) return { ...place, part: 'value', key: here.key };
  const isStep = path.length === 2 && path[0] === 'steps';
  const isItem = here.dash !== null && path.at(-1) === item && !isStep;
  return { ...place, part: isItem ? 'item' : 'key', key: '' };
}

/** What can be typed into a step of a routine is what can be typed into any step. */
function asStep(path: readonly string[]): readonly string[] {
  return path[0] === 'routines' && path[2] === 'steps' && path.length > 3 ? path.slice(2) : path;
}

function inFlow(place: Omit<CursorPlace, 'part' | 'key'>, here: Line, behind: string): CursorPlace | null {
  const flow = flowAt(here.value, behind, here.key);
  if (flow === null) return null;
  const { outermost, ...inner } = flow;
  const isEntry = place.path.length + (here.key === null ? 0 : 1) === 2;
  const path = [...place.path, ...inner.path];
  return { ...place, ...inner, path, inFlow: true, isAlone: false, entry: isEntry ? outermost : place.entry };
}

function restOfFlow(text: string, column: number): string {
  const [first = '', ...lines] = text.split(/\r?\n/);
  const end = lines.findIndex((line) => line.trim() !== '' && !continuesFlow(line, column));
  return [first, ...(end === -1 ? lines : lines.slice(0, end))].map(withoutComment).join(' ');
}

/**
 * An empty line may be indented anyhow: it continues the map above whose column it reaches, or what stands behind a key
 * that it is indented further than.
 */
function columnOnBlankLine(above: readonly (Line | null)[], columnBelow: number, typed: number): number {
  let inner: Line | null = null;
  for (const line of above.toReversed()) {
    if (line === null) continue;
    if (line.key !== null && line.value === '' && typed > line.column) {
      if (inner !== null) return inner.dash ?? inner.column;
      return columnBelow > line.column ? columnBelow : typed;
    }
    if (line.column <= typed || (line.dash !== null && line.dash < typed)) return line.column;
    inner = line;
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
