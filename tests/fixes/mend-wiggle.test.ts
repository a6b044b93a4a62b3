import { describe, expect, test } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { applyEdits } from '../../server/src/project/edit.ts';
import { fixesFor } from '../../server/src/fixes/fix.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import type { Finding } from '../../server/src/model/finding.ts';
import { draftText, giveBack, makeSafe, powerOff } from '../rules/drafts/circuits.ts';
import { withNotices } from '../rules/drafts/notices.ts';

/* What is moved by hand, and how what is wrong with it is mended. */

const analysed = (text: string) => analyse(snapshotOf([{ id: 'draft', text }]), 'draft');

function findingsOf(text: string): readonly Finding[] {
  return finish(analysed(text).findings('order'));
}

/** The stage is unplugged, a lamp is in its place, and something is moved. */
const moved = (what: string): string =>
  withNotices(
    draftText(`${makeSafe}  - unplug: K30
  - fit: bench-lamp
    at: K30.monitor
  - reconnect: battery
    warning: Nobody in front of the airbag while power comes back.
  - ignition: on
  - wiggle: ${what}
    watch: driver-loop
    for: 1 min
${powerOff}  - remove: bench-lamp
  - plug: K30
${giveBack}`),
  );

function fixes(text: string): readonly (readonly [title: string, isPreferred: boolean, left: number])[] {
  const analysis = analysed(text);
  const finding = findingsOf(text).find(({ severity }) => severity === 'error');
  if (finding === undefined) throw new Error('something must be wrong');
  return finish(fixesFor(analysis, finding)).map(({ title, edits, isPreferred }) => [
    title,
    isPreferred,
    findingsOf(applyEdits(text, edits)).length,
  ]);
}

describe('a connector that is open', () => {
  test('is named by the half that no stage hangs on, as a choice', () => {
    expect(fixes(moved('K30'))).toEqual([['Change `K30` to `K30.monitor`', false, 0]]);
    expect(fixes(moved('[coil-coupling, K30]'))).toEqual([['Change `K30` to `K30.monitor`', false, 0]]);
  });

  test('is named by its other half, where a stage hangs on the one', () => {
    expect(fixes(moved('[K30.end]'))).toEqual([['Change `K30.end` to `K30.monitor`', false, 0]]);
  });
});

test('power is taken away from what is above 30 V, and given back', () => {
  const text = `format: 1
title: A pump that stops now and then
sources: { link: { kind: battery, voltage: 44..52 V, resistance: 5..20 mΩ, feeds: [pump], wait: 1 min } }
instruments:
  hand-meter:
    kind: multimeter
    zeroed: true
    resistance: { range: 0..400 Ω, accuracy: 0.5 % + 2 digits, resolution: 0.01 Ω, test-current: 1 mA }
parts:
  feed-wire: { kind: cable, wire: 1.5 mm², length: 3 m }
  pump: { kind: heater, resistance: 20..26 Ω, hot: same }
connectors: { K4: { contact: 2..15 mΩ, sides: [loom, body] } }
network:
  - { source: link, between: [plus, ground] }
  - { part: feed-wire, between: [plus, feed] }
  - { connector: K4, pin: 1, between: [feed, pump-feed] }
  - { part: pump, between: [pump-feed, ground] }
steps:
  - wiggle: K4
    quantity: resistance
    across: [feed, ground]
    with: hand-meter
    for: 1 min
  - do: Write down which way it moved.
`;
  const finding = findingsOf(text).find(({ rule }) => rule === 'work-under-power');
  const [fix] = finding === undefined ? [] : finish(fixesFor(analysed(text), finding));
  expect(fix?.title).toContain('disconnect: link and wait: 1 min');
  expect(findingsOf(applyEdits(text, fix?.edits ?? []))).toEqual([]);
});
