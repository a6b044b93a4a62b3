import { expect, test } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { circuit, example } from '../../server/src/rules/examples.ts';
import type { Finding } from '../../server/src/model/finding.ts';

function findings(steps: string, changed: Parameters<typeof example>[2] = {}): readonly Finding[] {
  const { text } = example('', steps, changed);
  return finish(analyse(snapshotOf([{ id: 'file', text }]), 'file').findings('order'));
}

const shown = (all: readonly Finding[], rule: string): readonly string[] =>
  all.filter((one) => one.rule === rule && one.because === undefined).map(({ subject = '' }) => subject);

const end = `- ignition: on
- clear-codes: control-unit
- read: driver-loop
  outcomes: { within: sound, else: faulty }
- stop: Sound.
  id: sound
- stop: Ask the workshop lead.
  id: faulty
  leaves: [repair]
`;

test('touches that one missing disconnect makes unsafe are one finding with its consequences', () => {
  const all = findings(`
- ignition: on
- read-codes: control-unit
- ignition: off
- unplug: K30
  warning: Stay clear of the front of the airbag.
- disconnect: battery
- reconnect: battery
- unplug: K10
- plug: K10
- plug: K30
${end}`);
  const touches = all.filter(({ rule }) => rule === 'live-touch');
  expect(touches.length).toBeGreaterThan(1);
  const [first] = touches;
  expect(shown(all, 'live-touch')).toEqual(['K30']);
  expect(first?.consequences?.length).toBe(touches.length - 1);
  expect(touches.slice(1).every(({ because }) => because === first?.key)).toBe(true);
  expect(first?.message).toMatch(/For the same cause: K10 \(step 7\)/);
});

test('repairs that one stop leaves unverified are one finding with their names', () => {
  const all = findings(`
- ignition: on
- read-codes: control-unit
- ignition: off
- disconnect: battery
- wait: 3 min
- replace: [K10, coil-coupling, K30]
  warning: Stay clear of the front of the airbag.
- reconnect: battery
- ignition: on
- clear-codes: control-unit
- stop: Handed over.
`);
  expect(shown(all, 'repair-not-verified')).toHaveLength(1);
  expect(all.filter(({ rule }) => rule === 'repair-not-verified')).toHaveLength(3);
});

test('what lies on no path from one to the other stands by itself', () => {
  const all = findings(
    `
- ignition: on
- read-codes: control-unit
- inspect: Which plug is loose?
  at: nothing
  outcomes: { ok: one, defect: other }
- unplug: K30
  id: one
  warning: Stay clear of the front of the airbag.
- plug: K30
- go: done
- unplug: K10
  id: other
  warning: Stay clear of the front of the airbag.
- plug: K10
- go: done
- ignition: on
  id: done
${end}`.replace('  at: nothing\n', ''),
  );
  expect(shown(all, 'live-touch')).toEqual(['K30', 'K10']);
});

test('where the first is waived the next stands by itself', () => {
  const repairs = `
- ignition: on
- read-codes: control-unit
- ignition: off
- disconnect: battery
- wait: 3 min
- replace: [K10, coil-coupling]
  warning: Stay clear of the front of the airbag.
- reconnect: battery
- ignition: on
- clear-codes: control-unit
- stop: Handed over.
  id: over
`;
  const waivers = 'waivers:\n  - { rule: repair-not-verified, step: over, reason: Another card shows it. }\n';
  const all = findings(repairs, { ...circuit, waivers });
  const unverified = all.filter(({ rule }) => rule === 'repair-not-verified');
  expect(unverified.every(({ waived, because }) => waived !== undefined && because === undefined)).toBe(true);
});
