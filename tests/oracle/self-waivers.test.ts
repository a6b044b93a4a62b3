import { expect, test } from 'vitest';
import type { Waiver } from '../../server/src/model/procedure.ts';
import { oracle } from './oracle.ts';
import { sample } from './sample.ts';
import { isWaived, ofWaivers } from './waivers.ts';

/* What the oracle makes of waivers, worked out by hand. */

const steps = [{ wait: '1 s' }, { wait: '1 s' }, { unplug: 'K1' }];

const waiver = (rule: string, step: number | null): Waiver => ({
  rule,
  step: step === null ? null : ['steps', step - 1],
  reason: 'It is meant so.',
  path: ['waivers', 0],
});

/** The steps whose finding is waived, and what is said of the waiver. */
function made(rule: string, step: number | null, of = rule) {
  const procedure = { ...sample(steps), waivers: [waiver(rule, step)] };
  const found = oracle(procedure);
  return {
    waived: found.filter((one) => one.rule === of && isWaived(procedure, one)).map((one) => one.step),
    said: ofWaivers(procedure, found).map((one) => one.rule),
  };
}

test('a waiver marks the findings of its rule at its step', () => {
  expect(made('wait-without-effect', 2)).toEqual({ waived: [2], said: [] });
  expect(made('wait-without-effect', 3)).toEqual({ waived: [], said: ['unused-waiver'] });
  expect(made('wait-without-effect', null)).toEqual({ waived: [], said: ['unused-waiver'] });
});

test('without a step it marks what is about no step', () => {
  const trainer = sample(steps, { parts: { stage: { kind: 'initiator', resistance: '2 Ω', live: false } } });
  const procedure = { ...trainer, waivers: [waiver('inert-stage', null)] };
  expect(ofWaivers(procedure, oracle(procedure))).toEqual([]);
  expect(isWaived(procedure, { rule: 'inert-stage', step: null })).toBe(true);
});

test('hands on a live stage, and rules that there are not, cannot be waived', () => {
  expect(made('live-touch', 3)).toEqual({ waived: [], said: ['waiver-refused'] });
  expect(made('live-tuoch', 3, 'live-touch')).toEqual({ waived: [], said: ['waiver-refused'] });
});

test('of what cannot be read no waiver is called unused', () => {
  const procedure = { ...sample(steps), waivers: [waiver('repeats', 3), waiver('live-touch', 3)] };
  expect(ofWaivers(procedure, [], false)).toEqual([{ rule: 'waiver-refused', at: 1 }]);
});
