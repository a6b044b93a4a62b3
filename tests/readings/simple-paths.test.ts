import fc from 'fast-check';
import { expect, test } from 'vitest';
import { onSimplePaths } from '../../server/src/readings/simple-paths.ts';
import type { Link } from '../../server/src/readings/simple-paths.ts';

/** Every simple path, followed one by one: what brute force says. */
function byBruteForce(links: readonly Link[], from: string, to: string): ReadonlySet<Link> {
  const found = new Set<Link>();
  const follow = (node: string, passed: readonly string[], way: readonly Link[]): void => {
    if (node === to) {
      for (const link of way) found.add(link);
      return;
    }
    for (const link of links) {
      const [a, b] = link.between;
      const next = a === node ? b : b === node ? a : null;
      if (next !== null && !passed.includes(next)) follow(next, [...passed, next], [...way, link]);
    }
  };
  if (from !== to) follow(from, [from], []);
  return found;
}

const node = fc.integer({ min: 0, max: 6 }).map((number) => `n${number}`);
const links = fc.array(fc.record({ between: fc.tuple(node, node) }), { maxLength: 12 });

test('the links on simple paths are those that brute force finds, in 3,000 random graphs', () => {
  let some = 0;
  fc.assert(
    fc.property(links, node, node, (graph, from, to) => {
      const found = onSimplePaths(graph, from, to);
      if (found.length > 0 && found.length < graph.length) some += 1;
      expect(new Set(found)).toEqual(byBruteForce(graph, from, to));
    }),
    { numRuns: 3000, seed: 20_261 },
  );
  expect(some).toBeGreaterThan(500);
});

test('a chain of 20,000 links is followed to its end', () => {
  const chain = Array.from({ length: 20_000 }, (_, at): Link => ({ between: [`n${at}`, `n${at + 1}`] }));
  const tail: Link = { between: ['n5', 'aside'] };
  expect(onSimplePaths([...chain, tail], 'n0', 'n20000')).toEqual(chain);
});
