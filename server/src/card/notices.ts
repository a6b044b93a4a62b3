import { isStage } from '../model/part-kinds.ts';
import type { Procedure, Step } from '../model/procedure.ts';
import { isHighVoltage } from '../model/source-kinds.ts';
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

/** Why a card is a draft: what is gravest of it. `asked`: nothing is known against it, but it was made as one. */
export type DraftMark = 'example' | 'unfinished' | 'errors' | 'asked';

const draftText: Readonly<Record<DraftMark, string>> = {
  example: 'DRAFT. The values on this card are invented examples. Do not use it on a vehicle.',
  unfinished: 'DRAFT. Not everything in this procedure was checked. Do not use it on a vehicle.',
  errors: 'DRAFT. The check found errors in this procedure. Do not use it on a vehicle.',
  asked: 'DRAFT. This procedure has not been released. Do not use it on a vehicle.',
};

/**
 * The panel that every card begins with. It is not the author's and cannot be left out. Its signal word is the gravest
 * of the card (ANSI Z535.6, from memory), so that whoever reads the first page alone knows how grave the rest is.
 */
export function hazardPanel({ sources, parts, steps }: Procedure, draft: DraftMark | null): Notice {
  const isHigh = [...sources.values()].some(isHighVoltage);
  const hasInitiator = [...parts.values()].some(isStage);
  const isGravest = steps.some((step) => noticesOf(step).some(({ signal }) => signal === 'danger'));
  return {
    ...(isGravest
      ? { signal: 'danger' as const, word: 'DANGER' }
      : { signal: 'warning' as const, word: 'WARNING' }),
    lines: [
      ...(hasInitiator ? initiatorLines : []),
      ...(isHigh ? [voltageLine] : []),
      "The vehicle maker's service information and your local rules come first. Where this card differs from them, do not follow the card.",
      'Only people who are trained, and licensed where the law asks for it, may do this work.',
      draft !== null
        ? draftText[draft]
        : 'The order of work on this card was checked against the assumptions printed at its end. This check does not make the circuit safe: if the vehicle differs from the card, stop work.',
    ],
  };
}

/** The test current of a powered device can fire an initiator: common practice, no source. */
const initiatorLines = [
  'Airbags and belt tensioners are pyrotechnic. One that fires by mistake can cause death or serious injury.',
  'Never connect an ohmmeter, a test lamp or any other powered device to an initiator (airbag or belt tensioner): its current can fire the initiator.',
];

const voltageLine =
  'High voltage can cause death. Every high-voltage part counts as live until its circuit is verified to be without voltage on this very job.';
