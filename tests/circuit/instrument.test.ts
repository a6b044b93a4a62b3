import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Instrument } from '../../server/src/circuit/circuit.ts';
import { indicate } from '../../server/src/circuit/circuit.ts';
import type { Span } from '../../server/src/quantity/quantity.ts';
import { monitor, span } from './spans.ts';

const handMeter: Instrument = {
  range: span(0, 200, 400),
  accuracy: { fraction: 0.008, constant: 0, digits: 3 },
  resolution: 0.1,
};

/** Compares up to the rounding of doubles. */
function about({ least, nominal, most }: Span): Span {
  const near = (value: number): number => expect.closeTo(value, 12) as number;
  return { least: near(least), nominal: near(nominal), most: near(most) };
}

describe('what an instrument shows', () => {
  test('spreads by its percentage of the reading and its constant', () => {
    // 1.8 * 0.97 - 0.1 = 1.646; 2.6 * 1.03 + 0.1 = 2.778.
    expect(indicate(span(1.8, 2.2, 2.6), monitor)).toEqual({
      value: about(span(1.646, 2.2, 2.778)),
      canBeOpen: false,
    });
  });

  test('spreads by digits of its display', () => {
    // 3 digits of 0.1 Ω are 0.3 Ω: 2 * 0.992 - 0.3 = 1.684; 2 * 1.008 + 0.3 = 2.316.
    expect(indicate(span(2), handMeter)).toEqual({ value: about(span(1.684, 2, 2.316)), canBeOpen: false });
  });

  test('adds constant and digits where both are stated', () => {
    const both = { ...handMeter, accuracy: { fraction: 0.01, constant: 0.05, digits: 2 } };
    // 10 * 0.99 - 0.05 - 0.2 = 9.65; 10 * 1.01 + 0.25 = 10.35.
    expect(indicate(span(10), both)).toEqual({ value: about(span(9.65, 10, 10.35)), canBeOpen: false });
  });

  test('never goes below zero', () => {
    // 0.05 * 0.97 - 0.1 = -0.0515, shown as 0; 0.05 * 1.03 + 0.1 = 0.1515.
    expect(indicate(span(0.05), monitor)).toEqual({ value: about(span(0, 0.05, 0.1515)), canBeOpen: false });
    expect(indicate(span(0), monitor)).toEqual({ value: about(span(0, 0, 0.1)), canBeOpen: false });
  });

  test('never goes below the least of its range', () => {
    const fromOne = { ...monitor, range: span(1, 5, 10) };
    // 1.1 * 0.97 - 0.1 = 0.967; 0.2 * 1.03 + 0.1 = 0.306.
    expect(indicate(span(1.1), fromOne)).toEqual({ value: about(span(1, 1.1, 1.233)), canBeOpen: false });
    expect(indicate(span(0.2), fromOne)).toEqual({ value: span(1), canBeOpen: false });
  });

  test('can be a number or open where only its error passes the range', () => {
    // 9.7 * 0.97 - 0.1 = 9.309; 9.7 * 1.03 + 0.1 = 10.091, beyond 10.
    expect(indicate(span(9.7), monitor)).toEqual({ value: about(span(9.309, 9.7, 10)), canBeOpen: true });
    // R itself beyond the range, and the error can still bring it back: 10.3 * 0.97 - 0.1 = 9.891.
    expect(indicate(span(10.3), monitor)).toEqual({ value: about(span(9.891, 10, 10)), canBeOpen: true });
  });

  test('is open where no error brings the circuit back into range', () => {
    // 10.5 * 0.97 - 0.1 = 10.085.
    expect(indicate(span(10.5, 11, 12), monitor)).toEqual({ value: null, canBeOpen: true });
    expect(indicate('open', monitor)).toEqual({ value: null, canBeOpen: true });
  });

  test('is a number up to the very end of the range, whatever the rounding of doubles', () => {
    const plain = { ...monitor, accuracy: { fraction: 0, constant: 0.1, digits: 0 } };
    expect(indicate(span(9.9), plain)).toEqual({ value: about(span(9.8, 9.9, 10)), canBeOpen: false });
    expect(indicate(span(10.1), plain)).toEqual({ value: about(span(10)), canBeOpen: true });
    const tenth = {
      ...monitor,
      range: span(0, 0.15, 0.3),
      accuracy: { fraction: 0, constant: 0.2, digits: 0 },
    };
    // 0.1 + 0.2 is 0.30000000000000004 in doubles; the end of the range is reached, not passed.
    expect(indicate(span(0.1), tenth)).toEqual({ value: about(span(0, 0.1, 0.3)), canBeOpen: false });
  });

  test('can be open where the circuit can', () => {
    expect(indicate(span(2, 3, Infinity), monitor)).toEqual({
      value: about(span(1.84, 3, 10)),
      canBeOpen: true,
    });
  });

  test('holds what every error inside the limits can make of every circuit inside its limits', () => {
    const unit = fc.double({ min: 0, max: 1, noNaN: true });
    const ohms = fc.double({ min: 0, max: 12, noNaN: true });
    fc.assert(
      fc.property(ohms, ohms, unit, unit, unit, (one, other, place, gain, offset) => {
        const circuit = span(Math.min(one, other), (one + other) / 2, Math.max(one, other));
        const { value, canBeOpen } = indicate(circuit, monitor);
        const actual = circuit.least + place * (circuit.most - circuit.least);
        const shown = Math.max(0, actual * (1 + 0.03 * (2 * gain - 1)) + 0.1 * (2 * offset - 1));
        if (shown > 10 + 1e-9) expect(canBeOpen).toBe(true);
        if (shown < 10 - 1e-9) {
          expect(shown).toBeGreaterThanOrEqual((value?.least ?? Infinity) - 1e-12);
          expect(shown).toBeLessThanOrEqual((value?.most ?? -Infinity) + 1e-12);
        }
      }),
      { numRuns: 1000 },
    );
  });
});
