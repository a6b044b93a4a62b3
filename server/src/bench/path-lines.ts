import type { StepRef } from '../model/where.ts';
import type { ToldHop } from './told-path.ts';
import { follows } from '../paths/trace.ts';

/** A line of a path that is shown step by step. */
export type PathLine =
  | { readonly kind: 'hop'; readonly hop: ToldHop }
  /** Unimportant steps that follow one another. */
  | { readonly kind: 'stretch'; readonly first: StepRef; readonly last: StepRef; readonly count: number }
  /** Steps in the middle of a long path that are not shown. */
  | { readonly kind: 'left-out'; readonly count: number };

/** Of a long path the lines at its start and its end are shown. */
const shownLines = { first: 8, last: 12 };

/** A path with its unimportant stretches folded, and its middle left out where it is long. */
export function pathLines(hops: readonly ToldHop[]): readonly PathLine[] {
  const lines = folded(hops);
  const { first, last } = shownLines;
  if (lines.length <= first + last + 1) return lines;
  const count = lines.slice(first, -last).reduce((sum, line) => sum + stepsOf(line), 0);
  return [...lines.slice(0, first), { kind: 'left-out', count }, ...lines.slice(-last)];
}

function folded(hops: readonly ToldHop[]): readonly PathLine[] {
  const stretches: { readonly first: ToldHop; last: ToldHop; count: number }[] = [];
  for (const hop of hops) {
    const before = stretches.at(-1);
    const goesOn =
      before?.last.weight === 'unimportant' &&
      hop.weight === 'unimportant' &&
      follows(hop.step, before.last.step);
    if (!goesOn) stretches.push({ first: hop, last: hop, count: 1 });
    else {
      before.last = hop;
      before.count += 1;
    }
  }
  return stretches.map(({ first, last, count }) =>
    count === 1
      ? { kind: 'hop', hop: first }
      : { kind: 'stretch', first: first.step, last: last.step, count },
  );
}

function stepsOf(line: PathLine): number {
  return line.kind === 'hop' ? 1 : line.count;
}
