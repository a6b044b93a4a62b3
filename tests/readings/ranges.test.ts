import { expect, test } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';

/** The error limits of a kit meter's 200 Ω range by its manual (0.8 % + 2 digits), and of further ranges as it. */
const meter = `    resistance:
      range: 0..200 Ω
      accuracy: 0.8 % + 2 digits
      resolution: 0.1 Ω
      further:
        - { range: 0..2 kΩ, accuracy: 0.8 % + 2 digits, resolution: 1 Ω }
        - { range: 0..20 kΩ, accuracy: 0.8 % + 2 digits, resolution: 10 Ω }
`;

function reading(ohms: string, instrument = meter): { readonly printed: string; readonly says: string[] } {
  const text = `format: 1
title: Ranges
sources: { battery: { kind: battery, voltage: 12 V, feeds: [load] } }
instruments:
  hand-meter:
    kind: multimeter
    zeroed: true
${instrument}parts: { load: { kind: resistor, resistance: ${ohms} } }
network: [{ part: load, between: [one, other] }]
steps:
  - measure: resistance
    across: [one, other]
    with: hand-meter
`;
  const analysis = analyse(snapshotOf([{ id: 'ranges.procedure.yaml', text }]), 'ranges.procedure.yaml');
  const { value } = finish(analysis.windows());
  const says = finish(analysis.findings('order')).map(({ rule, message }) => `${rule}: ${message}`);
  return { printed: value.readings[0]?.printed ?? '', says };
}

test.each([
  ['60 Ω', '59.3..60.7 Ω', '± 0.68 Ω in the least range'],
  ['1 kΩ', '0.990..1.010 kΩ', '± 10 Ω in the next one'],
  ['199 Ω', '195..203 Ω', 'near the end of a range either may show it'],
  ['12 kΩ', '11.88..12.12 kΩ', '± 116 Ω, in steps of 10 Ω'],
  ['25 kΩ', 'open', 'beyond the last range'],
])('a meter with several ranges shows %s as %s: %s', (ohms, printed) => {
  expect(reading(ohms).printed).toBe(printed);
});

test('a range that ends no further than the one before it is an error where it stands', () => {
  const { says } = reading('60 Ω', meter.replace('0..2 kΩ', '0..150 Ω'));
  expect(says.filter((one) => one.startsWith('wrong-value'))).toEqual([
    expect.stringContaining('This range ends no further than the one before it'),
  ]);
});
