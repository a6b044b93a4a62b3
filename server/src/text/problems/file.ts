import { textOf, entryOf } from '../tree.ts';
import type { Node } from '../tree.ts';
import { valueAt } from '../problem.ts';
import type { Problem } from '../problem.ts';

/** A procedure is a few kilobytes; what is larger than this is not one. */
export const largestFile = 1024 * 1024;

// Control characters but tab and line ends; a lone carriage return; halves of surrogate pairs; what a decoder writes
// where bytes are no UTF-8.
const notText =
  /[\u0000-\u0008\u000B\u000C\u000E-\u001F\u007F-\u0084\u0086-\u009F\uFFFD\uFFFE\uFFFF]|\r(?!\n)|[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/;

/** What is wrong before anything can be parsed; then nothing is. */
export function checkBytes(text: string, isParts: boolean): Problem | null {
  if (text.length > largestFile) {
    const what = isParts ? 'parts file' : 'procedure';
    const message = `This file is larger than 1 MiB. A ${what} is a few kilobytes; it has not been read.`;
    return { rule: 'file', at: { range: { from: 0, to: Math.min(1, text.length) } }, message };
  }
  const found = notText.exec(text);
  if (found !== null) {
    const at = { range: { from: found.index, to: found.index + 1 } };
    return { rule: 'file', at, message: describe(found[0]) };
  }
  if (/^[\s\uFEFF]*$/.test(text)) {
    const message = `The file is empty. ${startOf(isParts)}.`;
    return { rule: 'file', at: { range: { from: 0, to: Math.min(1, text.length) } }, message };
  }
  return null;
}

function startOf(isParts: boolean): string {
  return isParts
    ? 'A parts file starts with `format: 1`'
    : 'A procedure starts with `format: 1` and `title: …`';
}

function describe(character: string): string {
  if (character === '\r')
    return 'A carriage return stands here without a line feed. Save the file with ordinary line ends.';
  if (character === '\uFFFD') return 'Bytes that are not UTF-8 stand here. Save the file as UTF-8 text.';
  const code = character.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0');
  return `A character that is not text stands here (U+${code}). Is this a text file, saved as UTF-8?`;
}

/** What the file is, where it has no keys at all. */
export function withoutKeys(isParts: boolean): Problem {
  const message = `${startOf(isParts)}; this file has no such key${isParts ? '' : 's'}.`;
  return { rule: 'file', at: valueAt([]), message };
}

/** Another version is refused with one sentence and never guessed at. */
export function otherVersion(root: Node): Problem | null {
  const version = textOf(entryOf(root, 'format')?.value) ?? '';
  if (!/^\d+(?:\.\d+)?$/.test(version) || version === '1') return null;
  const message = `This file is written in format ${version}, and this version of Ohmwright reads format 1 only.`;
  return { rule: 'file', at: valueAt(['format']), message, subject: version };
}
