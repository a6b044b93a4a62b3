import { expect, test } from 'vitest';
import { foundIn } from '../jobs/job.ts';

/* A name at which one element of the network ends: no probe is put there, so it may be written in two ways. */

function dangling(measured: string): readonly string[] {
  const found = foundIn(`format: 1
title: Pump
sources:
  battery: { kind: battery, voltage: 12.6 V, feeds: [pump], wait: 1 min, resistance: 5..20 mΩ }
instruments:
  meter:
    kind: multimeter
    voltage: { range: 0..60 V, accuracy: 0.5 % + 2 digits, resolution: 0.01 V, input: 10 MΩ }
    clamp: { range: 0..60 A, accuracy: 2 % + 5 digits, resolution: 10 mA }
parts:
  wire: { kind: cable, resistance: 10..20 mΩ }
  pump: { kind: resistor, resistance: 1.0..1.2 Ω }
network:
  - { source: battery, between: [plus, ground] }
  - { part: wire, between: [plus, feed] }
  - { part: pump, between: [feeed, ground] }
steps:
  - measure: ${measured}
    with: meter
  - stop: Done.
`);
  return found.filter((line) => line.includes('dangling-node'));
}

test('a clamp around a part puts no probe to its ends', () => {
  expect(dangling('current\n    around: wire')).toEqual([
    'warning dangling-node feed',
    'warning dangling-node feeed',
  ]);
});

test('a probe does', () => {
  expect(dangling('voltage\n    across: [plus, feed]')).toEqual(['warning dangling-node feeed']);
});
