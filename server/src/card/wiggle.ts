import { formatWait } from '../quantity/print.ts';
import type { Moved, Procedure, Step } from '../model/procedure.ts';
import type { OutcomeName } from '../model/finding.ts';
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
  const isOne = moved.length === 1;
  return {
    ...watched,
    action: [
      'Wiggle ',
      ...things,
      ' by hand for ',
      { strong: formatWait(seconds) },
      isOne ? '. Meanwhile ' : ' in all, one after the other. Meanwhile ',
      ...withinSentence(watched.action),
    ],
    details: [
      ...watched.details,
      [
        `Bend, pull and turn ${isOne ? 'it' : 'each'} gently, as it moves in use. Look at the display all the time.`,
      ],
      [
        'Write down the least and the most that the display shows. If it shows no number at any time, that is the most.',
      ],
    ],
  };
}

/** What begins a sentence, in the middle of one. */
function withinSentence([first, ...rest]: Words): Words {
  if (typeof first !== 'string') return first === undefined ? rest : [first, ...rest];
  return [first.charAt(0).toLowerCase() + first.slice(1), ...rest];
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
