import { describe, expect, it } from 'vitest';
import { finish } from '../../server/src/bench/work.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { stepNumber } from '../../server/src/text/where.ts';
import { ORACLE_RULES } from '../oracle/compare.ts';
import { foldedProcedure } from '../oracle/folded.ts';
import type { Folded } from '../oracle/folded.ts';
import { oracle } from '../oracle/oracle.ts';
import { reachable } from '../oracle/graph.ts';
import { typedProcedure } from '../oracle/plain-procedure.ts';

/*
 * Procedures with routines against the flat list that they stand for: the oracle goes through the list, the engine reads
 * the calls. A step of a routine is one written step: over its calls the gravest counts, then the shortest.
 */

const seeds = Number(process.env.OHMWRIGHT_SEEDS ?? 500);
const blocks = 20;

interface Line {
  readonly printed: string | null;
  readonly shortest: number | null;
  readonly isError: boolean;
}

/** What the oracle says of the flat list, told by where it is written. */
function expected({ flat, written }: Folded): Map<string, Line[]> {
  const procedure = typedProcedure(flat);
  const reached = reachable(procedure);
  const placesReached = new Set(
    [...reached].flatMap((index) => {
      const step = written[index];
      return step === undefined ? [] : [step.place, ...step.calls.map(({ place }) => place)];
    }),
  );
  const lines = new Map<string, Line[]>();
  const add = (rule: string, place: string | undefined, subject: string | null, line: Line): void => {
    const key = `${rule} ${place ?? '-'} ${subject ?? '-'}`;
    lines.set(key, [...(lines.get(key) ?? []), line]);
  };
  for (const { rule, step, subject, shortest, isError } of oracle(procedure)) {
    const here = step === null ? undefined : written[step - 1];
    const line = { shortest, isError: isError === true, printed: here?.printed ?? null };
    if (rule !== 'unreachable' || here === undefined) add(rule, here?.place, subject, line);
    else {
      const call = here.calls.find(({ place }) => !placesReached.has(place));
      const told = call ?? here;
      if (!placesReached.has(told.place)) add(rule, told.place, null, { ...line, printed: told.printed });
    }
  }
  // What a `stop` may leave is too much only where no call of it leaves that.
  for (const [key, told] of lines) {
    const [rule, place] = key.split(' ');
    const copies = [...reached].filter((index) => written[index]?.place === place);
    if (rule === 'leaves-too-much' && told.length < copies.length) lines.delete(key);
  }
  return lines;
}

function differences(seed: number): readonly string[] {
  const folded = foldedProcedure(seed);
  if (folded === null) return [];
  const id = 'folded.procedure.yaml';
  const analysis = analyse(snapshotOf([{ id, text: folded.text }]), id);
  const lines = expected(folded);
  const found = finish(analysis.findings('order')).filter(({ rule }) => ORACLE_RULES.includes(rule));
  const told = analysis.procedure().findings.map(({ message }) => `text: ${message}`);
  for (const { rule, step, subject, trace } of found) {
    const key = `${rule} ${step?.path.join('/') ?? '-'} ${subject ?? '-'}`;
    const theirs = lines.get(key);
    lines.delete(key);
    if (theirs === undefined) {
      told.push(`engine only: ${key}`);
      continue;
    }
    const gravest = theirs.some(({ isError }) => isError) ? theirs.filter(({ isError }) => isError) : theirs;
    const least = Math.min(...gravest.map(({ shortest }) => shortest ?? Infinity));
    const length = trace?.hops.filter(({ taken }) => taken?.kind !== 'run').length;
    if (least !== Infinity && length !== undefined && least !== length)
      told.push(`${key}: engine ${length} steps, oracle ${least}`);
    const best = gravest.filter(({ shortest }) => (shortest ?? Infinity) === least);
    if (step !== undefined && !best.some(({ printed }) => printed === stepNumber(step)))
      told.push(
        `${key}: engine at ${stepNumber(step)}, oracle at ${best.map((one) => one.printed).join(' or ')}`,
      );
  }
  told.push(...[...lines.keys()].map((key) => `oracle only: ${key}`));
  return told.map((line) => `seed ${seed}: ${line}`);
}

describe(`routines against the list that they stand for, on ${seeds} random procedures`, () => {
  it('folds most of them, some with calls in calls and some with needs', () => {
    const folded = Array.from({ length: 200 }, (_, seed) => foldedProcedure(seed)).filter(
      (one) => one !== null,
    );
    expect(folded.length).toBeGreaterThan(100);
    expect(folded.filter(({ text }) => text.includes('run: inner')).length).toBeGreaterThan(20);
    expect(folded.filter(({ text }) => text.includes('where: connector')).length).toBeGreaterThan(10);
  });

  it.each(Array.from({ length: blocks }, (_, block) => block))('block %i', (block) => {
    const size = Math.ceil(seeds / blocks);
    const here = Array.from({ length: size }, (_, at) => block * size + at);
    expect(here.flatMap(differences)).toEqual([]);
  });
});
