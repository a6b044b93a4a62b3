import { describe, expect, test } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import type { Reading } from '../../server/src/readings/reading.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';

/* Two-wire buses as networks, held against published figures. Bands of terminations are stated where they come from. */

interface Bus {
  readonly parts: string;
  readonly network: string;
  readonly steps?: string;
}

function readings({ parts, network, steps }: Bus): readonly Reading[] {
  const text = `format: 1
title: A bus
sources: { battery: { kind: battery, voltage: 12 V, feeds: [left] } }
instruments:
  hand-meter:
    kind: multimeter
    zeroed: true
    resistance: { range: 0..400 Ω, accuracy: 0 Ω, resolution: 0.01 Ω }
parts:
${parts}
connectors: { K1: { contact: 0 Ω, sides: [harness, unit] } }
network:
${network}
  - { connector: K1, pin: 1, between: [high, unit-high] }
  - { connector: K1, pin: 2, between: [low, unit-low] }
steps:
${steps ?? '  - measure: resistance\n    across: [high, low]\n    with: hand-meter\n'}`;
  const analysis = analyse(snapshotOf([{ id: 'bus.procedure.yaml', text }]), 'bus.procedure.yaml');
  expect(analysis.procedure().findings.map(({ message }) => message)).toEqual([]);
  return finish(analysis.windows()).value.readings;
}

const two = (band: string): Bus => ({
  parts: `  left: { kind: resistor, resistance: ${band} }\n  right: { kind: resistor, resistance: ${band} }`,
  network: '  - { part: left, between: [high, low] }\n  - { part: right, between: [unit-high, unit-low] }',
});

describe('terminations at both ends', () => {
  test.each([
    ['120 Ω ± 1 %', '59.40..60.60 Ω', '120 Ω at each end, 1 % (computed)'],
    ['118..130 Ω', '59.00..65.00 Ω', 'the band of older ISO 11898, as CANopen manuals give it (from memory)'],
    ['108..132 Ω', '54.00..66.00 Ω', 'a fieldbus manual that cites ISO 11898-2'],
  ])('of %s read %s: %s', (band, printed) => {
    expect(readings(two(band))[0]?.printed).toBe(printed);
  });

  test('one of them unplugged reads about 120 Ω, both about 60 Ω (fieldbus manual)', () => {
    const measure = '  - measure: resistance\n    across: [high, low]\n    with: hand-meter\n';
    const [whole, one] = readings({ ...two('120 Ω ± 1 %'), steps: `${measure}  - unplug: K1\n${measure}` });
    expect([whole?.printed, one?.printed]).toEqual(['59.40..60.60 Ω', '118.80..121.20 Ω']);
  });
});

test.each([
  ['open where nothing is amiss', '', 'open'],
  [
    '0 Ω where it is shorted to ground',
    '  - { part: short, between: [unit-high, ground] }\n',
    '0.00..0.00 Ω',
  ],
])('CAN_H against ground reads %s (fieldbus manual)', (_name, short, printed) => {
  const { parts, network } = two('120 Ω');
  const [reading] = readings({
    parts: `${parts}\n  short: { kind: series, resistance: 0 Ω }\n  earth: { kind: series, resistance: 0 Ω }`,
    network: `${network}\n${short}  - { part: earth, between: [ground, body] }`,
    steps: '  - measure: resistance\n    across: [high, ground]\n    with: hand-meter\n',
  });
  expect(reading?.printed).toBe(printed);
});

test('three terminations read 40 Ω, below the 50 Ω at which the fieldbus manual says that there are more than two', () => {
  const { parts, network } = two('120 Ω');
  const [reading] = readings({
    parts: `${parts}\n  third: { kind: resistor, resistance: 120 Ω }`,
    network: `${network}\n  - { part: third, between: [high, low] }`,
  });
  expect(reading?.printed).toBe('40.00..40.00 Ω');
});

test('two terminations with ten nodes of 30 kΩ read 58.82 Ω (computed from the published node resistance)', () => {
  const { parts, network } = two('120 Ω');
  const nodes = Array.from({ length: 10 }, (_, at) => `node-${at}`);
  const [reading] = readings({
    parts: [parts, ...nodes.map((id) => `  ${id}: { kind: resistor, resistance: 30 kΩ }`)].join('\n'),
    network: [network, ...nodes.map((id) => `  - { part: ${id}, between: [high, low] }`)].join('\n'),
  });
  const circuit = reading?.good[0]?.circuit;
  expect(typeof circuit === 'object' ? circuit.nominal : circuit).toBeCloseTo(1 / (1 / 60 + 10 / 30e3), 9);
  expect(reading?.printed).toBe('58.82..58.83 Ω');
});

test('at one end of 40 m with 70 mΩ/m in each wire (CANopen manuals citing ISO 11898) 61.37 Ω', () => {
  const [reading] = readings({
    parts: `  left: { kind: resistor, resistance: 120 Ω }
  right: { kind: resistor, resistance: 120 Ω }
  wire-high: { kind: cable, resistance: 2.8 Ω }
  wire-low: { kind: cable, resistance: 2.8 Ω }`,
    network: `  - { part: left, between: [high, low] }
  - { part: wire-high, between: [unit-high, far-high] }
  - { part: wire-low, between: [unit-low, far-low] }
  - { part: right, between: [far-high, far-low] }`,
  });
  expect(reading?.printed).toBe('61.36..61.37 Ω');
});
