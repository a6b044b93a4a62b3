import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { indicate, indicateInRanges } from '../../server/src/circuit/circuit.ts';
import type { Instrument } from '../../server/src/circuit/circuit.ts';
import { span } from './spans.ts';

function range(most: number, resolution: number): Instrument {
  return {
    range: span(0, most / 2, most),
    accuracy: { fraction: 0.008, constant: 0, digits: 2 },
    resolution,
  };
}

/** The 200 Ω range of a kit meter (its manual, 0.8 % + 2 digits), and its next two ranges as they would be by it. */
const ranges = [range(200, 0.1), range(2000, 1), range(20_000, 10)];

describe('a meter that takes its range by itself', () => {
  test('reads 60.0 Ω in its least range, with an error of 0.68 Ω (computed from its manual)', () => {
    const { value, displayed, canBeOpen } = indicateInRanges(span(60), ranges);
    expect(value?.least).toBeCloseTo(59.32, 12);
    expect(value?.most).toBeCloseTo(60.68, 12);
    expect(displayed).toEqual({ least: 59.3, most: 60.7 });
    expect(canBeOpen).toBe(false);
  });

  test('reads 1,000 Ω in the next one, in steps of 1 Ω', () => {
    // 0.8 % of 1000 and 2 digits of 1 Ω: ± 10 Ω.
    const { value, displayed } = indicateInRanges(span(1000), ranges);
    expect([value?.least, value?.most]).toEqual([expect.closeTo(990, 9), expect.closeTo(1010, 9)]);
    expect(displayed).toEqual({ least: 990, most: 1010 });
  });

  test('can show a circuit near the end of a range in either', () => {
    // 199 Ω: in the least range from 197.208, beyond its end by error; then in the next one up to 199 + 1.592 + 2.
    const { value, displayed, canBeOpen } = indicateInRanges(span(199), ranges);
    expect(value?.least).toBeCloseTo(195.408, 9);
    expect(value?.most).toBeCloseTo(202.592, 9);
    expect(displayed).toEqual({ least: 195, most: 203 });
    expect(canBeOpen).toBe(false);
  });

  test('is open beyond its last range', () => {
    expect(indicateInRanges(span(25_000), ranges)).toEqual({ value: null, canBeOpen: true, displayed: null });
    expect(indicateInRanges('open', ranges)).toEqual({ value: null, canBeOpen: true, displayed: null });
    expect(indicateInRanges(span(19_950), ranges).canBeOpen).toBe(true);
  });

  test('with one range shows what a meter of one range shows', () => {
    const ohms = fc.double({ min: 0, max: 250, noNaN: true });
    fc.assert(
      fc.property(ohms, ohms, (one, other) => {
        const circuit = span(Math.min(one, other), (one + other) / 2, Math.max(one, other));
        const [least] = ranges;
        const alone = indicate(circuit, least ?? range(200, 0.1));
        const ranged = indicateInRanges(circuit, ranges.slice(0, 1));
        expect(ranged.canBeOpen).toBe(alone.canBeOpen);
        expect(ranged.value === null).toBe(alone.value === null);
        expect(ranged.value?.least ?? 0).toBeCloseTo(alone.value?.least ?? 0, 9);
        expect(ranged.value?.most ?? 0).toBeCloseTo(alone.value?.most ?? 0, 9);
      }),
    );
  });

  test('never shows anything that is not in its window, whatever its error in each range', () => {
    const unit = fc.double({ min: -1, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 4.4, noNaN: true }).map((power) => 10 ** power),
        fc.tuple(unit, unit, unit),
        (ohms, errors) => {
          const { value, canBeOpen } = indicateInRanges(span(ohms), ranges);
          for (const [index, { range: own, resolution }] of ranges.entries()) {
            const reckoned = ohms + (errors[index] ?? 0) * (0.008 * ohms + 2 * resolution);
            if (reckoned > own.most) continue;
            expect(Math.max(0, reckoned)).toBeGreaterThanOrEqual((value?.least ?? Infinity) - 1e-9);
            expect(Math.max(0, reckoned)).toBeLessThanOrEqual((value?.most ?? -1) + 1e-9);
            return;
          }
          expect(canBeOpen).toBe(true);
        },
      ),
      { numRuns: 1000 },
    );
  });
});
