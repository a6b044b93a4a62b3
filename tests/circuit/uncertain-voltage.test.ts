import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  drawReadings,
  middlePart,
  rootSumSquare,
  sharesOfVoltage,
  uncertainVoltage,
} from '../../server/src/circuit/circuit.ts';
import type {
  Drawn,
  Element,
  Source,
  UncertainVoltage,
  Voltmeter,
} from '../../server/src/circuit/circuit.ts';
import type { Span } from '../../server/src/quantity/span.ts';

/* How likely the values of a voltage are: a divider worked out by hand, and drawing against the sum of squares. */

const perfect: Voltmeter = {
  range: { least: 0, nominal: 50, most: 100 },
  accuracy: { fraction: 0, constant: 0, digits: 0 },
  resolution: 0.001,
  input: { least: 1e15, nominal: 1e15, most: 1e15 },
};

const around = (nominal: number, part: number): Span => ({
  least: nominal * (1 - part),
  nominal,
  most: nominal * (1 + part),
});

function divider(upper: Span, lower: Span, supply: Span, meter = perfect): UncertainVoltage {
  const resistor = (id: string, between: Element['between'], resistance: Span): Element => ({
    id,
    between,
    part: { kind: 'stated', resistance },
  });
  const battery: Source = { id: 'battery', between: ['plus', 'ground'], kind: 'voltage', value: supply };
  return {
    network: [resistor('upper', ['plus', 'middle'], upper), resistor('lower', ['middle', 'ground'], lower)],
    sources: [battery],
    from: 'middle',
    to: 'ground',
    ranges: { ambient: { least: 10, nominal: 22.5, most: 35 }, entered: new Map() },
    meter,
    causeOf: ({ id }) => id,
  };
}

function drawn(reading: UncertainVoltage, draws: number): Drawn {
  const drawing = drawReadings(uncertainVoltage(reading), draws, 1);
  for (;;) {
    const next = drawing.next();
    if (next.done === true) return next.value;
  }
}

describe('a divider', () => {
  // dU/U of the supply 1, of each resistor R1/(R1 + R2): two equal ones of 5 % and a supply of 2 % in the uncertainty
  // budget of JCGM 100, 5.1.2: 6 V times the root of 0.02² + 2 (0.5 * 0.05)², over √3.
  test('has the standard uncertainty that its sensitivities give (JCGM 100:2008, 5.1.2)', () => {
    const reading = divider(around(1000, 0.05), around(1000, 0.05), around(12, 0.02));
    const expected = (6 * Math.hypot(0.02, 0.025, 0.025)) / Math.sqrt(3);
    expect(rootSumSquare(uncertainVoltage(reading))?.standard).toBeCloseTo(expected, 3);
    const shares = sharesOfVoltage(reading);
    const sum = 0.02 * 2 + 0.05 * 0.5 * 2 * 2;
    expect(shares?.sources[0]).toBeCloseTo(0.04 / sum, 2);
    expect(shares?.elements[0]).toBeCloseTo(0.05 / sum, 2);
    expect(shares?.elements[1]).toBeCloseTo(0.05 / sum, 2);
  });

  test('with a meter of 10 MΩ reads the loaded value, and its error has a share', () => {
    const meter: Voltmeter = {
      ...perfect,
      input: around(10e6, 0),
      accuracy: { fraction: 0.005, constant: 0, digits: 2 },
    };
    const exact = (value: number): Span => around(value, 0);
    const reading = divider(exact(10e6), exact(10e6), exact(12), meter);
    // 10 MΩ beside 10 MΩ is 5 MΩ: a third of 12 V.
    const likely = rootSumSquare(uncertainVoltage(reading));
    expect(((likely?.least ?? NaN) + (likely?.most ?? NaN)) / 2).toBeCloseTo(4, 9);
    expect(likely?.standard).toBeCloseTo((0.005 * 4 + 0.002) / Math.sqrt(3), 9);
    expect(sharesOfVoltage(reading)).toEqual({ elements: [0, 0], sources: [0], instrument: 1 });
  });
});

test('drawing and the sum of squares agree within the straight line, and every draw is inside the worst case', () => {
  const ohms = fc.double({ min: 10, max: 1000, noNaN: true });
  const part = fc.double({ min: 0.005, max: 0.05, noNaN: true });
  fc.assert(
    fc.property(ohms, ohms, part, part, part, (upper, lower, one, other, third) => {
      const reading = divider(around(upper, one), around(lower, other), around(12, third));
      const { worst } = uncertainVoltage(reading);
      const likely = rootSumSquare(uncertainVoltage(reading));
      const sample = drawn(reading, 2000);
      if (worst === null || likely === null) throw new Error('a divider reads a number');
      expect(sample.shown[0]).toBeGreaterThanOrEqual(worst.least * (1 - 1e-12));
      expect(sample.shown.at(-1)).toBeLessThanOrEqual(worst.most * (1 + 1e-12));
      expect(Math.abs(sample.standard / likely.standard - 1)).toBeLessThan(0.08);
      const middle = middlePart(sample, 0.95);
      expect(middle.least).toBeGreaterThanOrEqual(worst.least);
      expect(middle.most).toBeLessThanOrEqual(worst.most);
    }),
    { numRuns: 40, seed: 2026 },
  );
});
