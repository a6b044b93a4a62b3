import { isDirectionMark, nameOf, unseenIn, writesFromRight } from '../model/printable.ts';
import type { Mender } from './candidate.ts';
import { textOf } from './trial.ts';

/**
 * Deletes a character that cannot be seen, wherever it stands in the file; marks of direction not in lines with letters
 * from right to left. One that is written as an escape is seen.
 */
export const deleteUnseen: Mender = (analysis, { subject }) => {
  const text = textOf(analysis);
  const found = unseenIn(text).filter(
    ({ at, character }) =>
      nameOf(character) === subject && !(isDirectionMark(character) && writesFromRight(lineAround(text, at))),
  );
  if (found.length === 0) return [];
  const title = `Delete ${subject ?? ''}${found.length === 1 ? '' : `, ${found.length} times`}`;
  const edits = found.map(({ at, character }) => ({
    range: { from: at, to: at + character.length },
    text: '',
  }));
  return [{ title, changes: [], edits, isChoice: false }];
};

function lineAround(text: string, at: number): string {
  const end = text.indexOf('\n', at);
  return text.slice(text.lastIndexOf('\n', at) + 1, end === -1 ? text.length : end);
}
