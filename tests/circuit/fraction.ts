import type { Drive, Edge } from '../../server/src/circuit/circuit.ts';
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
  const one = { a: from, b: to, kind: 'current', value: 1 } as const;
  return exactVolts(edges, [one], to).get(from) ?? zero;
}

const zero: Fraction = { over: 0n, under: 1n };

/**
 * Potentials above a node of everything that is connected with it, by exact Gaussian elimination of the equations of the
 * nodes and of the voltage sources (modified nodal analysis). No resistor of 0 Ω, no source in conflict.
 */
export function exactVolts(
  edges: readonly Edge[],
  drives: readonly Drive[],
  ground: number,
): ReadonlyMap<number, Fraction> {
  const voltages = drives.filter(({ kind }) => kind === 'voltage');
  const piece = pieceAround([...edges, ...voltages.map(({ a, b }) => ({ a, b, ohms: 1 }))], ground);
  const nodes = [...piece].filter((node) => node !== ground);
  const inside = voltages.filter(({ a }) => piece.has(a));
  const size = nodes.length + inside.length;
  const matrix = Array.from({ length: size }, () => Array.from({ length: size + 1 }, () => zero));
  const row = new Map(nodes.map((node, index) => [node, index]));
  const change = (equation: number | undefined, column: number | undefined, by: Fraction): void => {
    const values = matrix[equation ?? -1];
    if (values !== undefined && column !== undefined) values[column] = plus(values[column] ?? zero, by);
  };
  for (const { a, b, ohms } of edges) {
    if (a === b || ohms === Infinity) continue;
    const siemens = inverse(exactly(ohms));
    for (const [here, there] of [
      [a, b],
      [b, a],
    ] as const) {
      change(row.get(here), row.get(here), siemens);
      change(row.get(here), row.get(there), minus(zero, siemens));
    }
  }
  for (const { a, b, kind, value } of drives)
    if (kind === 'current') {
      change(row.get(a), size, exactly(value));
      change(row.get(b), size, exactly(-value));
    }
  for (const [index, { a, b, value }] of inside.entries()) {
    const own = nodes.length + index;
    const unit = exactly(1);
    for (const [node, sign] of [
      [a, unit],
      [b, minus(zero, unit)],
    ] as const) {
      change(own, row.get(node), sign);
      change(row.get(node), own, minus(zero, sign));
    }
    change(own, size, exactly(value));
  }
  const solved = solveExactly(matrix);
  return new Map([[ground, zero], ...nodes.map((node, index) => [node, solved[index] ?? zero] as const)]);
}

function solveExactly(matrix: Fraction[][]): readonly Fraction[] {
  const size = matrix.length;
  for (let column = 0; column < size; column += 1) {
    const found = matrix.findIndex((values, index) => index >= column && values[column]?.over !== 0n);
    const upper = matrix[found] ?? [];
    [matrix[column], matrix[found]] = [upper, matrix[column] ?? []];
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
  return matrix.map((values, index) => times(values[size] ?? zero, inverse(values[index] ?? zero)));
}

/** The nearest double. */
export function rounded({ over, under }: Fraction): number {
  // At least 80 binary digits of the quotient.
  const shift = BigInt(Math.max(0, under.toString(2).length - absolute(over).toString(2).length + 80));
  const whole = (absolute(over) << shift) / under;
  const digits = whole.toString(2).length;
  const kept = digits > 64 ? whole >> BigInt(digits - 64) : whole;
  const exponent = (digits > 64 ? digits - 64 : 0) - Number(shift);
  return (over < 0n ? -1 : 1) * Number(kept) * 2 ** exponent;
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
