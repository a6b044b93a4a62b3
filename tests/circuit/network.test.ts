import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type {
  ConditionRanges,
  Conditions,
  Element,
  Network,
  PartModel,
} from '../../server/src/circuit/circuit.ts';
import { networkWindow, resistanceAt } from '../../server/src/circuit/circuit.ts';
import type { Span } from '../../server/src/quantity/quantity.ts';
import { nodalResistance } from './nodal.ts';

const workshop: ConditionRanges = {
  ambient: { least: 10, nominal: 22.5, most: 35 },
  entered: new Map(),
};

function at(ambient: number): Conditions {
  return { ambient, entered: new Map() };
}

function stated(least: number, nominal = least, most = nominal): PartModel {
  return { kind: 'stated', resistance: { least, nominal, most } };
}

function element(id: string, a: string, b: string, part: PartModel): Element {
  return { id, between: [a, b], part };
}

function windowOf(network: Network, conditions = workshop): Span {
  const { value } = networkWindow(network, 'from', 'to', conditions);
  if (value === 'open') throw new Error('the network is open');
  return value;
}

/** Solves with one value for each element, by the node equations. */
function solved(network: Network, ohms: readonly number[]): number {
  const names = ['from', 'to', ...new Set(network.flatMap(({ between }) => between))];
  const edges = network.map(({ between: [a, b] }, index) => ({
    a: names.indexOf(a),
    b: names.indexOf(b),
    ohms: ohms[index] ?? Number.NaN,
  }));
  return nodalResistance(edges, names.length, 0, 1);
}

const partSpan = fc
  .tuple(fc.double({ min: 0.1, max: 10, noNaN: true }), fc.double({ min: 0, max: 0.5, noNaN: true }))
  .map(([nominal, part]): PartModel => stated(nominal * (1 - part), nominal, nominal * (1 + part)));
const wire = fc
  .record({
    squareMillimetres: fc.constantFrom(0.35, 0.5, 0.75, 1, 1.5),
    length: fc.double({ min: 1, max: 50, noNaN: true }),
    slack: fc.double({ min: 1, max: 1.2, noNaN: true }),
  })
  .map(({ squareMillimetres, length, slack }): PartModel => ({
    kind: 'copper-wire',
    wire: { squareMillimetres },
    length: { least: length, nominal: length, most: length * slack },
    temperature: 'ambient',
  }));

function networks(part: fc.Arbitrary<PartModel>, most: number): fc.Arbitrary<Network> {
  const node = fc.constantFrom('from', 'to', 'x', 'y');
  return fc
    .array(fc.tuple(node, node, part), { minLength: 3, maxLength: most })
    .map((rows) => rows.map(([a, b, model], index) => element(`part-${index}`, a, b, model)))
    .filter((network) => networkWindow(network, 'from', 'to', workshop).value !== 'open');
}

describe('the window of a network', () => {
  test('of parts in series is the sum of their ends', () => {
    // A pair of contacts of 2..15 mΩ, two conductors of 0.05..0.15 Ω and a bridge of 1.7..2.3 Ω, by hand:
    // least 0.004 + 0.1 + 1.7, nominal 0.017 + 0.2 + 2.0, most 0.030 + 0.3 + 2.3.
    const contact = stated(0.002, 0.0085, 0.015);
    const conductor = stated(0.05, 0.1, 0.15);
    const loop = [
      element('plus-contact', 'from', 'a', contact),
      element('plus-conductor', 'a', 'b', conductor),
      element('bridge', 'b', 'c', stated(1.7, 2, 2.3)),
      element('minus-conductor', 'c', 'd', conductor),
      element('minus-contact', 'd', 'to', contact),
    ];
    const { least, nominal, most } = windowOf(loop);
    expect(least).toBeCloseTo(1.804, 12);
    expect(nominal).toBeCloseTo(2.217, 12);
    expect(most).toBeCloseTo(2.63, 12);
  });

  test('is open where nothing connects the probes', () => {
    expect(networkWindow([], 'from', 'to', workshop)).toEqual({ value: 'open', exact: true });
    expect(networkWindow([element('r', 'from', 'x', stated(1))], 'from', 'to', workshop).value).toBe('open');
  });

  test('is nothing between a node and itself', () => {
    expect(networkWindow([element('r', 'from', 'x', stated(1))], 'x', 'x', workshop).value).toEqual({
      least: 0,
      nominal: 0,
      most: 0,
    });
  });

  test('of parts without spread is one number at one temperature', () => {
    const { least, nominal, most } = windowOf([
      element('one', 'from', 'to', stated(3)),
      element('two', 'from', 'to', stated(6)),
    ]);
    expect([least, nominal, most]).toEqual([2, 2, 2].map((value) => expect.closeTo(value, 14) as number));
  });

  test('is met at two of the corners of its parts, and no corner lies outside', () => {
    fc.assert(
      fc.property(networks(partSpan, 7), (network) => {
        const window = windowOf(network);
        const spans = network.map(({ part }) => resistanceAt(part, at(20)));
        let [lowest, highest] = [Infinity, -Infinity];
        for (let corner = 0; corner < 2 ** network.length; corner += 1) {
          const value = solved(
            network,
            spans.map(({ least, most }, index) => ((corner >> index) & 1 ? most : least)),
          );
          lowest = Math.min(lowest, value);
          highest = Math.max(highest, value);
        }
        expect(lowest / window.least).toBeCloseTo(1, 10);
        expect(highest / window.most).toBeCloseTo(1, 10);
      }),
    );
  });

  test('holds every value that parts inside their limits can give', () => {
    const inside = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 7, maxLength: 7 });
    fc.assert(
      fc.property(networks(partSpan, 7), inside, (network, places) => {
        const window = windowOf(network);
        const value = solved(
          network,
          network.map(({ part }, index) => {
            const { least, most } = resistanceAt(part, at(20));
            return least + (places[index] ?? 0) * (most - least);
          }),
        );
        expect(value).toBeGreaterThanOrEqual(window.least * (1 - 1e-10));
        expect(value).toBeLessThanOrEqual(window.most * (1 + 1e-10));
      }),
    );
  });

  test('holds every temperature of a sweep, and is met at its ends', () => {
    fc.assert(
      fc.property(networks(fc.oneof(partSpan, wire), 6), (network) => {
        const window = windowOf(network);
        const ends = (celsius: number): readonly [number, number] => {
          const spans = network.map(({ part }) => resistanceAt(part, at(celsius)));
          return [
            solved(
              network,
              spans.map(({ least }) => least),
            ),
            solved(
              network,
              spans.map(({ most }) => most),
            ),
          ];
        };
        for (let celsius = 10; celsius <= 35; celsius += 2.5) {
          const [lowest, highest] = ends(celsius);
          expect(lowest).toBeGreaterThanOrEqual(window.least * (1 - 1e-10));
          expect(highest).toBeLessThanOrEqual(window.most * (1 + 1e-10));
        }
        expect(ends(10)[0] / window.least).toBeCloseTo(1, 10);
        expect(ends(35)[1] / window.most).toBeCloseTo(1, 10);
      }),
    );
  });

  test('keeps least, nominal and most in order', () => {
    fc.assert(
      fc.property(networks(fc.oneof(partSpan, wire), 6), (network) => {
        const { least, nominal, most } = windowOf(network);
        expect(nominal).toBeGreaterThanOrEqual(least * (1 - 1e-13));
        expect(most).toBeGreaterThanOrEqual(nominal * (1 - 1e-13));
      }),
    );
  });
});
