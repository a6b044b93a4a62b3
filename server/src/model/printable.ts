/*
 * What an author or a file system wrote, as people see it. A character that cannot be seen, or that turns the direction
 * of writing round, is printed by its number: nothing reads otherwise than it was checked.
 */

/**
 * Beside what Unicode lets a program ignore: controls but tabs and line feeds, halves of surrogate pairs, breaks of lines
 * and paragraphs, marks of annotations, and what is no character.
 */
const hidden = String.raw`[\p{Default_Ignorable_Code_Point}\p{Bidi_Control}\u0000-\u0008\u000B-\u001F\u007F-\u009F\p{Cs}\u2028\u2029\uFFF9-\uFFFB\p{Noncharacter_Code_Point}]`;

/** Between letters, marks and pictures a joiner only forms them: Persian, Hindi, a family. */
const joined = String.raw`(?!\p{Default_Ignorable_Code_Point})[\p{L}\p{M}\p{Emoji_Modifier}\p{Extended_Pictographic}]`;
const joiner = String.raw`${joined}\p{Variation_Selector}?[\u200C\u200D](?=${joined})`;

/** Behind a character that is seen a selector only picks its form. */
const selector = String.raw`[^\p{Default_Ignorable_Code_Point}\p{Cc}\p{Z}]\p{Variation_Selector}`;

const unseen = new RegExp(`${hidden}(?<!${joiner}|${selector})`, 'gu');

/** U+061C, U+200E and U+200F: they only say on which side of a letter a sign beside it stands. */
const directionMark = String.raw`[\u061C\u200E\u200F]`;

const unseenButMarks = new RegExp(`(?!${directionMark})${unseen.source}`, 'gu');

/** Letters of the classes R and AL (Unicode Standard Annex 9), by their scripts; from memory. */
const rightToLeft =
  /(?=\p{L})[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}\p{Script=Samaritan}\p{Script=Mandaic}\p{Script=Adlam}\p{Script=Hanifi_Rohingya}\p{Script=Mende_Kikakui}]/u;

export interface Unseen {
  readonly at: number;
  readonly character: string;
}

/** Where characters stand that are not seen, or that turn text round, in a text. */
export function unseenIn(text: string): readonly Unseen[] {
  return found(text, unseen);
}

/** The same in one text of an author, in which marks of direction may stand beside letters from right to left. */
export function unseenInValue(value: string): readonly Unseen[] {
  return found(value, ofValue(value));
}

function found(text: string, what: RegExp): readonly Unseen[] {
  return Array.from(text.matchAll(what), ({ index, 0: character }) => ({ at: index, character }));
}

function ofValue(value: string): RegExp {
  return writesFromRight(value) ? unseenButMarks : unseen;
}

/** Whether a letter stands in it that is written from right to left. */
export function writesFromRight(text: string): boolean {
  return rightToLeft.test(text);
}

export function isDirectionMark(character: string): boolean {
  return new RegExp(`^${directionMark}$`, 'u').test(character);
}

/** Whether any stands in it. */
export function hasUnseen(text: string): boolean {
  return text.search(unseen) !== -1;
}

/** Whether a character turns the direction of writing round. */
export function turnsText(character: string): boolean {
  return /\p{Bidi_Control}/u.test(character);
}

/** `U+202E`. */
export function nameOf(character: string): string {
  return `U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;
}

/** A text with something else in the place of each character that is not seen or turns text round. */
export function withUnseen(text: string, write: (character: string) => string): string {
  return text.replace(unseen, write);
}

/** With `[U+202E]` in its place. */
export function visible(text: string): string {
  return withUnseen(text, (character) => `[${nameOf(character)}]`);
}

/**
 * One text of an author, with its marks of direction where they may stand. Only for a place that isolates it: elsewhere
 * they could move what stands beside it.
 */
export function visibleValue(value: string): string {
  return value.replace(ofValue(value), (character) => `[${nameOf(character)}]`);
}

/** A visible text on one line. */
export function printable(text: string): string {
  return visible(text.replace(/\r\n?|[\n\t\u0085]/g, ' '));
}
