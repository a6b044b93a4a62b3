import { lineOf, withoutComment } from './cursor-lines.ts';

/* Lists and maps in brackets, of which the closing bracket may be missing yet. */

/** An item of a list, in a path of which the index does not matter. */
export const item = '#';

/** The place of the cursor in brackets. */
export interface Flow {
  /** From the key that the outermost bracket belongs to. */
  readonly path: readonly string[];
  readonly part: 'key' | 'value' | 'item';
  readonly key: string;
  readonly typed: string;
  /** The other keys of the map, before and behind the cursor. */
  readonly beside: ReadonlyMap<string, string>;
  /** The other items of the list. */
  readonly items: readonly string[];
  /** The keys of the outermost map. */
  readonly outermost: ReadonlyMap<string, string>;
}

interface Frame {
  readonly isMap: boolean;
  readonly path: readonly string[];
  readonly entries: Map<string, string>;
  readonly items: string[];
  key: string | null;
  /** Where the word starts that is being read. */
  from: number;
  /** What the cursor stands in is not beside it. */
  skips: boolean;
}

/** Follows the brackets from the start of a value over the cursor, as far as they go. null: the cursor is in none. */
export function flowAt(before: string, behind: string, outer: string | null): Flow | null {
  const source = before + behind;
  const frames: Frame[] = [];
  let first: Frame | null = null;
  let found: (Omit<Flow, 'outermost'> & { readonly frame: Frame }) | null = null;
  let quote: string | null = null;
  for (let at = 0; at <= source.length; at++) {
    const frame = frames.at(-1);
    if (at === before.length) {
      if (frame === undefined) return null;
      found = { ...placeIn(frame, source.slice(frame.from, at)), frame };
      frame.skips = true;
    }
    const character = source[at] ?? '';
    const isStart = source.slice(frame?.from ?? 0, at).trim() === '';
    if (quote !== null) quote = character === quote ? null : quote;
    else if (frame !== undefined && isStart && /["']/.test(character)) quote = character;
    else if (isStart && /[[{]/.test(character)) {
      const step = frame === undefined ? outer : frame.isMap ? frame.key : item;
      const path = [...(frame?.path ?? []), ...(step === null ? [] : [step])];
      const isMap = character === '{';
      frames.push({ isMap, path, entries: new Map(), items: [], key: null, from: at + 1, skips: false });
      first ??= frames[0] ?? null;
    } else if (frame === undefined) {
      if (character.trim() !== '') break;
    } else if (/[\]}]/.test(character)) {
      end(frame, source, at);
      frames.pop();
      if (frames.length === 0) break;
    } else if (character === ',') end(frame, source, at);
    else if (character === ':' && frame.isMap && frame.key === null && endsKey(source, at, before.length)) {
      frame.key = bare(source.slice(frame.from, at));
      frame.from = at + 1;
    }
  }
  if (found === null) return null;
  const { frame, ...place } = found;
  return { ...place, beside: frame.entries, items: frame.items, outermost: first?.entries ?? new Map() };
}

function placeIn(frame: Frame, word: string): Omit<Flow, 'outermost'> {
  const { isMap, key, path, entries, items } = frame;
  const part = !isMap ? 'item' : key === null ? 'key' : 'value';
  return { path, part, key: key ?? '', typed: word.trimStart(), beside: entries, items };
}

function endsKey(source: string, at: number, cursor: number): boolean {
  return at + 1 === cursor || /^(?:$|[\s,\]}])/.test(source.slice(at + 1, at + 2));
}

function end(frame: Frame, source: string, at: number): void {
  const word = source.slice(frame.from, at).trim();
  if (frame.skips) frame.skips = false;
  else if (!frame.isMap) {
    if (word !== '') frame.items.push(bare(word));
  } else if (frame.key !== null) frame.entries.set(frame.key, word);
  frame.key = null;
  frame.from = at + 1;
}

function bare(word: string): string {
  return word.trim().replace(/^(["'])(.*)\1$/, '$2');
}

/** What stands in brackets is indented further than the key they belong to, but for the closing bracket. */
export function continuesFlow(text: string, column: number): boolean {
  return /^\s*[\]}]/.test(text) || (/^ */.exec(text)?.[0].length ?? 0) > column;
}

export interface OpenFlow {
  /** The line on which the outermost bracket stands. */
  readonly line: number;
  /** The column of the key it belongs to. */
  readonly column: number;
}

/** The brackets that are open where the lines end. One that nobody closed ends where the indentation goes back. */
export function openFlow(lines: readonly string[]): OpenFlow | null {
  let open: (OpenFlow & { readonly texts: string[] }) | null = null;
  for (const [index, text] of lines.entries()) {
    const isLast = index === lines.length - 1;
    const matters = isLast || text.trim() !== '';
    if (open !== null && matters && !continuesFlow(text, open.column)) open = null;
    if (open !== null) open.texts.push(withoutComment(text));
    else {
      const line = /[[{]/.test(text) ? lineOf(text) : null;
      if (line === null || !/^[[{]/.test(line.value)) continue;
      const column = line.key === null ? (line.dash ?? line.column) : line.column;
      open = { line: index, column, texts: [withoutComment(line.value)] };
    }
    if (flowAt(open.texts.join(' '), '', null) === null) open = null;
  }
  return open === null ? null : { line: open.line, column: open.column };
}
