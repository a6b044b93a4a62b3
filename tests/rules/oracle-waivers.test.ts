import { describe, expect, it } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { WAIVER_RULES } from '../oracle/coverage.ts';
import { oracle } from '../oracle/oracle.ts';
import { isWaived, ofWaivers } from '../oracle/waivers.ts';
import { windowRules } from '../oracle/windows.ts';
import { withWaivers } from '../oracle/with-waivers.ts';

/* Which findings waivers mark, and which waivers are none, against what the oracle finds. */

const seeds = Number(process.env.OHMWRIGHT_SEEDS ?? 400);
const blocks = 10;
const seen = new Map<string, Set<number>>();

function differences(seed: number): readonly string[] {
  const id = `seed-${seed}.procedure.yaml`;
  const analysis = analyse(snapshotOf([{ id, text: withWaivers(seed) }]), id);
  const { value: procedure, findings: problems } = analysis.procedure();
  const isOfWaivers = (rule: string): boolean => WAIVER_RULES.some((one) => one === rule);
  const ours = finish(analysis.findings('order')).flatMap(({ rule, step, subject, waived, at }) => {
    if (isOfWaivers(rule)) return [`${rule} of waiver ${at.path[1] ?? '-'}`];
    return waived === undefined ? [] : [`waived: ${rule} of ${subject ?? '-'} at ${step?.number ?? '-'}`];
  });
  // What the engine tells beyond the oracle of windows that no sound circuit reaches is waived all the same.
  const found = [
    ...oracle(procedure),
    ...windowRules(procedure, 'anywhere').map(({ rule, step, loop }) => ({ rule, step, subject: loop })),
  ];
  const theirs = [
    ...found
      .filter((one) => isWaived(procedure, one))
      .map(({ rule, step, subject }) => `waived: ${rule} of ${subject ?? '-'} at ${step ?? '-'}`),
    ...ofWaivers(procedure, found).map(({ rule, at }) => `${rule} of waiver ${at}`),
  ];
  for (const line of theirs) {
    const kind = line.split(/:? /)[0] ?? '';
    seen.set(kind, (seen.get(kind) ?? new Set()).add(seed));
  }
  return [
    ...problems.map(({ message }) => `text: ${message}`),
    ...ours.filter((line) => !theirs.includes(line)).map((line) => `engine only: ${line}`),
    ...theirs.filter((line) => !ours.includes(line)).map((line) => `oracle only: ${line}`),
  ].map((line) => `seed ${seed}: ${line}`);
}

describe(`waivers against brute force, on ${seeds} random procedures`, () => {
  it.each(Array.from({ length: blocks }, (_, block) => block))('block %i', (block) => {
    const size = Math.ceil(seeds / blocks);
    const here = Array.from({ length: size }, (_, at) => block * size + at);
    expect(here.flatMap(differences)).toEqual([]);
  });

  it('has used, unused and refused ones in at least a tenth of them each', () => {
    for (const kind of ['waived', 'unused-waiver', 'waiver-refused'])
      expect([kind, (seen.get(kind)?.size ?? 0) >= seeds / 10]).toEqual([kind, true]);
  });
});
