import { isStage } from '../text/part-kinds.ts';
import type { Procedure, Step } from '../text/procedure.ts';
import { isHighVoltage } from '../text/source-kinds.ts';
import type { Notice, Signal } from './model.ts';
import { closed } from './words.ts';

/**
 * Signal words in the sense of ANSI Z535.6 (from memory), the gravest first: DANGER will, WARNING could cause death or
 * serious injury, CAUTION could cause minor or moderate injury, NOTICE is about damage alone. A NOTE is a remark.
 */
const signals: readonly { readonly signal: Signal; readonly word: string }[] = [
  { signal: 'danger', word: 'DANGER' },
  { signal: 'warning', word: 'WARNING' },
  { signal: 'caution', word: 'CAUTION' },
  { signal: 'notice', word: 'NOTICE' },
  { signal: 'note', word: 'NOTE' },
];

/** The notices of a step in the order in which they are printed, all before the step itself. */
export function noticesOf(step: Step): readonly Notice[] {
  return signals.flatMap(({ signal, word }) => {
    const text = step[signal];
    return text === undefined || text.trim() === '' ? [] : [{ signal, word, lines: [closed(text)] }];
  });
}

/** Why a card is a draft. */
export type DraftMark = 'not-checked' | 'unfinished';

const draftText: Readonly<Record<DraftMark, string>> = {
  'not-checked': 'This is a draft. It has not passed its check. Do not work by it.',
  unfinished: 'This is a draft. Not everything was checked. Do not work by it.',
};

/** The panel that every card begins with. It is not the author's and cannot be left out. */
export function hazardPanel({ sources, parts }: Procedure, draft: DraftMark | null): Notice {
  const isHigh = [...sources.values()].some(isHighVoltage);
  const hasStage = [...parts.values()].some(isStage);
  return {
    signal: 'warning',
    word: 'WARNING',
    lines: [
      ...(hasStage
        ? ['Airbags and belt tensioners are pyrotechnic. One that fires by mistake can injure or kill.']
        : []),
      ...(isHigh
        ? ['High voltage kills. Nothing counts as dead that has not been proven dead on this very job.']
        : []),
      "The vehicle maker's service information and your local rules come first. Where this card differs from them, do not follow the card.",
      'Only people who are trained, and licensed where the law asks for it, may do this work.',
      draft !== null
        ? draftText[draft]
        : 'The order of work on this card was checked against the assumptions printed at its end. That makes no circuit safe: if the vehicle differs from the card, stop.',
    ],
  };
}
