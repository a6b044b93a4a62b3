import { expect, test } from 'vitest';
import { analysed } from './analysed.ts';

/** What is printed at a reading of the drop in the feed of a starter, and of the current through it. */
function printed(drawing: string): readonly string[] {
  const { readings, findings } = analysed(`format: 1
title: Starter feed
sources:
  battery: { kind: battery, voltage: 12 V, feeds: [starter], wait: 1 min }
instruments:
  hand-meter:
    kind: multimeter
    voltage: { range: 0..60 V, accuracy: 0.5 % + 2 digits, resolution: 0.01 V, input: 10 MΩ }
    clamp: { range: 0..400 A, accuracy: 2 % + 5 digits, resolution: 1 A }
parts:
  feed: { kind: cable, resistance: 1..2 mΩ }
  starter: { kind: consumer, draws: 140..160 A }
network:
  - { source: battery, between: [plus, ground] }
  - { part: feed, between: [plus, k50] }
  - { part: starter, between: [k50, ground] }
steps:
  - measure: voltage
    across: [plus, k50]
    with: hand-meter
${drawing}  - measure: current
    around: feed
    with: hand-meter
${drawing}`);
  expect(findings.filter(({ severity }) => severity === 'error')).toEqual([]);
  return readings.readings.map((reading) => reading.printed);
}

test('a consumer that a reading names draws its current', () => {
  // 140 A by 1 mΩ to 160 A by 2 mΩ, with 0.5 % and 2 digits; the clamp with 2 % and 5 digits.
  expect(printed('    drawing: starter\n')).toEqual(['0.11..0.35 V', '132..169 A']);
});

test('at any other reading it draws nothing', () => {
  expect(printed('')).toEqual(['-0.02..0.02 V', '-5..5 A']);
});
