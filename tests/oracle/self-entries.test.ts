import { describe, expect, test } from 'vitest';
import { circuit, said } from './sample.ts';
import type { Changes } from './sample.ts';

/* What the oracle says of the entries of a file, worked out by hand. */

const idle = [{ ignition: 'on' }];
const told = (rule: string, changes: Changes) => said(rule, idle, changes);

describe('waits', () => {
  const battery = (rest: object, feeds = ['unit']): Changes => ({
    sources: { battery: { kind: 'battery', voltage: '12.6 V', feeds, ...rest } },
  });
  const reserve = {
    capacitance: '6.8 mF',
    'charged-to': '24 V',
    bleed: '4.7 kΩ',
    'safe-below': '2 V',
  };
  test('a source of a live circuit says what there is to wait for', () => {
    expect(told('no-wait', battery({}))).toEqual(['battery at - in -']);
    expect(told('no-wait', battery({ wait: '0 s' }))).toEqual([]);
    expect(told('no-wait', battery({ reserve }))).toEqual([]);
    // It feeds the loop that is not live alone.
    expect(told('no-wait', battery({}, ['K3']))).toEqual([]);
  });
  test('a wait of nothing is told, unless nothing live is fed', () => {
    expect(told('zero-wait', battery({ wait: '0 s' }))).toEqual(['battery at - in -']);
    expect(told('zero-wait', battery({ wait: '1 s' }))).toEqual([]);
    expect(told('zero-wait', battery({ reserve }))).toEqual([]);
    expect(told('zero-wait', battery({ reserve: { ...reserve, 'charged-to': '2 V' } }))).toEqual([
      'battery at - in -',
    ]);
    expect(told('zero-wait', battery({ wait: '0 s' }, ['K3']))).toEqual([]);
  });
});

describe('parts', () => {
  const stage = (live: boolean): Changes => ({
    parts: { ...circuit.parts, stage: { ...circuit.parts.stage, live } },
  });
  const inert = (part: Readonly<Record<string, unknown>>): Changes => ({
    parts: { ...circuit.parts, inert: part },
  });
  test('a stage that is not live', () => {
    expect(told('inert-stage', stage(false))).toEqual(['stage at - in -']);
    expect(told('inert-stage', stage(true))).toEqual([]);
  });
  test('resistors of a series', () => {
    const resistor = (resistance: string, series: string) =>
      told('not-preferred', inert({ kind: 'resistor', resistance, series }));
    // Values from the tables of IEC 60063, from memory.
    for (const [value, series] of [
      ['4.3 Ω', 'E24'],
      ['47 Ω', 'E6'],
      ['820 Ω ± 1 %', 'E12'],
      ['2.49 kΩ', 'E48'],
      ['9.2 Ω', 'E192'],
    ] as const)
      expect([value, resistor(value, series)]).toEqual([value, []]);
    for (const [value, series] of [
      ['4.2 Ω', 'E24'],
      ['4.3 Ω', 'E12'],
      ['8.2 Ω', 'E6'],
      ['2.5 kΩ', 'E96'],
      ['9.19 Ω', 'E192'],
    ] as const)
      expect([value, resistor(value, series)]).toEqual([value, ['inert at - in -']]);
  });
  test('platinum where its class holds', () => {
    const rtd = (class_: string, temperature: string) =>
      told('outside-validity', inert({ kind: 'rtd', r0: '2 Ω', class: class_, temperature }));
    expect(rtd('A', '20..450 °C')).toEqual([]);
    expect(rtd('A', '20..451 °C')).toEqual(['inert at - in -']);
    expect(rtd('AA', '100..300 °C')).toEqual(['inert at - in -']);
    expect(rtd('B', '400..600 °C')).toEqual([]);
  });
  test('a thermistor of less than a tenth of an ohm', () => {
    const ntc = (temperature: string) =>
      told(
        'outside-validity',
        inert({ kind: 'thermistor', r25: '2.2 Ω', beta: '3400 K', tolerance: '3 %', temperature }),
      );
    // 2.2 exp(3400 (1/398.15 - 1/298.15)) = 0.126, at 145 °C 0.084.
    expect(ntc('100..125 °C')).toEqual([]);
    expect(ntc('100..145 °C')).toEqual(['inert at - in -']);
  });
});

describe('the instrument of a proof', () => {
  const proof = { 'prove-dead': 'traction', at: 'S1.end', with: 'meter', known: 'battery' };
  const proving = (range: string, accuracy: string, safe = '60 V', battery = '12.6 V') =>
    said('unfit-meter', [proof], {
      sources: {
        battery: { ...circuit.sources.battery, voltage: battery },
        traction: {
          kind: 'high-voltage',
          voltage: '320..410 V',
          'isolated-by': 'S1',
          wait: '300 s',
          'safe-below': safe,
        },
      },
      instruments: {
        ...circuit.instruments,
        meter: {
          kind: 'multimeter',
          voltage: { range, accuracy, resolution: '0.1 V', input: '10 MΩ' },
        },
      },
      connectors: { ...circuit.connectors, S1: { contact: '2..15 mΩ' } },
    });
  const unfit = ['meter at 1 in -'];
  test('bears the voltage of the source', () => {
    expect(proving('0..410 V', '1 % + 1 V')).toEqual([]);
    expect(proving('0..409 V', '1 % + 1 V')).toEqual(unfit);
  });
  test('shows that the voltage is below the one that is safe', () => {
    // 2 · 0.99 - 1.8 = 0.18 is shown as 0.1, 2 · 0.99 - 1.9 = 0.08 as nothing.
    expect(proving('0..600 V', '1 % + 1.8 V', '2 V')).toEqual([]);
    expect(proving('0..600 V', '1 % + 1.9 V', '2 V')).toEqual(unfit);
  });
  test('surely shows the known source as more than a dead wire', () => {
    // 12.6 · 0.95 = 11.97: less the constant it has to be more than the constant.
    expect(proving('0..600 V', '5 % + 5.9 V')).toEqual([]);
    expect(proving('0..600 V', '5 % + 6 V')).toEqual(unfit);
  });
});
