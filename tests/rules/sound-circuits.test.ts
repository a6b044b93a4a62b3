import { expect, test } from 'vitest';
import { analysed } from '../readings/analysed.ts';

/* Where sound circuits come to, behind a measurement that cannot be made. */

const told = (first: string, network = ''): readonly string[] =>
  analysed(`format: 1
title: Behind a measurement
sources:
  battery: { kind: battery, voltage: 12 V, feeds: [one] }
instruments:
  meter:
    kind: multimeter
    zeroed: true
    resistance: { range: 0..400 Ω, accuracy: 1 %, resolution: 0.1 Ω }
    voltage: { range: 0..10 V, accuracy: 1 %, resolution: 0.1 V, input: 10 MΩ }
parts:
  one: { kind: resistor, resistance: 100 Ω }
network:
  - { part: one, between: [left, ground] }
  - { source: battery, between: [left, ground] }
${network}steps:
${first}
  - disconnect: battery
    id: away
  - measure: resistance
    across: [left, ground]
    with: meter
    expect: 1..50 Ω
  - reconnect: battery
`).findings.map(({ rule }) => rule);

const measured = (quantity: string): string => `  - measure: ${quantity}
    across: [left, ground]
    with: meter
    outcomes: { within: next, else: away }
  - ignition: off`;

test('what is not known of a reading keeps no sound circuit from the steps behind it', () => {
  expect(told('  - ignition: off')).toEqual(['expect-excludes-good']);
  expect(told(measured('resistance'))).toEqual(['powered-measurement', 'expect-excludes-good']);
});

test('a voltage beyond the range is no matter of proving a circuit good', () => {
  expect(told(measured('voltage'))).toEqual(['expect-excludes-good']);
});
