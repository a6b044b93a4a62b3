import type { Figures } from '../../../server/src/protocol/messages.ts';

export interface FiguresText {
  readonly text: string;
  readonly detail: string;
  readonly grade: 'Information' | 'Warning' | 'Error';
}

/** What is said of a document; undefined while it is being worked out. */
export function figuresText(figures: Figures | 'failed' | 'stopped' | undefined): FiguresText {
  if (figures === undefined) return { text: 'Checking', detail: '', grade: 'Information' };
  if (figures === 'failed') return notChecked('Something went wrong in the language server.');
  if (figures === 'stopped') return notChecked('The language server does not run.');
  const { steps, readings, errors, warnings, complete } = figures;
  const counts = [count(steps, 'step'), count(readings, 'reading'), count(errors, 'error')];
  if (warnings > 0) counts.push(count(warnings, 'warning'));
  if (!complete) counts.push('not all checked');
  return {
    text: counts.join(', '),
    detail: complete ? '' : 'Not everything could be checked.',
    grade: errors > 0 ? 'Error' : warnings > 0 || !complete ? 'Warning' : 'Information',
  };
}

function notChecked(why: string): FiguresText {
  return { text: 'Not checked', detail: `${why} The output channel Ohmwright says why.`, grade: 'Error' };
}

export function count(number: number, one: string): string {
  return `${number} ${one}${number === 1 ? '' : 's'}`;
}
