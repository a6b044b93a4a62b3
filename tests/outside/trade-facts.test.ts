import { describe, expect, test } from 'vitest';
import { analysed } from '../readings/analysed.ts';
import type { Reading } from '../../server/src/readings/reading.ts';
import { restraintCircuit } from './restraint-circuit.ts';

/* Common practice, no source: what trainers know of these circuits. The circuit is stated in restraint-circuit.ts. */

function onlyReading(steps: string): Reading {
  const { readings } = analysed(restraintCircuit(steps));
  const [reading] = readings.readings;
  if (readings.readings.length !== 1 || reading === undefined) throw new Error('the steps must read once');
  return reading;
}

const nominal = (reading: Reading): number => reading.good[0]?.indication?.value?.nominal ?? NaN;

describe('common practice, no source', () => {
  test('a substitute lamp of about 3 Ω makes a sound loop read about 3 to 3.4 Ω at the monitor', () => {
    const steps =
      '- unplug: K30\n- fit: bench-lamp\n  at: K30.monitor\n- ignition: on\n- read: driver-loop\n';
    const reading = onlyReading(steps);
    expect(nominal(reading)).toBeGreaterThan(3.0);
    expect(nominal(reading)).toBeLessThan(3.4);
  });

  test('a lock that is lifted, with its bar closed, makes the loop read about 0.6 Ω', () => {
    const reading = onlyReading('- ignition: on\n- unlock: K30\n- read: driver-loop\n');
    expect(nominal(reading)).toBeGreaterThan(0.5);
    expect(nominal(reading)).toBeLessThan(0.7);
  });

  test('an open loop reads as a failure and not as a number', () => {
    const reading = onlyReading('- ignition: on\n- unplug: K30\n- read: driver-loop\n');
    expect(reading.good.map(({ circuit, indication }) => [circuit, indication?.value])).toEqual([
      ['open', null],
    ]);
    expect(reading.accepted).toBe('open');
    expect(reading.printed).toBe('open');
  });

  test('a sound loop with its stage reads a little more than the stage of 2 Ω', () => {
    const reading = onlyReading('- ignition: on\n- read: driver-loop\n');
    expect(nominal(reading)).toBeGreaterThan(2.0);
    expect(nominal(reading)).toBeLessThan(2.5);
  });

  test('two milliohms of a contact more make the loop read more, never less', () => {
    const text = restraintCircuit('- ignition: on\n- read: driver-loop\n');
    const [before] = analysed(text).readings.readings;
    const [after] = analysed(text.replaceAll('contact: 5..10 mΩ', 'contact: 7..12 mΩ')).readings.readings;
    if (before === undefined || after === undefined) throw new Error('the steps must read once');
    // Two connectors, two contacts each.
    expect(nominal(after) - nominal(before)).toBeCloseTo(4 * 0.002, 9);
  });
});
