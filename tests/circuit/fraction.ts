import type { Edge } from '../../server/src/circuit/circuit.ts';
import { pieceAround } from './nodal.ts';

/** An exact rational number. The denominator is positive. */
export interface Fraction {
  readonly over: bigint;
  readonly under: bigint;
}

/** Every finite double is a fraction: doubling it often enough makes it whole, without rounding. */
export function exactly(value: number): Fraction {
  let scaled = value;
  let under = 1n;
  while (!Number.isInteger(scaled)) {
    scaled *= 2;
    under *= 2n;
  }
  return lowest(BigInt(scaled), under);
}

/** |value / exact - 1| ≤ within, decided without any rounding. */
export function isWithin(value: number, exact: Fraction, within: number): boolean {
  const difference = minus(exactly(value), exact);
  const allowed = times(exact, exactly(within));
  return minus({ over: absolute(difference.over), under: difference.under }, allowed).over <= 0n;
}

/** The resistance between two connected nodes, by exact Gaussian elimination of the node equations. */
export function exactResistance(edges: readonly Edge[], from: number, to: number): Fraction {
  const unknown = [...pieceAround(edges, from)].filter((node) => node !== to);
  const row = new Map(unknown.map((node, index) => [node, index]));
  const zero: Fraction = { over: 0n, under: 1n };
  const matrix = unknown.map((node) => [
    ...unknown.map(() => zero),
    node === from ? { over: 1n, under: 1n } : zero,
  ]);
  const change = (node: number, column: number | undefined, by: Fraction): void => {
    const equation = matrix[row.get(node) ?? -1];
    if (equation !== undefined && column !== undefined) equation[column] = plus(equation[column] ?? zero, by);
  };
  for (const { a, b, ohms } of edges) {
    if (a === b || ohms === Infinity) continue;
    const siemens = inverse(exactly(ohms));
    for (const [here, there] of [
      [a, b],
      [b, a],
    ] as const) {
      change(here, row.get(here), siemens);
      change(here, row.get(there), { over: -siemens.over, under: siemens.under });
    }
  }
  // The node equations are positive definite, so every pivot on the diagonal is above zero.
  for (const [column, upper] of matrix.entries()) {
    const pivot = inverse(upper[column] ?? zero);
    for (const [index, lower] of matrix.entries()) {
      const head = lower[column] ?? zero;
      if (index === column || head.over === 0n) continue;
      const factor = times(head, pivot);
      matrix[index] = lower.map((value, place) =>
        place < column ? value : minus(value, times(factor, upper[place] ?? zero)),
      );
    }
  }
  const index = row.get(from) ?? -1;
  const solved = matrix[index] ?? [];
  return times(solved[unknown.length] ?? zero, inverse(solved[index] ?? zero));
}

function plus(left: Fraction, right: Fraction): Fraction {
  return lowest(left.over * right.under + right.over * left.under, left.under * right.under);
}

function minus(left: Fraction, right: Fraction): Fraction {
  return plus(left, { over: -right.over, under: right.under });
}

function times(left: Fraction, right: Fraction): Fraction {
  return lowest(left.over * right.over, left.under * right.under);
}

function inverse({ over, under }: Fraction): Fraction {
  return over < 0n ? { over: -under, under: -over } : { over: under, under: over };
}

function lowest(over: bigint, under: bigint): Fraction {
  let [a, b] = [absolute(over), under];
  while (b !== 0n) [a, b] = [b, a % b];
  return a === 0n ? { over: 0n, under: 1n } : { over: over / a, under: under / a };
}

function absolute(value: bigint): bigint {
  return value < 0n ? -value : value;
}
