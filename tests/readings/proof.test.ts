import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { printedProofs, proofLimit, unfitFor } from '../../server/src/readings/proof.ts';
import type { Battery, HighVoltage, Multimeter } from '../../server/src/model/procedure.ts';
import { readProcedure } from '../../server/src/text/read-procedure.ts';
import { readFileSync } from 'node:fs';

const exact = (value: number) => ({ least: value, nominal: value, most: value });
const span = (least: number, most: number) => ({ least, nominal: (least + most) / 2, most });

function source(safeBelow: number, most = 400): HighVoltage {
  return {
    id: 'traction',
    path: ['sources', 'traction'],
    kind: 'high-voltage',
    voltage: span(300, most),
    feeds: [],
    feedsComplete: true,
    wait: 300,
    reserve: 'unstated',
    resistance: 'unstated',
    isolatedBy: 'S1',
    safeBelow: exact(safeBelow),
  };
}

function battery(least: number, most: number): Battery {
  return {
    id: 'battery',
    path: ['sources', 'battery'],
    kind: 'battery',
    voltage: span(least, most),
    feeds: [],
    feedsComplete: true,
    wait: 0,
    reserve: 'unstated',
    resistance: 'unstated',
  };
}

interface Scale {
  readonly percent: number;
  readonly constant: number;
  readonly digits: number;
  readonly resolution: number;
}

function meter({ percent, constant, digits, resolution }: Scale, most = 600): Multimeter {
  const accuracy = { fraction: percent / 100, constant, digits };
  const voltage = { range: span(0, most), accuracy, resolution, input: exact(10e6) };
  return {
    id: 'hand-meter',
    path: ['instruments', 'hand-meter'],
    kind: 'multimeter',
    resistance: null,
    voltage,
    insulation: null,
    current: null,
    clamp: null,
    leads: null,
    zeroed: false,
  };
}

const good: Scale = { percent: 0.5, constant: 0, digits: 2, resolution: 0.1 };

describe('the reading that proves a source dead, by hand', () => {
  test('60 V less 0.5 % and 2 digits of 0.1 V is 59.5 V', () => {
    expect(proofLimit(source(60), meter(good))).toBe(59.5);
  });
  test('50 V less 1 % and 0.3 V is 49.2 V, 49 V on a display of whole volts', () => {
    const coarse = { percent: 1, constant: 0.3, digits: 0, resolution: 1 };
    expect(proofLimit(source(50), meter(coarse))).toBe(49);
  });
  test('what cannot be read is not known', () => {
    const unread = meter(good);
    expect(proofLimit({ ...source(60), safeBelow: null }, unread)).toBeNull();
    expect(proofLimit(source(60), { ...unread, voltage: null })).toBeNull();
  });
});

/*
 * What an error limit means (as in the data sheets of meters, common practice, no source): at V volts the meter shows any
 * step of its display next to a value from V(1 - p) - c to V(1 + p) + c.
 */
describe('whatever the meter does inside its error limit', () => {
  const scales = fc.record({
    percent: fc.integer({ min: 0, max: 50 }).map((tenths) => tenths / 10),
    constant: fc.integer({ min: 0, max: 20 }).map((tenths) => tenths / 10),
    digits: fc.integer({ min: 0, max: 9 }),
    resolution: fc.constantFrom(0.01, 0.1, 1),
  });
  const safe = fc.integer({ min: 200, max: 600 }).map((tenths) => tenths / 10);
  const least = (volts: number, { percent, constant, digits, resolution }: Scale): number =>
    volts * (1 - percent / 100) - constant - digits * resolution;

  test('a dangerous voltage is never shown below the limit', () => {
    fc.assert(
      fc.property(scales, safe, fc.double({ min: 0, max: 400, noNaN: true }), (scale, volts, more) => {
        const shown = Math.floor(least(volts + more, scale) / scale.resolution + 1e-6) * scale.resolution;
        expect(shown).toBeGreaterThanOrEqual((proofLimit(source(volts), meter(scale)) ?? NaN) - 1e-6);
      }),
      { seed: 60 },
    );
  });

  test('the limit is not lower than it has to be: one step more, and a dangerous voltage could be shown there', () => {
    fc.assert(
      fc.property(scales, safe, (scale, volts) => {
        const above = (proofLimit(source(volts), meter(scale)) ?? NaN) + scale.resolution;
        expect(least(volts, scale)).toBeLessThan(above + 1e-6);
      }),
      { seed: 61 },
    );
  });
});

describe('an instrument that cannot prove a source dead', () => {
  const why = (of: HighVoltage, known: Battery, one: Multimeter): string | null =>
    unfitFor(of, known, one, proofLimit(of, one));
  const usual = battery(12, 13);

  test('does not reach its voltage', () => {
    expect(why(source(60, 410), usual, meter(good, 409))).toBe('range');
    expect(why(source(60, 410), usual, meter(good, 410))).toBeNull();
  });
  test('shows nothing that is surely below the safe voltage', () => {
    const rough = (constant: number) => ({ ...good, digits: 0, percent: 0, constant });
    expect(why(source(60), battery(200, 210), meter(rough(60)))).toBe('accuracy');
    expect(why(source(60), battery(200, 210), meter(rough(59)))).toBeNull();
  });
  test('does not tell the known source from nothing', () => {
    const coarse = { percent: 0, constant: 6, digits: 0, resolution: 1 };
    expect(why(source(60), battery(12, 13), meter(coarse))).toBe('known');
    expect(why(source(60), battery(13, 14), meter(coarse))).toBeNull();
    expect(why(source(60), battery(500, 700), meter(good))).toBe('known');
  });
});

test('what hints and card print of the shipped procedure', () => {
  const file = new URL('../../procedures/interlock-open.procedure.yaml', import.meta.url);
  const { procedure } = readProcedure({ id: 'interlock', text: readFileSync(file, 'utf8') });
  const proofs = printedProofs(procedure);
  expect(proofs.length).toBeGreaterThan(1);
  for (const { index, ...printed } of proofs) {
    expect(procedure.steps[index]?.verb).toBe('prove-dead');
    // 410 V, at most 600 µF and 105 kΩ: 63 s. After 300 s 410 V / e^(300/63) is 3.5 V, outward to 0.1 V.
    const most = Math.ceil(10 * 410 * Math.E ** (-300 / (600e-6 * 105e3))) / 10;
    // 12.2 V less 0.5 % and 0.2 V is 11.939 V, 12.8 V and as much is 13.064 V: outward to 0.1 V.
    expect(printed).toEqual({
      limit: '59.5 V',
      residual: { most: `${most} V`, after: '5 min' },
      known: '11.9..13.1 V',
    });
  }
});
