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
  /** All that has been read of it, with its brackets. */
  text: string;
  /** The word that is being read. */
  word: string;
  key: string | null;
  /** What the cursor stands in is not beside it. */
  skips: boolean;
}

/** Brackets that are followed piece by piece, the outermost first. */
interface Following {
  /** The key that the outermost bracket belongs to. */
  readonly outer: string | null;
  readonly frames: Frame[];
  quote: string | null;
}

/** More levels than the format knows anywhere. */
const deepest = 32;

/** Follows brackets over a further piece of text; false once the outermost is closed, or where there is none. */
function follow(following: Following, text: string): boolean {
  const { frames, outer } = following;
  for (let at = 0; at < text.length; at++) {
    const character = text.charAt(at);
    const frame = frames.at(-1);
    const isBlank = character.trim() === '';
    if (following.quote === null && /[[{]/.test(character) && (frame?.word ?? '') === '') {
      if (frames.length === deepest) return false;
      const step = frame === undefined ? outer : frame.isMap ? frame.key : item;
      frames.push(frameOf(character, [...(frame?.path ?? []), ...(step === null ? [] : [step])]));
      continue;
    }
    if (frame === undefined) {
      if (isBlank) continue;
      return false;
    }
    frame.text += character;
    if (following.quote !== null) {
      if (character === following.quote) following.quote = null;
    } else if (/["']/.test(character) && frame.word === '') following.quote = character;
    else if (/[\]}]/.test(character)) {
      end(frame);
      frames.pop();
      const around = frames.at(-1);
      if (around === undefined) return false;
      around.text += frame.text;
      around.word += frame.text;
      continue;
    } else if (character === ',') {
      end(frame);
      continue;
    } else if (character === ':' && frame.isMap && frame.key === null && endsKey(text.charAt(at + 1))) {
      frame.key = bare(frame.word);
      frame.word = '';
      continue;
    }
    // A word starts behind its blanks.
    if (!isBlank || frame.word !== '') frame.word += character;
  }
  return true;
}

function frameOf(bracket: string, path: readonly string[]): Frame {
  const isMap = bracket === '{';
  return { isMap, path, entries: new Map(), items: [], text: bracket, word: '', key: null, skips: false };
}

/** Follows the brackets from the start of a value over the cursor, as far as they go. null: the cursor is in none. */
export function flowAt(before: string, behind: string, outer: string | null): Flow | null {
  const following: Following = { outer, frames: [], quote: null };
  const isOpen = follow(following, before);
  const [first] = following.frames;
  const frame = following.frames.at(-1);
  if (!isOpen || first === undefined || frame === undefined) return null;
  const place = placeIn(frame);
  frame.skips = true;
  follow(following, behind);
  return { ...place, beside: frame.entries, items: frame.items, outermost: first.entries };
}

function placeIn({ isMap, key, path, word }: Frame): Pick<Flow, 'path' | 'part' | 'key' | 'typed'> {
  const part = !isMap ? 'item' : key === null ? 'key' : 'value';
  return { path, part, key: key ?? '', typed: word };
}

/** Behind the colon of a key stands a blank or what ends the value; the cursor may be there already. */
function endsKey(next: string): boolean {
  return /^(?:$|[\s,\]}])/.test(next);
}

function end(frame: Frame): void {
  const word = frame.word.trim();
  if (frame.skips) frame.skips = false;
  else if (!frame.isMap) {
    if (word !== '') frame.items.push(bare(word));
  } else if (frame.key !== null) frame.entries.set(frame.key, word);
  frame.key = null;
  frame.word = '';
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
  let open: (OpenFlow & { readonly following: Following }) | null = null;
  for (const [index, text] of lines.entries()) {
    const isLast = index === lines.length - 1;
    const matters = isLast || text.trim() !== '';
    if (open !== null && matters && !continuesFlow(text, open.column)) open = null;
    if (open !== null) {
      // The lines are one text with a blank between them.
      if (!follow(open.following, ` ${withoutComment(text)}`)) open = null;
      continue;
    }
    const line = /[[{]/.test(text) ? lineOf(text) : null;
    if (line === null || !/^[[{]/.test(line.value)) continue;
    const column = line.key === null ? (line.dash ?? line.column) : line.column;
    const following: Following = { outer: null, frames: [], quote: null };
    if (follow(following, withoutComment(line.value))) open = { line: index, column, following };
  }
  return open === null ? null : { line: open.line, column: open.column };
}
