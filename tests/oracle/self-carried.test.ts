import { describe, expect, test } from 'vitest';
import { readProcedure } from '../../server/src/text/read-procedure.ts';
import { oracle } from './oracle.ts';

/*
 * The oracle on currents, of which it knows the place in the order alone, against procedures worked out by hand: a lamp
 * and a sensor, each behind a connector, on a wire that leads to a battery through a third one.
 */

function tell(rule: string, steps: readonly string[], lamp = 'kind: resistor, resistance: 2 Ω'): string[] {
  const text = `format: 1
title: Currents
conditions: { ambient: 20..20 °C }
sources:
  battery: { kind: battery, voltage: 12 V, resistance: 10 mΩ, feeds: [lamp], wait: 60 s }
instruments:
  meter:
    kind: multimeter
    zeroed: true
    resistance: { range: 0..1 kΩ, accuracy: 1 %, resolution: 0.1 Ω }
    current: { range: 0..100 A, accuracy: 1 %, resolution: 1 mA, burden: 20..50 mΩ }
    clamp: { range: 0..100 A, accuracy: 2 %, resolution: 10 mA }
    insulation: { range: 0..2 GΩ, accuracy: 3 %, resolution: 10 kΩ }
parts:
  cable: { kind: cable, resistance: 10 mΩ, withstands: 100 V }
  lamp: { ${lamp} }
  sensor: { kind: resistor, resistance: 90 Ω }
connectors:
  T1: { contact: 1 mΩ, sides: [body, battery], withstands: 100 V }
  K1: { contact: 10 mΩ, sides: [wire, lamp], withstands: 100 V }
  K2: { contact: 10 mΩ, sides: [wire, sensor], withstands: 100 V }
network:
  - { source: battery, between: [plus, ground] }
  - { connector: T1, pin: 1, between: [feed, plus] }
  - { part: cable, between: [feed, wire] }
  - { connector: K1, pin: 1, between: [wire, lamp-plus] }
  - { part: lamp, between: [lamp-plus, ground] }
  - { connector: K2, pin: 1, between: [wire, sense] }
  - { part: sensor, between: [sense, ground] }
steps:
${steps.map((step) => `  - { ${step} }\n`).join('')}`;
  const { procedure, findings } = readProcedure({ id: 'test.procedure.yaml', text });
  expect(findings).toEqual([]);
  return oracle(procedure)
    .filter((told) => told.rule === rule)
    .map(({ subject, step }) => `${subject ?? '-'} at ${step ?? '-'}`)
    .sort();
}

const inT1 = 'measure: current, in: [T1.battery.1, T1.body.1], with: meter';
const inK1 = 'measure: current, in: [K1.wire.1, K1.lamp.1], with: meter';
const around = 'measure: current, around: cable, with: meter';
const ohms = (node: string): string => `measure: resistance, across: [${node}, ground], with: meter`;

describe('an instrument in the place of a contact', () => {
  test('needs that contact to be open', () => {
    expect(tell('impossible', [inT1])).toEqual(['T1 at 1']);
    expect(tell('impossible', ['unplug: T1', inT1])).toEqual([]);
    expect(tell('impossible', [around])).toEqual([]);
  });
  const powered = (steps: readonly string[]): string[] =>
    tell('powered-measurement', ['unplug: T1', ...steps]);
  test('powers what it joins for that step, which is charged after it', () => {
    expect(powered(['wait: 60 s', ohms('wire')])).toEqual([]);
    expect(powered(['wait: 60 s', inT1, ohms('wire')])).toEqual(['wire..ground at 4']);
    expect(powered(['wait: 60 s', inT1, 'wait: 59 s', ohms('wire')])).toEqual(['wire..ground at 5']);
    expect(powered(['wait: 60 s', inT1, 'wait: 60 s', ohms('wire')])).toEqual([]);
  });
  test('powers nothing that was cut off from both of its sides', () => {
    const apart = ['unplug: K2', 'wait: 60 s', inT1];
    expect(powered([...apart, ohms('sense')])).toEqual([]);
    expect(powered([...apart, ohms('lamp-plus')])).toEqual(['lamp-plus..ground at 5']);
  });
  test('joins what one side holds with the other', () => {
    const steps = [
      'unplug: K1',
      'wait: 60 s',
      'plug: T1',
      'unplug: T1',
      inK1,
      'wait: 59 s',
      ohms('lamp-plus'),
    ];
    expect(powered(steps)).toEqual(['lamp-plus..ground at 8']);
    const tested =
      'measure: insulation, across: [feed, ground], at-voltage: 100 V, with: meter, expect: open';
    const short = tell('short-wait', ['unplug: T1', 'unplug: K1', 'wait: 60 s', tested, 'wait: 60 s', inK1]);
    expect(short).toEqual(['K1 at 6']);
  });
});

test('no instrument comes to a piece with an initiator, in it or around it', () => {
  const squib = 'kind: initiator, resistance: 2 Ω, live: false';
  const probed = (steps: readonly string[]): string[] => tell('meter-across-live', steps, squib);
  expect(probed([around])).toEqual(['lamp at 1']);
  expect(probed(['unplug: K1', around])).toEqual([]);
  expect(probed(['unplug: K1', inK1])).toEqual(['lamp at 2']);
  expect(probed(['unplug: K1', 'unplug: T1', inT1])).toEqual([]);
});

test('a clamp puts no probe to the end of what it is around', () => {
  expect(tell('dangling-node', ['unplug: K1', around])).toEqual([]);
});
