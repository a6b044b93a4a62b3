import { describe, expect, test } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';

/* By hand, with Ohm's law. */

/** A battery of 12 V that feeds one part, measured at its terminals. */
function measured({ inner = '', part = '{ kind: resistor, resistance: 10 Ω }', step = '0.01 V' }) {
  const text = `format: 1
title: At the terminals
sources: { battery: { kind: battery, voltage: 12 V${inner}, feeds: part, wait: 0 s } }
instruments:
  volts: { kind: multimeter, voltage: { range: 0..20 V, accuracy: 0 % + 1 digits, resolution: ${step}, input: 10 MΩ } }
parts: { part: ${part} }
network:
  - { source: battery, between: [plus, ground] }
  - { part: part, between: [plus, ground] }
steps:
  - measure: voltage
    across: [plus, ground]
    with: volts
`;
  const file = 'terminals.procedure.yaml';
  const analysis = analyse(snapshotOf([{ id: file, text }]), file);
  const [reading] = finish(analysis.windows()).value.readings;
  const needs = finish(analysis.findings('order')).filter(({ rule }) => rule === 'window-needs-value');
  return { printed: reading?.printed ?? null, needs: needs.map(({ message }) => message) };
}

describe('what is inside of a source', () => {
  test('takes its part of the voltage', () => {
    // 12 V · 10 / 10.1 = 11.881 V; 12 V · 10 / 10.2 = 11.765 V; 0.01 V of error.
    expect(measured({ inner: ', resistance: 0.1..0.2 Ω' })).toEqual({ printed: '11.75..11.90 V', needs: [] });
    expect(measured({ inner: ', resistance: 0 Ω' })).toEqual({ printed: '11.99..12.01 V', needs: [] });
  });

  test('is asked for where 50 mΩ of it would show', () => {
    // 12 V · 10 / 10.05 = 11.940 V: six steps of 0.01 V.
    const { printed, needs } = measured({});
    expect(printed).toBe('');
    expect(needs).toEqual([expect.stringContaining('State `resistance` there')]);
  });

  test('is not asked for where it would not show', () => {
    // 60 mV are less than a step of 0.1 V, and 10 MΩ of a meter draw nothing to speak of.
    expect(measured({ step: '0.1 V' })).toEqual({ printed: '11.9..12.1 V', needs: [] });
    const little = measured({ part: '{ kind: resistor, resistance: 100 kΩ }' });
    expect(little).toEqual({ printed: '11.99..12.01 V', needs: [] });
  });
});

describe('what a lamp or heater has under power', () => {
  const inner = ', resistance: 0.1 Ω';

  test.each(['lamp', 'heater'])('is asked for of a %s that is stated cold alone', (kind) => {
    const { printed, needs } = measured({ inner, part: `{ kind: ${kind}, resistance: 1 Ω }` });
    expect(printed).toBe('');
    expect(needs).toEqual([expect.stringContaining('State `hot` there')]);
  });

  test('is the stated hot resistance, or the cold one where that is the same', () => {
    const read = (hot: string) => measured({ inner, part: `{ kind: heater, resistance: 1 Ω, hot: ${hot} }` });
    // 12 V · 9.6 / 9.7 = 11.876 V; 12 V · 1 / 1.1 = 10.909 V.
    expect(read('9.6 Ω')).toEqual({ printed: '11.86..11.89 V', needs: [] });
    expect(read('same')).toEqual({ printed: '10.89..10.92 V', needs: [] });
  });

  test('is volts squared by watts of a rated heater, 12 % either way', () => {
    // 1.44 Ω: 1.2672 to 1.6128 Ω, so 11.1221 to 11.2994 V.
    expect(measured({ inner, part: '{ kind: heater, rated: 12 V 100 W }' }).printed).toBe('11.11..11.31 V');
  });

  test('does not matter where no current flows through it', () => {
    const { needs } = measured({ part: '{ kind: lamp, resistance: 1 Ω }', inner: ', resistance: 0 Ω' });
    expect(needs).toEqual([]);
  });
});
