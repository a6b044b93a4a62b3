import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Instrument, Voltmeter } from '../../server/src/circuit/circuit.ts';
import { guardedVoltage, guardedWindow } from '../../server/src/circuit/circuit.ts';
import { monitor, span } from './spans.ts';

/** A kit meter, 200 Ω range in steps of 0.1 Ω, 0.8 % + 2 digits (its manual). */
const kitMeter: Instrument = {
  range: span(0, 100, 200),
  accuracy: { fraction: 0.008, constant: 0, digits: 2 },
  resolution: 0.1,
};

describe('the guarded window', () => {
  test('is the good window less the error at each end', () => {
    // 1.7 * 1.03 + 0.1 = 1.851; 2.3 * 0.97 - 0.1 = 2.131.
    const guarded = guardedWindow(span(1.7, 2, 2.3), monitor);
    expect(guarded?.least).toBeCloseTo(1.851, 12);
    expect(guarded?.most).toBeCloseTo(2.131, 12);
  });

  test('of 2.0 ± 0.3 Ω on a kit meter shrinks to about ± 0.084 Ω (computed from its manual)', () => {
    const guarded = guardedWindow(span(1.7, 2, 2.3), kitMeter) ?? { least: 0, most: 0 };
    expect((guarded.most - guarded.least) / 2).toBeCloseTo(0.084, 3);
  });

  test('is empty where the error is wider than the circuit', () => {
    expect(guardedWindow(span(2, 2, 2), monitor)).toBeNull();
    expect(guardedWindow(span(1.9, 2, 2.1), kitMeter)).toBeNull();
    expect(guardedWindow(span(11, 12, 13), monitor)).toBeNull();
  });

  test('has the ends of the range where the circuit has no end', () => {
    expect(guardedWindow(span(0, 0, 0.4), monitor)?.least).toBe(0);
    expect(guardedWindow(span(5, 8, Infinity), monitor)?.most).toBe(10);
  });

  test('does not trust the least of a range, which is shown for everything below it', () => {
    const fromTwo = { ...monitor, range: span(2, 5, 10) };
    expect(guardedWindow(span(1, 2, 5), fromTwo)?.least).toBeCloseTo(2.01, 12);
    expect(guardedWindow(span(0, 2, 5), fromTwo)?.least).toBe(2);
  });

  test('lets in no circuit from outside, and is no narrower than that needs', () => {
    const ohms = fc.double({ min: 0.5, max: 9, noNaN: true });
    const unit = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(ohms, ohms, unit, unit, unit, (one, other, place, gain, offset) => {
        const circuit = span(Math.min(one, other), one, Math.max(one, other));
        const guarded = guardedWindow(circuit, monitor);
        fc.pre(guarded !== null);
        const shown = guarded.least + place * (guarded.most - guarded.least);
        // Whatever circuit the number comes from, by any error within the limits, it is a good one.
        const from = (shown - 0.1 * (2 * offset - 1)) / (1 + 0.03 * (2 * gain - 1));
        expect(from).toBeGreaterThanOrEqual(circuit.least - 1e-9);
        expect(from).toBeLessThanOrEqual(circuit.most + 1e-9);
        // At each end there is an error that brings the number from the very end of the good circuits.
        expect((guarded.least - 0.1) / 1.03).toBeCloseTo(circuit.least, 9);
        if (guarded.most < 10) expect((guarded.most + 0.1) / 0.97).toBeCloseTo(circuit.most, 9);
      }),
    );
  });
});

describe('the guarded window of a voltage', () => {
  /** 0.5 % + 2 digits of 0.01 V, up to 20 V on either side. */
  const meter: Voltmeter = {
    range: span(0, 10, 20),
    accuracy: { fraction: 0.005, constant: 0, digits: 2 },
    resolution: 0.01,
    input: span(10e6),
  };

  test('is narrower by the error at each end, on either side of zero and across it', () => {
    // 11 + 0.055 + 0.02; 13 - 0.065 - 0.02.
    const above = guardedVoltage({ least: 11, most: 13 }, meter);
    expect([above?.least, above?.most]).toEqual([expect.closeTo(11.075, 12), expect.closeTo(12.915, 12)]);
    const below = guardedVoltage({ least: -13, most: -11 }, meter);
    expect([below?.least, below?.most]).toEqual([expect.closeTo(-12.915, 12), expect.closeTo(-11.075, 12)]);
    // -1 + 0.005 + 0.02.
    const across = guardedVoltage({ least: -1, most: 1 }, meter);
    expect([across?.least, across?.most]).toEqual([expect.closeTo(-0.975, 12), expect.closeTo(0.975, 12)]);
  });

  test('is not limited where the voltage is not, and ends with the range where it is', () => {
    expect(guardedVoltage({ least: -Infinity, most: 0.1 }, meter)).toEqual({
      least: -Infinity,
      most: expect.closeTo(0.0795, 12) as number,
    });
    expect(guardedVoltage({ least: 10, most: Infinity }, meter)?.most).toBe(Infinity);
    expect(guardedVoltage({ least: 19, most: 30 }, meter)?.most).toBe(20);
    expect(guardedVoltage({ least: -30, most: -19 }, meter)?.least).toBe(-20);
  });

  test('is empty where the error is wider than the limits, and beyond the range', () => {
    expect(guardedVoltage({ least: 5, most: 5 }, meter)).toBeNull();
    expect(guardedVoltage({ least: 12, most: 12.1 }, meter)).toBeNull();
    expect(guardedVoltage({ least: 21, most: 30 }, meter)).toBeNull();
    expect(guardedVoltage({ least: 21, most: Infinity }, meter)).toBeNull();
    expect(guardedVoltage({ least: -Infinity, most: -21 }, meter)).toBeNull();
  });

  test('lets in no voltage from outside, and is no narrower than that needs', () => {
    const volt = fc.double({ min: -19, max: 19, noNaN: true });
    const unit = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(volt, volt, unit, unit, (one, other, place, error) => {
        const limits = { least: Math.min(one, other), most: Math.max(one, other) };
        const guarded = guardedVoltage(limits, meter);
        fc.pre(guarded !== null);
        const shown = guarded.least + place * (guarded.most - guarded.least);
        // shown = V + e (0.005 |V| + 0.02), e from -1 to 1, solved for V.
        const e = 2 * error - 1;
        const rest = shown - 0.02 * e;
        const from = rest / (1 + Math.sign(rest) * 0.005 * e);
        expect(from).toBeGreaterThanOrEqual(limits.least - 1e-9);
        expect(from).toBeLessThanOrEqual(limits.most + 1e-9);
        expect(guarded.least - 0.02 - 0.005 * Math.abs(limits.least)).toBeCloseTo(limits.least, 9);
        expect(guarded.most + 0.02 + 0.005 * Math.abs(limits.most)).toBeCloseTo(limits.most, 9);
      }),
    );
  });
});
