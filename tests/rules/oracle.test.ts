import { describe, expect, it } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { codeDifference, difference, windowDifference, windowRuleDifference } from '../oracle/compare.ts';
import { randomText } from '../oracle/random-procedure.ts';

/*
 * The oracle is written from the rules alone: it explores the whole bench as one state and shares no code with the
 * watchers. On random procedures both must report the same rules, at the same steps, about the same subjects, by paths
 * of the same length.
 */

const seeds = Number(process.env.OHMWRIGHT_SEEDS ?? 2000);
const blocks = 20;

function differences(seed: number): readonly string[] {
  const id = `seed-${seed}.procedure.yaml`;
  const analysis = analyse(snapshotOf([{ id, text: randomText(seed) }]), id);
  const { value: procedure, findings: problems } = analysis.procedure();
  const findings = finish(analysis.findings('order'));
  const { value: readings } = finish(analysis.windows());
  const numberOf = (index: number): number => procedure.steps[index]?.number ?? 0;
  const codes = readings.codes.flatMap(({ index, codes: set }) =>
    set.map((code) => ({ step: numberOf(index), ...code })),
  );
  const accepted = readings.readings.flatMap((reading) =>
    reading.good.length === 0
      ? []
      : [{ step: numberOf(reading.index), loop: reading.of, accepted: reading.accepted }],
  );
  return [
    ...problems.map(({ message }) => `text: ${message}`),
    ...difference(findings, procedure),
    ...codeDifference(codes, procedure),
    ...windowDifference(accepted, procedure),
    ...windowRuleDifference(findings, procedure),
  ].map((line) => `seed ${seed}: ${line}`);
}

describe(`watchers against the product of everything, on ${seeds} random procedures`, () => {
  it.each(Array.from({ length: blocks }, (_, block) => block))('block %i', (block) => {
    const size = Math.ceil(seeds / blocks);
    const here = Array.from({ length: size }, (_, at) => block * size + at);
    expect(here.flatMap(differences)).toEqual([]);
  });
});
