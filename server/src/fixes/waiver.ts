import { lineStart } from '../text/additions.ts';
import type { Mender } from './candidate.ts';
import { textOf } from './trial.ts';

/** Takes a waiver out, and the key with it where it is the only one. */
export const takeWaiverOut: Mender = (analysis, { at, subject }) => {
  const path = at.path.slice(0, 2);
  const lines = at.file === analysis.file ? analysis.stepLines({ path }) : null;
  if (lines === null || subject === undefined) return [];
  const key = analysis.range({ file: at.file, path: ['waivers'], part: 'key' });
  const isOnly = analysis.procedure().value.waivers.length === 1;
  const from = isOnly ? lineStart(textOf(analysis), key.from) : lines.from;
  const title = `Take out the waiver of ${subject}`;
  return [{ title, changes: [], edits: [{ range: { from, to: lines.to }, text: '' }] }];
};
