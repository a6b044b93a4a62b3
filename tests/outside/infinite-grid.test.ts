import { describe, expect, test } from 'vitest';
import type { Edge } from '../../server/src/circuit/circuit.ts';
import { resistanceBetween } from '../../server/src/circuit/circuit.ts';
import { expectPrinted } from './printed.ts';

/**
 * Resistance between two nodes in the middle row of a finite grid of 1 Ω, `distance` apart on either side of its middle.
 * An even distance takes a grid of `height` by `height` nodes, an odd one twice as wide, so that the two lie on nodes.
 *
 * A quarter of the grid is enough: by symmetry the column through the middle has one potential, node 0, and the middle
 * row is cut along itself. A resistor in the middle row counts twice in the quarter, one cut by the column half.
 */
function finiteGrid(distance: number, height: number): number {
  const even = distance % 2 === 0;
  const columns = even ? (height - 1) / 2 : height;
  const rows = (height + 1) / 2;
  const node = (column: number, row: number): number => (column === 0 ? 0 : (column - 1) * rows + row + 1);
  const edges: Edge[] = [];
  for (let column = 1; column <= columns; column += 1)
    for (let row = 0; row < rows; row += 1) {
      const part = column === 1 && !even ? 1 / 2 : 1;
      edges.push({ a: node(column - 1, row), b: node(column, row), ohms: part * (row === 0 ? 2 : 1) });
      if (row + 1 < rows) edges.push({ a: node(column, row), b: node(column, row + 1), ohms: 1 });
    }
  const at = even ? distance / 2 : (distance + 1) / 2;
  return resistanceBetween(edges, columns * rows + 1, node(at, 0), 0);
}

/**
 * The grid without end. What a finite one adds is a series in the square of 1/height, since all mirror images of the two
 * nodes lie at distances in proportion to it; the polynomial through the values at four heights (Neville) is taken at 0.
 */
function withoutEnd(distance: number): number {
  const heights = [41, 61, 81, 121];
  const x = heights.map((height) => height ** -2);
  let values = heights.map((height) => finiteGrid(distance, height));
  for (let order = 1; order < heights.length; order += 1)
    values = values.slice(1).map((upper, at) => {
      const [near = NaN, far = NaN] = [x[at + order], x[at]];
      return (far * upper - near * (values[at] ?? NaN)) / (far - near);
    });
  return values[0] ?? NaN;
}

describe('the square grid without end, along a row', () => {
  test.each([
    ['OEIS A355955', 4, '0.953987'],
    ['OEIS A355955', 5, '1.025804658'],
    ['Atkinson and van Steenwijk, Am. J. Phys. 67 (1999) 486', 1, '0.5000000000'],
    ['2 - 4/π, from memory', 2, '0.7267604553'],
  ])('%s: at a distance of %i, %s Ω', (_source, distance, printed) => {
    expectPrinted(withoutEnd(distance), printed);
  });

  test('OEIS A355955: at a distance of 4 it is 40 - 368/(3π)', () => {
    expect(withoutEnd(4)).toBeCloseTo(40 - 368 / (3 * Math.PI), 10);
  });
});
