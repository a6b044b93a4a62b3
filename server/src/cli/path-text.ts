import { greatestOf } from '../quantity/extremes.ts';
import { pathLines } from '../bench/path-lines.ts';
import { cutAt, tellPath } from '../bench/told-path.ts';
import type { ToldHop } from '../bench/told-path.ts';
import { traceLength } from '../paths/trace.ts';
import type { Trace } from '../model/finding.ts';
import type { Procedure } from '../model/procedure.ts';
import { stepNumber } from '../model/where.ts';
import { plural } from './plural.ts';
import type { Paint } from './terminal.ts';

/** Lines of a path are no longer than this, that they stay lines in a terminal. */
const longest = 80;

/** A path as a table of its steps, the last of them the one that the finding is about; none where it is the only one. */
export function pathText(paint: Paint, procedure: Procedure, trace: Trace | undefined): readonly string[] {
  if (trace === undefined || (traceLength(trace) < 2 && trace.repeatsFrom === undefined)) return [];
  const lines = pathLines(tellPath(procedure, trace)).map((line): readonly [string, Words] => {
    switch (line.kind) {
      case 'hop':
        return [stepNumber(line.hop.step), line.hop];
      case 'stretch':
        return [`${stepNumber(line.first)} to ${stepNumber(line.last)}`, plain(plural(line.count, 'step'))];
      case 'left-out':
        return ['...', plain(`${plural(line.count, 'step')} more`)];
    }
  });
  const width = greatestOf(lines.map(([number]) => number.length));
  return lines.map(([number, words], index) => {
    const room = longest - 4 - width - 2;
    const isLast = index === lines.length - 1;
    return `    ${paint.dim(number.padEnd(width))}  ${painted(paint, cut(words, room), isLast)}`;
  });
}

type Words = Pick<ToldHop, 'words' | 'way' | 'weight'>;

function plain(words: string): Words {
  return { words, way: '', weight: 'unimportant' };
}

/** Cut in the words of the step, never in the way that the path takes from there. */
function cut({ words, way, weight }: Words, room: number): Words {
  const left = Math.max(8, room - way.length);
  const short = words.length <= left ? words : `${cutAt(words, left - 1).trimEnd()}…`;
  return { words: short, way, weight };
}

function painted(paint: Paint, { words, way, weight }: Words, isLast: boolean): string {
  if (isLast) return paint.bold(`${words}${way}`);
  return weight === 'unimportant' ? paint.dim(`${words}${way}`) : words + (way === '' ? '' : paint.cyan(way));
}
