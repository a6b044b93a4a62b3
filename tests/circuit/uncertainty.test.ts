import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  drawReadings,
  indicate,
  middlePart,
  networkWindow,
  rootSumSquare,
  uncertainResistance,
  sharesOfWidth,
} from '../../server/src/circuit/circuit.ts';
import type {
  Drawn,
  Element,
  Instrument,
  PartModel,
  Likely,
  UncertainReading,
} from '../../server/src/circuit/circuit.ts';
import { generators, seededRandom } from '../../server/src/circuit/random.ts';

/** Shows what is there. */
const perfect: Instrument = {
  range: { least: 0, nominal: 5e5, most: 1e6 },
  accuracy: { fraction: 0, constant: 0, digits: 0 },
  resolution: 0.001,
};
const monitor: Instrument = {
  range: { least: 0, nominal: 5, most: 10 },
  accuracy: { fraction: 0.03, constant: 0.1, digits: 0 },
  resolution: 0.01,
};

function around(nominal: number, half: number): PartModel {
  return {
    kind: 'stated',
    resistance: { least: nominal - half, nominal, most: nominal + half },
  };
}

function series(...parts: readonly PartModel[]): readonly Element[] {
  return parts.map((part, index) => ({
    id: `part-${index}`,
    between: [index === 0 ? 'from' : `${index}`, index === parts.length - 1 ? 'to' : `${index + 1}`],
    part,
  }));
}

function readingOf(
  network: readonly Element[],
  instrument = perfect,
  causeOf: UncertainReading['causeOf'] = ({ id }) => id,
): UncertainReading {
  const ranges = { ambient: { least: 10, nominal: 22.5, most: 35 }, entered: new Map() };
  return { network, from: 'from', to: 'to', ranges, instrument, causeOf };
}

function likelyOf(reading: UncertainReading): Likely | null {
  return rootSumSquare(uncertainResistance(reading));
}

function standardOf(reading: UncertainReading): number {
  return likelyOf(reading)?.standard ?? NaN;
}

function drawn(reading: UncertainReading, draws: number, seed = 1): Drawn {
  const drawing = drawReadings(uncertainResistance(reading), draws, seed);
  for (;;) {
    const next = drawing.next();
    if (next.done === true) return next.value;
  }
}

const rectangular = Math.sqrt(3);

describe('the root of the sum of the squares', () => {
  test('JCGM 100:2008, 4.3.7: a quantity evenly within ± a has the standard uncertainty a / √3', () => {
    expect(standardOf(readingOf(series(around(10, 3))))).toBeCloseTo(rectangular, 12);
  });

  test('JCGM 101:2008, table 3: four even quantities of standard deviation 1 sum to 2.0, by k = 2 ± 4.0', () => {
    const reading = readingOf(series(...[1, 2, 3, 4].map(() => around(10, rectangular))));
    const likely = likelyOf(reading);
    expect(likely?.standard).toBeCloseTo(2, 12);
    expect(likely?.least).toBeCloseTo(36, 12);
    expect(likely?.most).toBeCloseTo(44, 12);
  });

  test('JCGM 101:2008, 9.2.4, from memory: standard deviations 1, 1, 1 and 10 sum to 10.1', () => {
    const reading = readingOf(series(...[1, 1, 1, 10].map((each) => around(100, each * rectangular))));
    expect(standardOf(reading)).toBeCloseTo(Math.sqrt(103), 12);
    expect(standardOf(reading)).toBeCloseTo(10.1, 1);
  });

  test('ten equal parts of ± 0.1 in a measuring chain are ± 0.316 together (worked example), each over √3', () => {
    const reading = readingOf(series(...Array.from({ length: 10 }, () => around(1, 0.1))));
    expect(rectangular * standardOf(reading)).toBeCloseTo(0.316, 3);
  });

  test('Rajput, Electronic Measurements, chapter 1: 0.3, 1.4 and 0.9 % are 1.69 % together, in like parts', () => {
    const reading = readingOf(series(...[0.3, 1.4, 0.9].map((half) => around(100, half))));
    expect(rectangular * standardOf(reading)).toBeCloseTo(1.6912, 4);
  });

  test('470 + 470 Ω ± 1 %: ± 0.707 %, not the 1.41 % that a calculator page prints (computed)', () => {
    const reading = readingOf(series(around(470, 4.7), around(470, 4.7)));
    expect((rectangular * standardOf(reading)) / 940).toBeCloseTo(0.00707, 5);
  });

  test('JCGM 100:2008, 5.2.2, from memory: ten resistors of one standard, 100 mΩ each, are 1.0 Ω and not 0.32 Ω', () => {
    const network = series(...Array.from({ length: 10 }, () => around(1000, 0.1 * rectangular)));
    expect(standardOf(readingOf(network, perfect, () => 'the standard'))).toBeCloseTo(1, 9);
    expect(standardOf(readingOf(network))).toBeCloseTo(0.316, 3);
  });

  test('EA-4/02, supplement S3: the standard uncertainties of a 10 kΩ standard resistor sum to 8.328 mΩ (inputs from memory)', () => {
    // Milliohms: the standard and its drift, two temperatures, the comparator at 10 kΩ, five readings of the ratio.
    const five = 1.58 / Math.sqrt(5);
    const inputs = [2.5, 10 / rectangular, 2.75 / rectangular, 5.5 / rectangular, 10 / Math.sqrt(6), five];
    const reading = readingOf(series(...inputs.map((each) => around(100, each * rectangular))));
    expect(standardOf(reading)).toBeCloseTo(8.328, 3);
  });

  test('a common cause that moves parts both ways cancels before it is squared', () => {
    const copper: PartModel = {
      kind: 'copper-coil',
      resistance: { least: 10, nominal: 10, most: 10 },
      at: 22.5,
      temperature: 'ambient',
    };
    // At 22.5 °C the copper rises by 10 / 257 Ω a kelvin and a sensor of B = 1000 K falls by B / T² of itself, 1.14 %: at
    // 3.4 Ω, which it is there, as fast.
    const sensor = (r25: number): PartModel => ({
      kind: 'thermistor',
      curve: {
        r25: { least: r25, nominal: r25, most: r25 },
        beta: { least: 1000, nominal: 1000, most: 1000 },
      },
      tolerance: null,
      temperature: 'ambient',
    });
    const alone = standardOf(readingOf(series(copper)));
    expect(alone).toBeCloseTo((10 * 12.5) / 257 / rectangular, 9);
    expect(standardOf(readingOf(series(copper, sensor(3.3))))).toBeLessThan(alone / 10);
  });

  test('the error limit of a meter without a distribution is divided by √3 (training of a calibration laboratory)', () => {
    const specification = {
      ...perfect,
      accuracy: { fraction: 0.008, constant: 0, digits: 2 },
      resolution: 0.1,
    };
    expect(standardOf(readingOf(series(around(60, 0)), specification))).toBeCloseTo(0.68 / rectangular, 12);
  });

  test('leads count as a part of their own', () => {
    const leads = { ...perfect, leads: { least: 0.1, nominal: 0.2, most: 0.3 } };
    const likely = likelyOf(readingOf(series(around(2, 0)), leads));
    expect(likely?.standard).toBeCloseTo(0.1 / rectangular, 12);
    expect(likely?.least).toBeCloseTo(2.1, 12);
    expect(likely?.most).toBeCloseTo(2.3, 12);
  });

  test('is cut to the worst case: one part that dominates would pass it by 1.155', () => {
    const likely = likelyOf(readingOf(series(around(10, 3))));
    expect(likely?.standard).toBeCloseTo(3 / rectangular, 12);
    expect(likely?.least).toBeCloseTo(7, 12);
    expect(likely?.most).toBeCloseTo(13, 12);
  });

  test('has no value where there is no path or no number', () => {
    expect(likelyOf({ ...readingOf(series(around(2, 0.3))), to: 'elsewhere' })).toBeNull();
    expect(likelyOf(readingOf(series(around(20, 0.3)), monitor))).toBeNull();
  });
});

const ohms = fc.double({ min: 0.1, max: 3, noNaN: true });
const meshed = fc
  .array(fc.tuple(fc.constantFrom('from', 'a', 'b'), fc.constantFrom('a', 'b', 'to'), ohms, ohms), {
    minLength: 3,
    maxLength: 8,
  })
  .map((rows) =>
    rows.map(([a, b, one, other], index): Element => {
      const resistance = {
        least: Math.min(one, other),
        nominal: (one + other) / 2,
        most: Math.max(one, other),
      };
      return { id: `part-${index}`, between: [a, b], part: { kind: 'stated', resistance } };
    }),
  )
  .filter((network) => networkWindow(network, 'from', 'to', readingOf([]).ranges).value !== 'open');

describe('drawn readings', () => {
  test('JCGM 101:2008, table 3: four even quantities of standard deviation 1: u = 2.0, 95 % within ± 3.88', () => {
    const reading = readingOf(series(...[1, 2, 3, 4].map(() => around(10, rectangular))));
    const many = drawn(reading, 100_000);
    expect(many.mean).toBeCloseTo(40, 1);
    expect(many.standard).toBeCloseTo(2, 1);
    const { least, most } = middlePart(many, 0.95);
    expect(least - 40).toBeCloseTo(-3.88, 1);
    expect(most - 40).toBeCloseTo(3.88, 1);
  });

  test('JCGM 101:2008, 9.2.4, from memory: one that dominates: u = 10.1, 95 % within ± 17.0, not ± 19.9', () => {
    const many = drawn(
      readingOf(series(...[1, 1, 1, 10].map((each) => around(100, each * rectangular)))),
      100_000,
    );
    expect(many.standard).toBeCloseTo(10.1, 0);
    const { least, most } = middlePart(many, 0.95);
    expect((most - least) / 2).toBeGreaterThan(16.9);
    expect((most - least) / 2).toBeLessThan(17.1);
  });

  test('lie within the worst case, every one', () => {
    fc.assert(
      fc.property(meshed, fc.nat(), fc.constantFrom(perfect, monitor), (network, seed, instrument) => {
        const reading = readingOf(network, instrument);
        const circuit = networkWindow(network, 'from', 'to', reading.ranges).value;
        const { value, canBeOpen } = indicate(circuit, instrument);
        for (const shown of drawn(reading, 200, seed).shown) {
          if (shown === Infinity) expect(canBeOpen).toBe(true);
          else {
            expect(shown).toBeGreaterThanOrEqual((value?.least ?? Infinity) * (1 - 1e-12));
            expect(shown).toBeLessThanOrEqual((value?.most ?? 0) * (1 + 1e-12));
          }
        }
      }),
    );
  });

  test('spread as the root of the sum of the squares says, where parts are many', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(ohms, ohms), { minLength: 8, maxLength: 12 }), (pairs) => {
        const network = series(...pairs.map(([nominal, part]) => around(nominal, (nominal * part) / 3)));
        const reading = readingOf(network);
        expect(drawn(reading, 4000).standard / standardOf(reading)).toBeCloseTo(1, 1);
      }),
      { numRuns: 20 },
    );
  });

  test('are the same for the same seed, and others for another', () => {
    const reading = readingOf(series(around(2, 0.3)), monitor);
    expect(drawn(reading, 50, 7).shown).toEqual(drawn(reading, 50, 7).shown);
    expect(drawn(reading, 50, 7).shown).not.toEqual(drawn(reading, 50, 8).shown);
  });
});

describe('the generator of JCGM 101:2008, annex C.3', () => {
  test('has moduli that are prime, and factors that go into them as Schrage splits them', () => {
    const isPrime = (value: number): boolean => {
      for (let divisor = 2; divisor * divisor <= value; divisor += 1) if (value % divisor === 0) return false;
      return true;
    };
    // The divisors and remainders that the annex prints beside each factor.
    const printed = [
      [185_127, 10_379],
      [45_688, 10_479],
      [93_368, 19_423],
      [65_075, 8123],
    ];
    for (const [index, { factor, modulus }] of generators.entries()) {
      expect(isPrime(modulus)).toBe(true);
      expect([Math.floor(modulus / factor), modulus % factor]).toEqual(printed[index]);
    }
  });

  test.each([0, 1, 2, 4_294_967_295])('draws evenly from seed %d', (seed) => {
    const random = seededRandom(seed);
    const counts = new Array<number>(20).fill(0);
    const draws = 100_000;
    for (let draw = 0; draw < draws; draw += 1) {
      const cell = Math.floor(20 * random());
      counts[cell] = (counts[cell] ?? 0) + 1;
    }
    expect(counts).toHaveLength(20);
    const chiSquare = counts.reduce((sum, count) => sum + (count - draws / 20) ** 2 / (draws / 20), 0);
    // Chi square of 19 degrees of freedom passes 43.8 once in a thousand times.
    expect(chiSquare).toBeLessThan(43.8);
  });
});

describe('shares of the width', () => {
  test('in series are the widths themselves, the instrument as a part', () => {
    // Widths 0.6 and 0.2; the instrument 2 * (0.03 * 2.2 + 0.1) = 0.332 at 2.2 Ω.
    const { network, from, to, ranges } = readingOf(series(around(2, 0.3), around(0.2, 0.1)));
    const shares = sharesOfWidth(network, from, to, ranges, monitor);
    expect(shares?.elements[0]).toBeCloseTo(0.6 / 1.132, 12);
    expect(shares?.elements[1]).toBeCloseTo(0.2 / 1.132, 12);
    expect(shares?.instrument).toBeCloseTo(0.332 / 1.132, 12);
    expect(shares?.leads).toBe(0);
  });

  test('side by side go by the square of the current', () => {
    // Of 3 A, 2 A go through 10 Ω and 1 A through 20 Ω: 4/9 * 2 and 1/9 * 4, as 2 to 1.
    const network = [around(10, 1), around(20, 2)].map((part, index): Element => ({
      id: `part-${index}`,
      between: ['from', 'to'],
      part,
    }));
    const shares = sharesOfWidth(network, 'from', 'to', readingOf([]).ranges, perfect);
    expect(shares?.elements.map((share) => Number(share.toFixed(12)))).toEqual([
      expect.closeTo(2 / 3, 10),
      expect.closeTo(1 / 3, 10),
    ]);
  });

  test('sum to 1', () => {
    fc.assert(
      fc.property(meshed, fc.constantFrom(perfect, monitor), (network, instrument) => {
        const shares = sharesOfWidth(network, 'from', 'to', readingOf([]).ranges, instrument);
        fc.pre(shares !== null);
        const all = [...shares.elements, shares.instrument, shares.leads];
        expect(all.every((share) => share >= 0)).toBe(true);
        expect(all.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
      }),
    );
  });

  test('are none where nothing has a width', () => {
    expect(sharesOfWidth(series(around(2, 0)), 'from', 'to', readingOf([]).ranges, perfect)).toBeNull();
  });
});
