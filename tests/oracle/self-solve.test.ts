import { expect, test } from 'vitest';
import { ohmsBetween, potentialOf } from './solve.ts';

/* Networks that everybody knows. */

const link = (a: string, b: string, ohms: number) => ({ a, b, ohms });

test('resistances', () => {
  const row = [link('a', 'b', 2), link('b', 'c', 3), link('c', 'd', 0)];
  expect(ohmsBetween(row, 'a', 'd')).toBeCloseTo(5, 12);
  expect(ohmsBetween([...row, link('a', 'c', 5)], 'd', 'a')).toBeCloseTo(2.5, 12);
  expect(ohmsBetween(row, 'a', 'e')).toBe(Infinity);
  expect(ohmsBetween(row, 'c', 'd')).toBe(0);
  // The edges of a cube of 1 Ω, from corner to opposite corner: 5/6 Ω.
  const corners = [0, 1, 2, 3, 4, 5, 6, 7];
  const cube = corners.flatMap((corner) =>
    [1, 2, 4].filter((bit) => (corner & bit) === 0).map((bit) => link(`${corner}`, `${corner | bit}`, 1)),
  );
  expect(ohmsBetween(cube, '0', '7')).toBeCloseTo(5 / 6, 12);
});

test('potentials', () => {
  const divider = [link('plus', 'mid', 1), link('mid', 'ground', 3), link('mid', 'far', 7)];
  const held = new Map([
    ['plus', 12],
    ['ground', 0],
  ]);
  expect(potentialOf(divider, held, 'mid')).toBeCloseTo(9, 12);
  expect(potentialOf(divider, held, 'far')).toBeCloseTo(9, 12);
  expect(potentialOf(divider, held, 'plus')).toBe(12);
  expect(potentialOf(divider, held, 'elsewhere')).toBeNull();
});
