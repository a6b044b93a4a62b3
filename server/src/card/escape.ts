import { visible, visibleValue } from '../model/printable.ts';
import type { Words } from './model.ts';
import { plainWords } from './words.ts';

/** Text that is markup already. Only `markup` and `trusted` make it, so that what an author wrote can never become a tag. */
export interface Markup {
  readonly markup: string;
}

export type Content = Markup | string | number | null | readonly Content[];

/** Plain text for element content and for quoted attributes, all of it visible: a card reads the way it was checked. */
export function escapeText(text: string): string {
  return entitiesIn(visible(withLineFeeds(text)));
}

/**
 * One text of an author, in pieces as `cut` makes them. It keeps the marks of direction that may stand in it, so it is to
 * be isolated.
 */
export function escapeSaid(text: string, cut: (text: string) => readonly string[]): readonly Markup[] {
  return cut(visibleValue(withLineFeeds(text))).map((piece) => ({ markup: entitiesIn(piece) }));
}

function withLineFeeds(text: string): string {
  return text.replaceAll(/\r\n?/g, '\n');
}

function entitiesIn(text: string): string {
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&#39;');
}

/**
 * Words as a quoted CSS string in which nothing but letters, digits and spaces stands for itself. What the author wrote is
 * isolated: there are no elements in a string.
 */
export function cssString(words: Words): string {
  const pieces = words.map((piece) =>
    typeof piece === 'object' && 'said' in piece
      ? `${cssCode(firstStrongIsolate)}${cssText(piece.said, visibleValue)}${cssCode(popIsolate)}`
      : cssText(plainWords([piece]), visible),
  );
  return `"${pieces.join('')}"`;
}

const [firstStrongIsolate, popIsolate] = [0x2068, 0x2069] as const;

function cssText(text: string, shown: (text: string) => string): string {
  const characters = Array.from(shown(text.replaceAll(/[^\S\u00a0]+/g, ' ')));
  return characters
    .map((one) => (/[A-Za-z0-9 ]/.test(one) ? one : cssCode(one.codePointAt(0) ?? 0xfffd)))
    .join('');
}

function cssCode(point: number): string {
  return `\\${point.toString(16)} `;
}

/** Template literals as markup: whatever is put in is escaped, unless it is markup itself. null prints nothing. */
export function markup(fixed: TemplateStringsArray, ...values: readonly Content[]): Markup {
  return { markup: fixed.map((text, index) => text + render(values[index] ?? null)).join('') };
}

/** Text of our own that is known to be markup: a style sheet. */
export function trusted(text: string): Markup {
  return { markup: text };
}

function render(content: Content): string {
  if (content === null) return '';
  if (typeof content === 'string') return escapeText(content);
  if (typeof content === 'number') return String(content);
  return isMarkup(content) ? content.markup : content.map(render).join('');
}

function isMarkup(content: Markup | readonly Content[]): content is Markup {
  return 'markup' in content;
}
