import { describe, expect, test } from 'vitest';
import type { Dimension, Parsed, Shape } from '../../server/src/quantity/quantity.ts';
import {
  describeQuantity,
  nameOf,
  parseAccuracy,
  parseExact,
  parseLimit,
  parseRating,
  parseSpan,
  parseWire,
  ratingDescription,
  wireDescription,
} from '../../server/src/quantity/quantity.ts';

const dimensions: readonly Dimension[] = [
  'resistance',
  'voltage',
  'current',
  'capacitance',
  'time',
  'length',
  'temperature',
  'wire-size',
  'power',
  'place',
];

const readers: Readonly<Record<Shape, (text: string, dimension: Dimension) => Parsed<unknown>>> = {
  exact: parseExact,
  ranged: parseSpan,
  limit: parseLimit,
  accuracy: parseAccuracy,
};

function examplesIn(description: string): readonly string[] {
  return [...description.matchAll(/`([^`]+)`/g)].map(([, example]) => example ?? '');
}

describe('every example in a description can be read', () => {
  const rows = dimensions.flatMap((dimension) =>
    (Object.keys(readers) as Shape[]).map((shape) => [shape, dimension] as const),
  );
  test.each(rows)('%s %s', (shape, dimension) => {
    const description = describeQuantity(shape, dimension);
    expect(description.startsWith(nameOf(dimension))).toBe(true);
    const examples = examplesIn(description);
    expect(examples.length).toBeGreaterThan(0);
    for (const example of examples) expect(readers[shape](example, dimension)).toMatchObject({ ok: true });
  });

  test('wires and ratings', () => {
    for (const example of examplesIn(wireDescription)) expect(parseWire(example)).toMatchObject({ ok: true });
    for (const example of examplesIn(ratingDescription))
      expect(parseRating(example)).toMatchObject({ ok: true });
  });
});
