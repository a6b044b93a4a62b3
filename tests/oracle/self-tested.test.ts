import { describe, expect, test } from 'vitest';
import { readProcedure } from '../../server/src/text/read-procedure.ts';
import { oracle } from './oracle.ts';

/*
 * The oracle on what an insulation tester is held to and what it leaves, against procedures worked out by hand: two
 * motors, each behind a connector, on a wire with a control unit's loop beside it.
 */

const usual = 'withstands: 1000 V';

interface Bears {
  readonly cable?: string;
  readonly plug?: string;
  readonly bulb?: string;
  readonly motor?: string;
}

function tell(rule: string, steps: readonly string[], bears: Bears = {}): string[] {
  const {
    cable = usual,
    plug = usual,
    bulb = usual,
    motor = `kind: resistor, resistance: 2 Ω, ${usual}`,
  } = bears;
  const text = `format: 1
title: Insulation
conditions: { ambient: 20..20 °C }
sources:
  battery: { kind: battery, voltage: 12 V, feeds: [unit, relay], wait: 60 s }
  traction: { kind: high-voltage, voltage: 400 V, isolated-by: S1, wait: 300 s }
instruments:
  unit: { kind: monitor, range: 0..10 Ω, accuracy: 3 % + 0.1 Ω, resolution: 0.01 Ω }
  meter: { kind: multimeter, voltage: { range: 0..600 V, accuracy: 1 % + 2 digits, resolution: 0.1 V, input: 10 MΩ } }
  tester: { kind: multimeter, insulation: { range: 0..2 GΩ, accuracy: 3 %, resolution: 10 kΩ, discharge: 10 s } }
  silent: { kind: multimeter, insulation: { range: 0..2 GΩ, accuracy: 3 %, resolution: 10 kΩ } }
loads:
  bulb: { kind: lamp, resistance: 3 Ω, ${bulb} }
parts:
  cable: { kind: cable, resistance: 10 mΩ, ${cable} }
  motor: { ${motor} }
  fan: { kind: resistor, resistance: 2 Ω, ${usual} }
  relay: { kind: resistor, resistance: 90 Ω, ${usual} }
  dull: { kind: resistor, resistance: 2 Ω, ${usual} }
  heater: { kind: heater, resistance: 30 Ω, ${usual} }
connectors:
  K1: { contact: 10 mΩ, sides: [wire, motor], ${plug} }
  K2: { contact: 10 mΩ, sides: [wire, fan], ${usual} }
  K3: { contact: 10 mΩ, ${usual} }
  S1: { contact: 10 mΩ, sides: [pack, link], ${usual} }
loops:
  loop: { path: [unit, K3, dull] }
network:
  - { part: relay, between: [feed, ground] }
  - { part: cable, between: [feed, wire] }
  - { connector: K1, pin: 1, between: [wire, motor-plus] }
  - { part: motor, between: [motor-plus, ground] }
  - { connector: K2, pin: 1, between: [wire, fan-plus] }
  - { part: fan, between: [fan-plus, ground] }
  - { source: traction, between: [pack, ground] }
  - { connector: S1, pin: 1, between: [pack, link] }
  - { part: heater, between: [link, ground] }
steps:
${steps.map((step) => `  - { ${step} }\n`).join('')}`;
  const { procedure, findings } = readProcedure({ id: 'test.procedure.yaml', text });
  expect(findings).toEqual([]);
  return oracle(procedure)
    .filter((told) => told.rule === rule)
    .map(({ subject, step }) => `${subject ?? '-'} at ${step ?? '-'}`)
    .sort();
}

const at = (volts: string, one: string, other = 'ground', more = ''): string =>
  `measure: insulation, across: [${one}, ${other}], at-voltage: ${volts}, with: tester, expect: above 1 MΩ${more}`;
const dead = ['disconnect: battery', 'wait: 60 s', 'unplug: K1', 'unplug: K2'];

describe('insulation-on-electronics', () => {
  const weak = (step: string, bears: Bears = {}): string[] =>
    tell('insulation-on-electronics', [...dead, 'unplug: K3', step], bears);
  test('not where all that hangs on the probes bears it', () => {
    expect(weak(at('1000 V', 'motor-plus'))).toEqual([]);
    expect(weak(at('1000 V', 'feed', 'motor-plus'))).toEqual([]);
  });
  test('a part, a connector or a fitted load that bears less, or says nothing', () => {
    const low = { motor: 'kind: resistor, resistance: 2 Ω, withstands: 499 V' };
    expect(weak(at('500 V', 'motor-plus'), low)).toEqual(['motor at 6']);
    expect(weak(at('499 V', 'motor-plus'), low)).toEqual([]);
    expect(weak(at('50 V', 'motor-plus'), { motor: 'kind: resistor, resistance: 2 Ω' })).toEqual([
      'motor at 6',
    ]);
    expect(weak(at('500 V', 'motor-plus'), { plug: 'withstands: 60 V' })).toEqual(['K1 at 6']);
    const fitted = (load: string): string[] =>
      tell('insulation-on-electronics', ['unplug: K3', 'fit: bulb, at: K3.end', at('500 V', 'K3.end.1')], {
        bulb: load,
      });
    expect(fitted('withstands: 400 V')).toEqual(['bulb at 3']);
    expect(fitted(usual)).toEqual([]);
  });
  test('of either probe that is not at ground, and of nothing beyond an open connector', () => {
    expect(weak(at('500 V', 'feed', 'motor-plus'), { cable: 'withstands: 100 V' })).toEqual(['cable at 6']);
    expect(weak(at('500 V', 'ground', 'motor-plus'), { cable: 'withstands: 100 V' })).toEqual([]);
  });
  test('a control unit and a source bear nothing', () => {
    expect(weak(at('50 V', 'K3.monitor.1'))).toEqual(['unit at 6']);
    expect(weak(at('50 V', 'K3.end.1'))).toEqual([]);
    expect(weak(at('50 V', 'pack'))).toEqual(['traction at 6']);
  });
  test('of an initiator another rule tells', () => {
    const squib = { motor: 'kind: initiator, resistance: 2 Ω, live: false' };
    expect(weak(at('50 V', 'motor-plus'), squib)).toEqual([]);
    expect(tell('meter-across-live', [...dead, at('50 V', 'motor-plus')], squib)).toEqual(['motor at 5']);
  });
});

test('it is measured on nothing that is powered or still charged', () => {
  const found = (steps: readonly string[]): string[] => tell('powered-measurement', steps);
  expect(found([at('500 V', 'feed')])).toEqual(['feed..ground at 1']);
  expect(found(['disconnect: battery', 'wait: 59 s', at('500 V', 'feed')])).toEqual(['feed..ground at 3']);
  expect(found([...dead, at('500 V', 'feed')])).toEqual([]);
});

describe('what a tester leaves', () => {
  const short = (steps: readonly string[]): string[] => tell('short-wait', [...dead, ...steps]);
  test('is there until it was waited for, below 60 V', () => {
    expect(short([at('50 V', 'motor-plus'), 'plug: K1'])).toEqual(['K1 at 6']);
    expect(short([at('50 V', 'motor-plus'), 'wait: 9 s', 'plug: K1'])).toEqual(['K1 at 7']);
    expect(short([at('50 V', 'motor-plus'), 'wait: 9 s', 'wait: 1 s', 'plug: K1'])).toEqual([]);
    expect(short([at('50 V', 'motor-plus', 'ground', ', discharged: true'), 'plug: K1'])).toEqual([]);
    expect(short([at('60 V', 'motor-plus'), 'wait: 1 h', 'plug: K1'])).toEqual(['K1 at 7']);
  });
  test('is not waited for where nobody knows how long that takes', () => {
    const silent = at('50 V', 'motor-plus').replace('with: tester', 'with: silent');
    expect(short([silent, 'wait: 1 h', 'plug: K1'])).toEqual(['K1 at 7']);
  });
  test('is gone where a proof was taken that ends dead, of whatever source', () => {
    const proof = (place: string): string =>
      `prove-dead: traction, at: ${place}, with: meter, known: battery`;
    const [far, near] = ['[K2.fan.1, K2.wire.1]', '[K1.motor.1, K1.wire.1]'].map(proof);
    expect(short([at('500 V', 'motor-plus'), near ?? '', 'plug: K1'])).toEqual([]);
    expect(short([at('500 V', 'motor-plus'), far ?? '', 'plug: K1'])).toEqual(['K1 at 7']);
  });
  test('is on all that hung together there, and on what is joined with it', () => {
    expect(short([at('500 V', 'motor-plus'), 'replace: motor'])).toEqual(['motor at 6']);
    expect(short([at('500 V', 'motor-plus'), 'replace: fan'])).toEqual([]);
    expect(short(['plug: K1', at('500 V', 'feed'), 'do: Look., at: motor'])).toEqual(['motor at 7']);
  });
  test('is told once: it is gone then, and what was not touched keeps it', () => {
    expect(short([at('500 V', 'motor-plus'), 'plug: K1', 'unplug: K1'])).toEqual(['K1 at 6']);
    const both = at('500 V', 'motor-plus', 'fan-plus');
    expect(short([both, 'replace: motor', 'replace: fan'])).toEqual(['fan at 7', 'motor at 6']);
    expect(short([both, 'do: Look., at: [motor, fan]'])).toEqual(['fan at 6', 'motor at 6']);
    expect(short([both, 'do: Look., at: [motor, K1]'])).toEqual(['motor at 6']);
  });
  test('counts for the next measurement there too', () => {
    expect(short([at('50 V', 'motor-plus'), at('50 V', 'motor-plus')])).toEqual(['motor-plus at 6']);
  });
});
