import { amount } from './amount.ts';

/**
 * Breaks a text into lines of at most `width` characters: at spaces but not before a unit, behind hyphens, and inside a
 * word only where it is longer than a line. Where no layout engine is at hand (a drawing), a line that is too long would be cut off.
 */
export function wrapText(text: string, width: number): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const chunk of chunksOf(text, width)) {
    const joined = line + chunk;
    if (line !== '' && Array.from(joined.trimEnd()).length > width) {
      lines.push(line.trimEnd());
      line = chunk;
    } else line = joined;
  }
  if (line.trimEnd() !== '') lines.push(line.trimEnd());
  return lines.map((one) => one.replaceAll(noBreak, ' '));
}

const noBreak = '\u00a0';

function chunksOf(text: string, width: number): readonly string[] {
  const words =
    text
      .replaceAll(/\s+/g, ' ')
      .trim()
      .split(amount)
      .map((part, index) => (index % 2 === 0 ? part : part.replaceAll(' ', noBreak)))
      .join('')
      .match(/[^ -]*-+ ?|[^ -]+ ?| /g) ?? [];
  return words.flatMap((word) => {
    const characters = Array.from(word);
    const parts: string[] = [];
    for (let start = 0; start < characters.length; start += width)
      parts.push(characters.slice(start, start + width).join(''));
    return parts;
  });
}
