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

/** Where characters stand that are not seen, or that turn text round, in a text. */
export function unseenIn(text: string): readonly { readonly at: number; readonly character: string }[] {
  return Array.from(text.matchAll(unseen), ({ index, 0: character }) => ({ at: index, character }));
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

/** A visible text on one line. */
export function printable(text: string): string {
  return visible(text.replace(/\r\n?|[\n\t\u0085]/g, ' '));
}
