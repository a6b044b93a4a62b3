import type { Figures } from '../../../server/src/protocol/messages.ts';

export interface FiguresText {
  readonly text: string;
  readonly detail: string;
  readonly grade: 'Information' | 'Warning' | 'Error';
}

/** What is said of a document; undefined while it is being worked out. */
export function figuresText(figures: Figures | undefined): FiguresText {
  if (figures === undefined) return { text: 'Checking', detail: '', grade: 'Information' };
  const { steps, readings, errors, warnings, complete } = figures;
  const counts = [count(steps, 'step'), count(readings, 'reading'), count(errors, 'error')];
  if (warnings > 0) counts.push(count(warnings, 'warning'));
  return {
    text: counts.join(', '),
    detail: complete ? '' : 'Not everything could be checked.',
    grade: errors > 0 ? 'Error' : warnings > 0 || !complete ? 'Warning' : 'Information',
  };
}

export function count(number: number, one: string): string {
  return `${number} ${one}${number === 1 ? '' : 's'}`;
}
