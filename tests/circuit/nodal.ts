import type { Edge } from '../../server/src/circuit/circuit.ts';

/**
 * Resistance between two nodes by the textbook way, the node equations G·V = I with `to` as the reference, solved by
 * Gaussian elimination with pivots. Independent of the product's elimination, and good for moderate spreads only.
 * Infinity where the probes are not connected; edges of 0 Ω are not taken.
 */
export function nodalResistance(edges: readonly Edge[], nodes: number, from: number, to: number): number {
  if (from === to) return 0;
  const piece = pieceAround(edges, from);
  if (!piece.has(to)) return Infinity;
  const unknown = Array.from({ length: nodes }, (_, node) => node).filter(
    (node) => piece.has(node) && node !== to,
  );
  const row = new Map(unknown.map((node, index) => [node, index]));
  const matrix = unknown.map((node) => [...unknown.map(() => 0), node === from ? 1 : 0]);
  const addTo = (node: number, other: number, siemens: number): void => {
    const index = row.get(node);
    const equation = index === undefined ? undefined : matrix[index];
    if (index === undefined || equation === undefined) return;
    equation[index] = (equation[index] ?? 0) + siemens;
    const column = row.get(other);
    if (column !== undefined) equation[column] = (equation[column] ?? 0) - siemens;
  };
  for (const { a, b, ohms } of edges) {
    if (a === b || ohms === Infinity) continue;
    addTo(a, b, 1 / ohms);
    addTo(b, a, 1 / ohms);
  }
  return solve(matrix)[row.get(from) ?? -1] ?? Number.NaN;
}

/** All nodes that can be reached from one over resistors of finite value. */
export function pieceAround(edges: readonly Edge[], start: number): ReadonlySet<number> {
  const reached = new Set([start]);
  for (let grown = -1; grown !== reached.size;) {
    grown = reached.size;
    for (const { a, b, ohms } of edges) {
      if (ohms === Infinity || reached.has(a) === reached.has(b)) continue;
      reached.add(a).add(b);
    }
  }
  return reached;
}

function solve(matrix: number[][]): number[] {
  const size = matrix.length;
  for (let column = 0; column < size; column += 1) {
    let pivot = column;
    for (let row = column + 1; row < size; row += 1) {
      if (Math.abs(at(matrix, row, column)) > Math.abs(at(matrix, pivot, column))) pivot = row;
    }
    const upper = matrix[pivot] ?? [];
    matrix[pivot] = matrix[column] ?? [];
    matrix[column] = upper;
    for (let row = column + 1; row < size; row += 1) {
      const factor = at(matrix, row, column) / at(matrix, column, column);
      matrix[row] = (matrix[row] ?? []).map((value, index) => value - factor * (upper[index] ?? 0));
    }
  }
  const solution = new Array<number>(size).fill(0);
  for (let row = size - 1; row >= 0; row -= 1) {
    let rest = at(matrix, row, size);
    for (let column = row + 1; column < size; column += 1)
      rest -= at(matrix, row, column) * (solution[column] ?? 0);
    solution[row] = rest / at(matrix, row, row);
  }
  return solution;
}

function at(matrix: readonly (readonly number[])[], row: number, column: number): number {
  return matrix[row]?.[column] ?? 0;
}
