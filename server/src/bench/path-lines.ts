import type { StepRef } from '../text/where.ts';
import type { ToldHop } from './told-path.ts';
import { follows } from './trace.ts';

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
  const stretches: ToldHop[][] = [];
  for (const hop of hops) {
    const stretch = stretches.at(-1);
    const before = stretch?.at(-1);
    const goesOn =
      before?.weight === 'unimportant' && hop.weight === 'unimportant' && follows(hop.step, before.step);
    if (goesOn) stretch?.push(hop);
    else stretches.push([hop]);
  }
  return stretches.flatMap((stretch): readonly PathLine[] => {
    const [first, last] = [stretch[0], stretch.at(-1)];
    if (first === undefined || last === undefined) return [];
    if (first === last) return [{ kind: 'hop', hop: first }];
    return [{ kind: 'stretch', first: first.step, last: last.step, count: stretch.length }];
  });
}

function stepsOf(line: PathLine): number {
  return line.kind === 'hop' ? 1 : line.count;
}
