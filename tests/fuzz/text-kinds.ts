import type { Input } from './input.ts';
import { kindOf, shorterText } from './kind.ts';
import type { KindOf } from './kind.ts';
import { changedText, differences, samenesses } from './same-answer.ts';
import { gentleInput, structureInput } from './structure-inputs.ts';
import { textInput } from './text-inputs.ts';
import { checkFixAll, wholeAnswer } from './whole-answer.ts';

const ofTexts: Pick<KindOf<Input>, 'check' | 'smaller' | 'print' | 'size' | 'patience'> = {
  check: (input, chance) => [
    ...wholeAnswer(input, chance, 3),
    ...(chance.happens(0.1) ? checkFixAll(input) : []),
  ],
  *smaller({ text, parts }) {
    if (parts !== '') yield { text, parts: '' };
    for (const less of shorterText(text)) yield { text: less, parts };
    for (const less of shorterText(parts)) yield { text, parts: less };
  },
  print: ({ text, parts }) => (parts === '' ? text : `${text}\n=== shared.parts.yaml\n${parts}`),
  size: ({ text, parts }) => text.length + parts.length,
  patience: 1000,
};

/** Texts with slips of all sorts in them, and noise. */
export const text = kindOf({ ...ofTexts, name: 'text', share: 1, draw: textInput });

/** Well-formed YAML of any shape. */
export const structure = kindOf({ ...ofTexts, name: 'structure', share: 1, draw: structureInput });

/** Texts that say the same in another way. */
export const same = kindOf<Input & { readonly at: number }>({
  name: 'same',
  share: 1,
  draw: (chance, seed) => ({
    ...(chance.happens(0.8) ? gentleInput(chance) : structureInput(chance)),
    at: seed % samenesses.length,
  }),
  check: (input, chance) => {
    const sameness = samenesses[input.at];
    return sameness === undefined ? [] : differences(input, chance, sameness);
  },
  *smaller({ text: whole, parts, at }) {
    for (const less of shorterText(whole)) yield { text: less, parts, at };
  },
  print: ({ text: whole, at }) => `${whole}\n=== ${samenesses[at]?.name ?? ''}`,
  size: ({ text: whole }) => whole.length,
  patience: 1000,
});

export { changedText };
