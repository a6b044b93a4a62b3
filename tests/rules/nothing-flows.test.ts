import { expect, test } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { nothingFlows } from '../../server/src/rules/windows/nothing-flows.ts';

/* A lamp on a wire of its own, its plug K50 open: plus, lamp-feed | lamp-plus, ground. */

function told(probes: string): readonly string[] {
  const text = nothingFlows.examples.triggers.text.replace('across: [plus, lamp-feed]', `across: ${probes}`);
  const id = 'example.procedure.yaml';
  const findings = finish(analyse(snapshotOf([{ id, text }]), id).findings('order'));
  return findings.flatMap(({ rule }) => (rule === 'nothing-flows' ? [rule] : []));
}

test('a drop across the wire that the lamp should draw current through', () => {
  expect(told('[plus, lamp-feed]')).toEqual(['nothing-flows']);
});

test('not that the lamp is dead behind the open plug, which ground alone connects with the battery', () => {
  expect(told('[lamp-plus, ground]')).toEqual([]);
});

test('not between the two sides of the open plug, where nothing lies', () => {
  expect(told('[lamp-feed, lamp-plus]')).toEqual([]);
});

/** A lamp fed over the plug K50, and a meter in the place of its contact or a clamp around its wire. */
function toldOfCurrent(steps: string): readonly string[] {
  const text = `format: 1
title: Lamp
sources:
  battery: { kind: battery, voltage: 12 V, resistance: 10 mΩ, feeds: [lamp], wait: 0 s }
instruments:
  hand-meter:
    kind: multimeter
    current: { range: 0..10 A, accuracy: 1 % + 3 digits, resolution: 1 mA, burden: 10..20 mΩ }
    clamp: { range: 0..60 A, accuracy: 2 % + 5 digits, resolution: 10 mA }
parts:
  feed-wire: { kind: cable, resistance: 20..30 mΩ }
  lamp: { kind: resistor, resistance: 4..5 Ω }
  horn: { kind: consumer, draws: 4..6 A }
connectors:
  K50: { contact: 2..15 mΩ, sides: [harness, lamp] }
  K51: { contact: 2..15 mΩ, sides: [harness, body] }
network:
  - { source: battery, between: [plus, ground] }
  - { part: feed-wire, between: [plus, lamp-feed] }
  - { connector: K50, pin: 1, between: [lamp-feed, lamp-plus] }
  - { part: lamp, between: [lamp-plus, lamp-minus] }
  - { part: horn, between: [lamp-plus, lamp-minus] }
  - { connector: K51, pin: 1, between: [lamp-minus, ground] }
steps:
${steps}`;
  const id = 'example.procedure.yaml';
  const findings = finish(analyse(snapshotOf([{ id, text }]), id).findings('order'));
  return findings.flatMap(({ rule, severity }) =>
    rule === 'nothing-flows' || severity === 'error' ? [rule] : [],
  );
}

const inPlace = '  - measure: current\n    in: [K50.harness.1, K50.lamp.1]\n    with: hand-meter\n';
const around = '  - measure: current\n    around: feed-wire\n    with: hand-meter\n';

test('a current in the place of a contact, while the circuit is open elsewhere', () => {
  const open = `  - unplug: K50\n  - unplug: K51\n${inPlace}  - plug: K51\n  - plug: K50\n`;
  expect(toldOfCurrent(open)).toEqual(['nothing-flows']);
  expect(toldOfCurrent(`  - unplug: K50\n${inPlace}  - plug: K50\n`)).toEqual([]);
});

test('not that nothing flows through a wire that leads nowhere, unless something is said to draw a current', () => {
  expect(toldOfCurrent(`  - unplug: K50\n${around}  - plug: K50\n`)).toEqual([]);
  expect(toldOfCurrent(`  - unplug: K50\n${around}    drawing: horn\n  - plug: K50\n`)).toEqual([
    'nothing-flows',
  ]);
  expect(toldOfCurrent(`${around}    drawing: horn\n`)).toEqual([]);
});

test('so is that a closed circuit carries nothing without a source', () => {
  expect(toldOfCurrent(`  - disconnect: battery\n${around}  - reconnect: battery\n`)).toEqual([
    'nothing-flows',
  ]);
});
