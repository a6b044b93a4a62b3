import { isOpenAsAWhole, movedBy } from '../bench/moved.ts';
import { hidesOpen } from '../readings/shows.ts';
import type { Reading } from '../readings/reading.ts';
import { subjectInWords } from '../readings/subject.ts';
import { movedInWords } from '../text/step-in-words.ts';
import type { Context, Finder, Seen } from './rule.ts';
import { byReading, known, seen } from './window-sides.ts';
import { either } from './words.ts';

/* Things moved by hand of which the reading that is watched cannot show that they open. */

export const movedUnseenFinder: Finder = { check: (context) => byReading(context, movedUnseen) };

function movedUnseen(context: Context, reading: Reading): Seen | null {
  const step = context.graph.steps[reading.index];
  const moved = step === undefined ? [] : movedBy(step);
  for (const side of known(reading)) {
    const { state } = side.arrival;
    const hidden = moved.filter(
      (one) => !isOpenAsAWhole(one, state.hardware) && hidesOpen(context.procedure, reading, state, one),
    );
    if (hidden.length === 0) continue;
    const what = either(hidden.map(movedInWords));
    const message =
      `If ${what} opens while it is moved, ${subjectInWords(reading)} can stay \`within\`, and nobody sees it. ` +
      'Watch a reading that it changes, or do not name it in `wiggle`.';
    return seen(context, reading, 'moved-unseen', message, [side], ['wiggle']);
  }
  return null;
}
