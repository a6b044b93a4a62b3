/** A connection of two nodes by name. */
export interface Link {
  readonly between: readonly [string, string];
}

/**
 * The links that lie on some simple path between two nodes, whatever their values: with a link from the one to the other
 * added, those in the same biconnected component as it (Tarjan 1973). A link from a node to itself lies on none.
 */
export function onSimplePaths<T extends Link>(links: readonly T[], from: string, to: string): readonly T[] {
  if (from === to) return [];
  const ends = [...links.map(({ between }) => between), [from, to] as const];
  const beside = new Map<string, { readonly node: string; readonly link: number }[]>();
  const add = (node: string, other: string, link: number): void => {
    const list = beside.get(node) ?? [];
    list.push({ node: other, link });
    beside.set(node, list);
  };
  for (const [link, [a, b]] of ends.entries()) {
    if (a === b) continue;
    add(a, b, link);
    add(b, a, link);
  }
  const component = componentOf(ends.length - 1, from, beside);
  return links.filter((_, link) => component.has(link));
}

interface Visit {
  readonly node: string;
  /** The link that led here; -1: none. */
  readonly by: number;
  next: number;
}

/** The biconnected component of one link that ends at the node where the search starts. */
function componentOf(
  wanted: number,
  start: string,
  beside: ReadonlyMap<string, readonly { readonly node: string; readonly link: number }[]>,
): ReadonlySet<number> {
  const order = new Map([[start, 0]]);
  const low = new Map([[start, 0]]);
  const links: number[] = [];
  const visits: Visit[] = [{ node: start, by: -1, next: 0 }];
  for (let visit = visits.at(-1); visit !== undefined; visit = visits.at(-1)) {
    const { node, by } = visit;
    const way = beside.get(node)?.[visit.next];
    visit.next += 1;
    if (way !== undefined) {
      if (way.link === by) continue;
      const seen = order.get(way.node);
      if (seen === undefined) {
        links.push(way.link);
        order.set(way.node, order.size);
        low.set(way.node, order.size - 1);
        visits.push({ node: way.node, by: way.link, next: 0 });
      } else if (seen < (order.get(node) ?? 0)) {
        links.push(way.link);
        low.set(node, Math.min(low.get(node) ?? 0, seen));
      }
      continue;
    }
    visits.pop();
    const parent = visits.at(-1)?.node;
    if (parent === undefined) break;
    const lowest = low.get(node) ?? 0;
    low.set(parent, Math.min(low.get(parent) ?? 0, lowest));
    if (lowest < (order.get(parent) ?? 0)) continue;
    // What was passed since the link to this node hangs together and goes no further back than the parent.
    const component = new Set(links.splice(links.lastIndexOf(by)));
    if (component.has(wanted)) return component;
  }
  return new Set([wanted]);
}
