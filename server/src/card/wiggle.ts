import { formatWait } from '../quantity/print.ts';
import type { Moved, Procedure, Step } from '../text/procedure.ts';
import type { OutcomeName } from '../text/finding.ts';
import type { Words } from './model.ts';
import type { Said } from './sentences.ts';
import { listed, thingWords } from './words.ts';

type Wiggle = Extract<Step, { readonly verb: 'wiggle' }>;

/** What is written down of the reading of a `wiggle` step. */
export const leastAndMost: readonly string[] = ['Least', 'Most'];

/** What is moved, for how long, and what is watched: `watched` is what is said where that is read by itself. */
export function sayWiggle(procedure: Procedure, { moved, seconds }: Wiggle, watched: Said): Said {
  const things = listed(
    moved.map((one) => movedWords(procedure, one)),
    'and',
  );
  const time = moved.length > 1 ? ' in all, one after the other' : '';
  return {
    ...watched,
    action: [
      ...watched.action.slice(0, -1),
      ', and wiggle ',
      ...things,
      ' by hand meanwhile, for ',
      { strong: formatWait(seconds) },
      `${time}.`,
    ],
    details: [
      ...watched.details,
      ['Bend, pull and turn it gently, as it moves in use. Look at the display all the time.'],
      [
        'Write down the least and the most that it shows. Where it shows no number at any time, the most is ',
        { strong: 'open' },
        '.',
      ],
    ],
  };
}

function movedWords(procedure: Procedure, { id, side }: Moved): Words {
  return side === undefined ? thingWords(procedure, id) : [...thingWords(procedure, id), `, ${side} side,`];
}

/** What is seen at any time counts before what is seen the whole time. */
const ranks: Readonly<Partial<Record<OutcomeName, number>>> = {
  leak: 0,
  open: 1,
  window: 2,
  below: 3,
  above: 4,
  within: 5,
  outside: 6,
  else: 7,
};

/** In the order in which the lines for the outcomes of a `wiggle` step are read. */
export function rankWhileMoved(name: OutcomeName): number {
  return ranks[name] ?? Infinity;
}

/** How long something has to be seen for an outcome to be taken. */
export function seenFor(name: OutcomeName): string {
  return name === 'within' || name === 'window' ? ' the whole time' : ' at any time';
}
