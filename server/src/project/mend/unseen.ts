import { nameOf, unseenIn } from '../../text/printable.ts';
import type { Mender } from './candidate.ts';
import { textOf } from './trial.ts';

/** Deletes a character that cannot be seen, wherever it stands in the file. One that is written as an escape is seen. */
export const deleteUnseen: Mender = (analysis, { subject }) => {
  const found = unseenIn(textOf(analysis)).filter(({ character }) => nameOf(character) === subject);
  if (found.length === 0) return [];
  const title = `Delete ${subject ?? ''}${found.length === 1 ? '' : `, ${found.length} times`}`;
  const edits = found.map(({ at, character }) => ({
    range: { from: at, to: at + character.length },
    text: '',
  }));
  return [{ title, changes: [], edits, isChoice: false }];
};
