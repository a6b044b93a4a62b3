import { expect, test } from 'vitest';
import { foundIn } from '../jobs/job.ts';

/* Work on a loop that a 48 V battery feeds, step by step. */

const text = (steps: readonly string[]): string => `format: 1
title: A loop at 48 V
sources:
  link: { kind: battery, voltage: 48 V, feeds: [dull, unit], wait: 60 s }
instruments:
  unit: { kind: monitor, range: 0..10 Ω, accuracy: 3 % + 0.1 Ω, resolution: 0.01 Ω }
loads:
  bulb: { kind: lamp, resistance: 3 Ω }
parts:
  dull: { kind: resistor, resistance: 2 Ω }
  wire: { kind: cable, resistance: 20 mΩ }
connectors:
  K1: { contact: 10 mΩ }
  K2: { contact: 10 mΩ }
loops:
  loop: { path: [unit, K1, wire, K2, dull] }
steps:
${steps.map((step) => `  - { ${step} }\n`).join('')}`;

const arcs = (steps: readonly string[]): readonly string[] =>
  foundIn(text(steps)).filter((line) => line.includes('work-under-power') || line.includes('short-wait'));

test('a load that is fitted elsewhere is not come to where it sits', () => {
  // Between the open connectors nothing is powered, and after the wait nothing is charged.
  const off = ['disconnect: link', 'wait: 60 s', 'unplug: K1', 'unplug: K2', 'reconnect: link'];
  expect(arcs([...off, 'fit: bulb, at: K1.end'])).toEqual([]);
  expect(arcs([...off, 'fit: bulb, at: K1.monitor'])).toEqual(['error work-under-power bulb']);
  const taken = ['disconnect: link', 'wait: 60 s', 'unplug: K1', 'unplug: K2', 'fit: bulb, at: K1.monitor'];
  expect(arcs([...taken, 'reconnect: link', 'fit: bulb, at: K2.monitor'])).toEqual([]);
  expect(arcs([...taken, 'reconnect: link', 'move: bulb, to: K2.monitor'])).toEqual([
    'error work-under-power bulb',
  ]);
});
