/** Text that is markup already. Only `markup` and `trusted` make it, so that what an author wrote can never become a tag. */
export interface Markup {
  readonly markup: string;
}

export type Content = Markup | string | number | null | readonly Content[];

/**
 * Plain text for element content and for quoted attributes. Characters that neither paper nor a parser may see
 * (control characters, halves of surrogate pairs, non-characters) and those that turn the direction of reading round
 * come out as U+FFFD: a line of a card reads the way it was checked.
 */
export function escapeText(text: string): string {
  return text
    .replaceAll(/\r\n?/g, '\n')
    .replaceAll(unprintable, '\ufffd')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&#39;');
}

const unprintable =
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u200b\u200e\u200f\u2028-\u202e\u2060-\u206f\ufeff\ufffe\uffff]|\p{Cs}/gu;

/** A quoted CSS string in which nothing but letters, digits and spaces stands for itself. */
export function cssString(text: string): string {
  const escaped = Array.from(
    text.replaceAll(unprintable, '\ufffd').replaceAll(/[^\S\u00a0]+/g, ' '),
    (character) =>
      /[A-Za-z0-9 ]/.test(character) ? character : `\\${(character.codePointAt(0) ?? 0xfffd).toString(16)} `,
  );
  return `"${escaped.join('')}"`;
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
