import type { Drive, Edge } from '../../server/src/circuit/circuit.ts';
import { pieceAround } from '../circuit/nodal.ts';

/** The equations of the nodes and of the voltage sources (modified nodal analysis), for a general linear solver. */
export interface Equations {
  /** Whose potential each of the first unknowns is. */
  readonly nodes: readonly number[];
  readonly matrix: number[][];
  readonly right: number[];
}

/** Of everything that is connected with `ground`. No resistor of 0 Ω. */
export function assembled(edges: readonly Edge[], drives: readonly Drive[], ground: number): Equations {
  const voltages = drives.filter(({ kind }) => kind === 'voltage');
  const piece = pieceAround([...edges, ...voltages.map(({ a, b }) => ({ a, b, ohms: 1 }))], ground);
  const nodes = [...piece].filter((node) => node !== ground);
  const inside = voltages.filter(({ a }) => piece.has(a));
  const size = nodes.length + inside.length;
  const matrix = Array.from({ length: size }, () => new Array<number>(size).fill(0));
  const right = new Array<number>(size).fill(0);
  const row = new Map(nodes.map((node, index) => [node, index]));
  const change = (equation: number | undefined, column: number | undefined, by: number): void => {
    const values = matrix[equation ?? -1];
    if (values !== undefined && column !== undefined) values[column] = (values[column] ?? 0) + by;
  };
  const drive = (equation: number | undefined, by: number): void => {
    if (equation !== undefined) right[equation] = (right[equation] ?? 0) + by;
  };
  for (const { a, b, ohms } of edges) {
    if (a === b || ohms === Infinity) continue;
    for (const [here, there] of [
      [a, b],
      [b, a],
    ] as const) {
      change(row.get(here), row.get(here), 1 / ohms);
      change(row.get(here), row.get(there), -1 / ohms);
    }
  }
  for (const { a, b, kind, value } of drives)
    if (kind === 'current') {
      drive(row.get(a), value);
      drive(row.get(b), -value);
    }
  for (const [index, { a, b, value }] of inside.entries()) {
    const own = nodes.length + index;
    for (const [node, sign] of [
      [a, 1],
      [b, -1],
    ] as const) {
      change(own, row.get(node), sign);
      change(row.get(node), own, -sign);
    }
    drive(own, value);
  }
  return { nodes, matrix, right };
}
