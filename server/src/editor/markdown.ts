import { greatestOf } from '../quantity/extremes.ts';
import { printable } from '../model/printable.ts';

/**
 * Text that is Markdown already. Only `markdown`, `codeBlock` and `described` make it, so that nothing an author wrote can
 * become a link, a picture, a heading or a command.
 */
export interface Markdown {
  readonly markdown: string;
}

/** Template literals as Markdown: whatever is put in is escaped, unless it is Markdown itself. */
export function markdown(fixed: TemplateStringsArray, ...values: readonly (Markdown | string)[]): Markdown {
  const render = (value: Markdown | string): string =>
    typeof value === 'string' ? markdownText(value) : value.markdown;
  return { markdown: fixed.map((text, index) => text + render(values[index] ?? '')).join('') };
}

/** A text on one line that Markdown shows as it is. No more is escaped than has a meaning: some clients show the source. */
export function markdownText(text: string): string {
  return (
    printable(text)
      .replace(/\s+/g, ' ')
      .replace(/[\\`*_[\]<>&~|]/g, '\\$&')
      // What is linked without any mark: addresses of pages and of people.
      .replace(/:(?=\/\/)|(?<=www)\.|@/gi, '\\$&')
      // What begins a heading, a list or a line across.
      .replace(/^( ?)(?=#+(?: |$)|[+-](?: |$)|[-=][-= ]*$)/, '$1\\')
      .replace(/^( ?\d{1,9})(?=[.)](?: |$))/, '$1\\')
  );
}

export function markdownLines(lines: readonly Markdown[]): Markdown {
  return { markdown: lines.map((line) => line.markdown).join('\n') };
}

export function markdownList(items: readonly (Markdown | string)[]): Markdown {
  return markdownLines(items.map((item) => markdown`- ${item}`));
}

/** Lines in characters of one width, as they are. */
export function codeBlock(lines: readonly string[]): Markdown {
  const shown = lines.map(printable);
  const ticks = shown.flatMap((line) => line.match(/`+/g) ?? []);
  const longest = greatestOf(
    ticks.map(({ length }) => length),
    2,
  );
  const fence = '`'.repeat(longest + 1);
  return { markdown: [`${fence}text`, ...shown, fence].join('\n') };
}

/** What the format says of itself is Markdown. */
export function described(description: string): Markdown {
  return { markdown: description };
}
