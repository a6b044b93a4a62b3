import type { Range } from '../model/where.ts';

/** A stretch of a file, and the text that takes its place. */
export interface Edit {
  readonly range: Range;
  readonly text: string;
}

/** The text after edits that do not overlap. Edits at one place keep their order. */
export function applyEdits(text: string, edits: readonly Edit[]): string {
  const ordered = edits.map((edit, at) => ({ edit, at }));
  ordered.sort((a, b) => a.edit.range.from - b.edit.range.from || a.at - b.at);
  let result = '';
  let done = 0;
  for (const { edit } of ordered) {
    result += text.slice(done, edit.range.from) + edit.text;
    done = edit.range.to;
  }
  return result + text.slice(done);
}
