import { parseDocument } from 'yaml';
import { shipped } from './corpus.ts';

/** Milliseconds of the processor that something takes. */
export function spentOn(work: () => unknown): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

/** What it takes to parse a text that is known to be good. The middle of several: machines differ, and are busy. */
export function parsingOf(text: string, times: number): number {
  const all = Array.from({ length: times }, () =>
    spentOn(() => parseDocument(text, { prettyErrors: false })),
  );
  return all.sort((a, b) => a - b)[Math.floor(times / 2)] ?? 0;
}

/** For a character, of the text of a shipped procedure again and again. */
export function paceOf(): number {
  const text = (shipped[0] ?? '').repeat(4);
  return parsingOf(text, 5) / text.length;
}
