import { afterWriting } from './edited.ts';
import { writing } from './edit-inputs.ts';
import type { Writing } from './edit-inputs.ts';
import { kindOf, shorter, shorterText } from './kind.ts';

/** What a writer does in an editor, with the server asked all the while. */
export const edits = kindOf<Writing>({
  name: 'edits',
  share: 0.2,
  draw: writing,
  check: afterWriting,
  *smaller({ start, acts }) {
    for (const less of shorter(acts)) yield { start, acts: less };
    for (const less of shorterText(start)) yield { start: less, acts };
  },
  print: ({ start, acts }) =>
    `${acts.map((act) => JSON.stringify(act)).join('\n')}\n=== on the text\n${start}`,
  size: ({ start, acts }) => start.length + JSON.stringify(acts).length,
  patience: 2000,
});
