import { parse } from 'yaml';
import type { Finding } from '../../server/src/model/finding.ts';
import { describe, expect, it } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { foldedProcedure } from '../oracle/folded.ts';
import type { Folded } from '../oracle/folded.ts';
import { calledProcedure } from '../oracle/called.ts';
import { walked } from '../oracle/walk.ts';
import { differencesAsWritten } from '../oracle/told-in-routines.ts';
import { typedProcedure } from '../oracle/plain-procedure.ts';

const seeds = Number(process.env.OHMWRIGHT_SEEDS ?? 500);
const blocks = 20;

function foldedDifferences(seed: number): readonly string[] {
  const folded = foldedProcedure(seed);
  return folded === null ? [] : differences(seed, folded);
}

/** null: something in it is wrong as it is written, so that it says nothing of order. */
function calledDifferences(seed: number): readonly string[] | null {
  const { procedure, text } = calledProcedure(seed);
  const analysis = analyse(snapshotOf([{ id: 'called.procedure.yaml', text }]), 'called.procedure.yaml');
  if (analysis.procedure().findings.length > 0) return null;
  return differences(seed, { ...walked(procedure), text });
}

function differences(seed: number, { flat, text, written }: Folded): readonly string[] {
  const id = 'folded.procedure.yaml';
  const analysis = analyse(snapshotOf([{ id, text }]), id);
  const findings = finish(analysis.findings('order'));
  return [
    ...analysis.procedure().findings.map(({ message }) => `text: ${message}`),
    // The flat list has no routines: those that nobody calls are looked for in the text.
    ...differencesAsWritten(
      findings.filter((one) => !isUnusedRoutine(one)),
      typedProcedure(flat),
      written,
    ),
    ...unusedDifferences(
      text,
      findings.filter(isUnusedRoutine).map(({ subject }) => subject),
    ),
  ].map((line) => `seed ${seed}: ${line}`);
}

function isUnusedRoutine({ rule, at }: Finding): boolean {
  return rule === 'unused' && at.path[0] === 'routines';
}

interface Run {
  readonly run?: string;
}

function unusedDifferences(text: string, told: readonly (string | undefined)[]): readonly string[] {
  const file = parse(text) as { steps: Run[]; routines?: Record<string, { steps: Run[] }> };
  const called = new Set<string>();
  const waiting = [...file.steps];
  for (let step = waiting.pop(); step !== undefined; step = waiting.pop()) {
    if (step.run === undefined || called.has(step.run)) continue;
    called.add(step.run);
    waiting.push(...(file.routines?.[step.run]?.steps ?? []));
  }
  const idle = Object.keys(file.routines ?? {}).filter((id) => !called.has(id));
  const [expected, found] = [idle.sort().join(' '), [...told].sort().join(' ')];
  return expected === found ? [] : [`unused routines: expected ${expected}, found ${found}`];
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
    expect(here.flatMap(foldedDifferences)).toEqual([]);
  });
});

describe(`routines as they are written, walked call by call, on ${seeds} random procedures`, () => {
  it('has calls in calls, jumps inside of routines, and needs of every kind', () => {
    const texts = Array.from({ length: 200 }, (_, seed) => calledProcedure(seed).text);
    const having = (pattern: RegExp): number => texts.filter((text) => pattern.test(text)).length;
    expect(having(/^ {6}- run: routine-/m)).toBeGreaterThan(50);
    expect(having(/: own-\d/)).toBeGreaterThan(50);
    for (const kind of ['source', 'load', 'connector', 'side', 'loop'])
      expect([kind, having(new RegExp(`the-${kind}: ${kind}`)) > 10]).toEqual([kind, true]);
  });

  it.each(Array.from({ length: blocks }, (_, block) => block))('block %i', (block) => {
    const size = Math.ceil(seeds / blocks);
    const told = Array.from({ length: size }, (_, at) => calledDifferences(block * size + at));
    const whole = told.filter((one) => one !== null);
    expect(whole.flat()).toEqual([]);
    expect(whole.length).toBeGreaterThan(size / 2);
  });
});
