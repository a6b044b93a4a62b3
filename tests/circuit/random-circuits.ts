import fc from 'fast-check';
import type { Drive, Edge } from '../../server/src/circuit/circuit.ts';

/** Resistors and sources between numbered nodes. */
export interface Circuit {
  readonly edges: readonly Edge[];
  readonly drives: readonly Drive[];
  readonly nodes: number;
}

/** Of either sign, in whole hundredths. */
function hundredths(most: number): fc.Arbitrary<number> {
  return fc.integer({ min: -100 * most, max: 100 * most }).map((value) => value / 100);
}

/**
 * Any nodes joined by any resistors, with one to four sources: voltage sources that share no node, so that none is in
 * conflict with another, and current sources with a way back through a resistor.
 */
export function circuits(ohms: fc.Arbitrary<number>, mostNodes = 10): fc.Arbitrary<Circuit> {
  return fc.integer({ min: 4, max: mostNodes }).chain((nodes) => {
    const node = fc.integer({ min: 0, max: nodes - 1 });
    const edge = fc.record({ a: node, b: node, ohms });
    return fc
      .record({
        edges: fc.array(edge, { minLength: nodes, maxLength: 3 * nodes }),
        order: fc.shuffledSubarray(
          Array.from({ length: nodes }, (_, index) => index),
          { minLength: nodes },
        ),
        volts: fc.array(hundredths(24), { minLength: 1, maxLength: 2 }),
        amperes: fc.array(fc.tuple(node, node, hundredths(1), ohms), {
          maxLength: 2,
        }),
      })
      .map(({ edges, order, volts, amperes }) => ({
        nodes,
        edges: [
          ...edges,
          ...amperes.flatMap(([a, b, , beside]) =>
            a === b || beside === Infinity ? [] : [{ a, b, ohms: beside }],
          ),
        ],
        drives: [
          ...volts.map((value, index): Drive => ({
            a: order[2 * index] ?? 0,
            b: order[2 * index + 1] ?? 0,
            kind: 'voltage',
            value,
          })),
          ...amperes.flatMap(([a, b, value, beside]): Drive[] =>
            a === b || beside === Infinity ? [] : [{ a, b, kind: 'current', value }],
          ),
        ],
      }));
  });
}
