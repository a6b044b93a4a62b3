import { describe, expect, test } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { explainReading } from '../../server/src/readings/explain.ts';
import { analysed } from './analysed.ts';

interface Changes {
  readonly between?: string;
  readonly wiper?: string;
  readonly steps?: string;
  readonly loop?: string;
}

const usualSteps = `  - ignition: on
  - measure: voltage
    across: [signal, ground]
    with: hand-meter
  - measure: voltage
    across: [track-supply, signal]
    with: hand-meter
  - ignition: off
  - wait: 10 s
  - unplug: K5
  - measure: resistance
    across: [track-supply, track-ground]
    with: hand-meter
  - measure: resistance
    across: [track-supply, wiper]
    with: hand-meter
  - measure: resistance
    across: [wiper, track-ground]
    with: hand-meter
  - plug: K5
`;

function pedal({
  between = '[track-supply, wiper, track-ground]',
  wiper = '10..90 %',
  steps = usualSteps,
  loop = '',
}: Changes) {
  return analysed(`format: 1
title: Pedal
sources:
  battery: { kind: battery, voltage: 12 V, feeds: [control-unit], wait: 10 s }
  reference: { kind: regulated, voltage: 5 V, resistance: 0 Ω, from: battery, needs: ignition-on, after-run: 5 s }
instruments:
  control-unit: { kind: monitor, range: 0..10 kΩ, accuracy: 1 %, resolution: 1 Ω }
  hand-meter:
    kind: multimeter
    zeroed: true
    clamp: { range: 0..60 A, accuracy: 2 % + 5 digits, resolution: 10 mA }
    voltage: { range: 0..60 V, accuracy: 0.5 % + 2 digits, resolution: 0.01 V, input: 10 MΩ }
    resistance: { range: 0..4 kΩ, accuracy: 0.8 % + 3 digits, resolution: 1 Ω, test-current: 1 mA }
parts:
  pedal: { kind: potentiometer, track: 1 kΩ ± 20 %, wiper: ${wiper} }
connectors:
  K5: { contact: 2..15 mΩ, sides: [harness, sensor] }
${loop}network:
  - { source: reference, between: [supply, ground] }
  - { connector: K5, pin: 1, between: [supply, track-supply] }
  - { connector: K5, pin: 2, between: [signal, wiper] }
  - { connector: K5, pin: 3, between: [ground, track-ground] }
  - { part: pedal, between: ${between} }
steps:
${steps}  - ignition: on
  - clear-codes: control-unit
`);
}

describe('a pedal with 5 V across its track', () => {
  const { readings, findings, procedure } = pedal({});

  test('reads a part of 5 V at its wiper, plugged, and parts of its track, unplugged', () => {
    expect(findings.filter(({ severity }) => severity === 'error')).toEqual([]);
    // 0.5 and 4.5 V with 0.5 % and 2 digits; 800, 1200, 80 and 1080 Ω with 0.8 % and 3 digits.
    expect(readings.readings.map(({ printed }) => printed)).toEqual([
      '0.47..4.55 V',
      '0.47..4.55 V',
      '0.790..1.213 kΩ',
      '0.076..1.092 kΩ',
      '0.076..1.092 kΩ',
    ]);
    expect(readings.readings.flatMap(({ good }) => good.map(({ exact }) => exact))).not.toContain(false);
  });

  test('its wiper makes the voltage, its track alone the resistance from end to end', () => {
    const [voltage, , whole] = readings.readings;
    if (voltage === undefined || whole === undefined) throw new Error('no readings');
    const ofVoltage = finish(explainReading(procedure, voltage, 2000));
    const ofWhole = finish(explainReading(procedure, whole, 2000));
    expect(ofVoltage?.shares[0]?.part).toBe('pedal');
    // A wiper that stands evenly from 10 to 90 %: 0.6 to 4.4 V hold 95 of 100.
    expect(ofVoltage?.drawn?.least).toBeCloseTo(0.6, 1);
    expect(ofVoltage?.drawn?.most).toBeCloseTo(4.4, 1);
    expect(ofWhole?.drawn?.least).toBeGreaterThan(800);
    expect(ofWhole?.drawn?.most).toBeLessThan(1200);
    // 400 Ω of the track beside twice 0.8 % of 1 kΩ and 3 digits.
    expect(ofWhole?.shares[0]?.share).toBeCloseTo(400 / 422, 2);
  });

  test('a wiper that stands still, with a spread of its own', () => {
    const still = pedal({ wiper: '50 % ± 5 %' }).readings.readings;
    // 45 to 55 % of 5 V, and 0.45 x 800 to 0.55 x 1200 Ω, outward.
    expect(still[0]?.printed).toBe('2.21..2.79 V');
    expect(still[3]?.printed).toBe('354..669 Ω');
  });
});

describe('a potentiometer is written as what it is', () => {
  const told = (changes: Changes) =>
    pedal({ steps: '  - ignition: on\n', ...changes }).findings.flatMap(({ severity, message }) =>
      severity === 'error' ? [message] : [],
    );

  test('between three nodes', () => {
    expect(told({ between: '[track-supply, track-ground]' })).toEqual([
      expect.stringContaining('between three nodes: one end, the wiper, the other end'),
    ]);
  });

  test('between nodes that are not the same', () => {
    expect(told({ between: '[track-supply, wiper, wiper]' })).toEqual([
      'An element stands between three different nodes.',
    ]);
  });

  test('in no loop', () => {
    expect(
      told({
        loop: 'loops:\n  pedal-loop: { path: [control-unit, K5, pedal] }\n',
      }),
    ).toEqual(expect.arrayContaining([expect.stringContaining('It stands in the network')]));
  });

  test('with its wiper on its track', () => {
    expect(told({ wiper: '10..110 %' })).toEqual([
      expect.stringContaining('from 0 % at its first end to 100 %'),
    ]);
    expect(told({ wiper: '1..9 V' })).toEqual([expect.stringContaining('a place on a track')]);
  });

  test('with no clamp around it', () => {
    expect(told({ steps: '  - measure: current\n    around: pedal\n    with: hand-meter\n' })).toContainEqual(
      expect.stringContaining('no single conductor'),
    );
  });
});

describe('faults of a potentiometer', () => {
  const withExpect = (across: string, expects: string) =>
    pedal({
      steps: `  - unplug: K5\n  - measure: resistance\n    across: ${across}\n    with: hand-meter\n    expect: ${expects}\n  - plug: K5\n`,
    }).findings.flatMap(({ rule, message }) => (rule === 'expect-admits-fault' ? [message] : []));

  test('an opened track, one side of it bridged, and an open wiper are seen where they are measured', () => {
    expect(withExpect('[track-supply, track-ground]', 'above 700 Ω')).toEqual([
      expect.stringContaining('pedal'),
    ]);
    expect(withExpect('[track-supply, wiper]', 'above 50 Ω')).toEqual([expect.stringContaining('pedal')]);
    expect(withExpect('[track-supply, track-ground]', '790..1213 Ω')).toEqual([]);
  });
});
