import { describe, expect, it } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { difference, windowDifference, windowRuleDifference } from '../oracle/compare.ts';
import { withPower } from '../oracle/with-power.ts';

/*
 * What is powered, charged, held to an insulation tester, above 30 V or of high voltage, against the oracle, which
 * merges points until nothing changes, keeps what each point holds in one state and lets time go by in pieces.
 */

const seeds = Number(process.env.OHMWRIGHT_SEEDS ?? 200);
const blocks = 20;
const seen = new Map<string, number>();

function differences(seed: number): readonly string[] {
  const id = `seed-${seed}.procedure.yaml`;
  const analysis = analyse(snapshotOf([{ id, text: withPower(seed) }]), id);
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

describe(`power against brute force, on ${seeds} random procedures`, () => {
  it.each(Array.from({ length: blocks }, (_, block) => block))('block %i', (block) => {
    const size = Math.ceil(seeds / blocks);
    const here = Array.from({ length: size }, (_, at) => block * size + at);
    expect(here.flatMap(differences)).toEqual([]);
  });

  it('saw the rules of power broken often', () => {
    for (const rule of [
      'powered-measurement',
      'insulation-on-electronics',
      'work-under-power',
      'meter-across-live',
      'short-wait',
      'live-touch',
      'not-proven-dead',
      'proof-too-early',
      'wait-without-effect',
      'half-open',
      'no-wait',
      'zero-wait',
    ])
      expect([rule, (seen.get(rule) ?? 0) > seeds / 50]).toEqual([rule, true]);
  });
});
