import { describe, expect, it } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { difference, windowDifference, windowRuleDifference } from '../oracle/compare.ts';
import { withNetwork } from '../oracle/with-network.ts';

/*
 * Procedures with a network beside their loops, and measurements of either, against the oracle, which merges circuits,
 * follows paths between the probes and tries the corners of what is measured by brute force.
 */

const seeds = Number(process.env.OHMWRIGHT_SEEDS ?? 200);
const blocks = 20;
const seen = new Map<string, number>();

function differences(seed: number): readonly string[] {
  const id = `seed-${seed}.procedure.yaml`;
  const analysis = analyse(snapshotOf([{ id, text: withNetwork(seed) }]), id);
  const { value: procedure, findings: problems } = analysis.procedure();
  const findings = finish(analysis.findings('order'));
  for (const { rule } of findings) seen.set(rule, (seen.get(rule) ?? 0) + 1);
  const { value: readings } = finish(analysis.windows());
  const accepted = readings.readings.flatMap((reading) =>
    reading.good.length === 0
      ? []
      : [
          {
            step: procedure.steps[reading.index]?.number ?? 0,
            loop: reading.of,
            accepted: reading.accepted,
          },
        ],
  );
  return [
    ...problems.map(({ message }) => `text: ${message}`),
    ...difference(findings, procedure),
    ...windowDifference(accepted, procedure),
    ...windowRuleDifference(findings, procedure),
  ].map((line) => `seed ${seed}: ${line}`);
}

describe(`networks against brute force, on ${seeds} random procedures`, () => {
  it.each(Array.from({ length: blocks }, (_, block) => block))('block %i', (block) => {
    const size = Math.ceil(seeds / blocks);
    const here = Array.from({ length: size }, (_, at) => block * size + at);
    expect(here.flatMap(differences)).toEqual([]);
  });

  it('saw the rules of networks broken often', () => {
    for (const rule of [
      'meter-across-live',
      'monitor-in-the-way',
      'live-touch',
      'impossible',
      'repair-not-verified',
      'uncovered',
      'dangling-node',
      'not-preferred',
      'expect-excludes-good',
      'meter-too-coarse',
    ])
      expect([rule, (seen.get(rule) ?? 0) > seeds / 50]).toEqual([rule, true]);
    for (const rule of ['window-differs', 'window-undefined', 'expect-admits-fault'])
      expect([rule, (seen.get(rule) ?? 0) > 0]).toEqual([rule, true]);
  });
});
