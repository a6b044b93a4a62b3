import { chanceFrom } from '../oracle/chance.ts';
import { fullSize, largeTexts } from './large-texts.ts';
import { kindOf } from './kind.ts';
import { quickAnswer } from './quick-answer.ts';

/** As large as a file may be. The order is mixed, so that a few of them are a fair sample. */
const chance = chanceFrom(1);
const mixed = largeTexts.map((one) => ({ one, at: chance.draw() })).sort((a, b) => a.at - b.at);

export const large = kindOf<{ readonly name: string; readonly text: string }>({
  name: 'large',
  share: 0.2,
  count: mixed.length,
  draw: (_, seed) => {
    const { name = '', make = () => '' } = mixed[seed % mixed.length]?.one ?? {};
    return { name, text: make(fullSize) };
  },
  check: ({ text }, draws) => quickAnswer(text, draws),
  smaller: () => [],
  print: ({ name, text }) => `${name}\n=== begins\n${text.slice(0, 1000)}`,
  size: ({ text }) => text.length,
  patience: 30,
});
