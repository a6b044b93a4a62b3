import type { Mender } from './candidate.ts';
import { textOf } from './trial.ts';

/** Puts in the word that was probably meant. Which thing an id was to name is for the author to say. */
export const putWord: Mender = (analysis, { at, rule, suggestion }) => {
  if (suggestion === undefined || at.file !== analysis.file) return [];
  const range = analysis.range(at);
  const written = textOf(analysis).slice(range.from, range.to);
  if (!/^[\w-]+$/.test(written)) return [];
  const title = `Change \`${written}\` to \`${suggestion}\``;
  return [{ title, changes: [], edits: [{ range, text: suggestion }], isChoice: rule === 'unknown-id' }];
};
