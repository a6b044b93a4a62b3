/**
 * The strongly connected components of a directed graph (Tarjan 1972), without recursion so that long procedures do
 * not exhaust the stack.
 */
export function strongComponents(successors: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const order: (number | undefined)[] = [];
  const low: number[] = [];
  const open: number[] = [];
  const isOpen: boolean[] = [];
  const components: number[][] = [];
  let next = 0;

  for (const root of successors.keys()) {
    if (order[root] !== undefined) continue;
    const visits: { node: number; edge: number }[] = [{ node: root, edge: 0 }];
    for (let visit = visits.at(-1); visit !== undefined; visit = visits.at(-1)) {
      const { node } = visit;
      if (visit.edge === 0) {
        order[node] = low[node] = next++;
        open.push(node);
        isOpen[node] = true;
      }
      const target = (successors[node] ?? [])[visit.edge++];
      if (target !== undefined) {
        if (order[target] === undefined) visits.push({ node: target, edge: 0 });
        else if (isOpen[target] === true) low[node] = Math.min(low[node] ?? 0, order[target]);
        continue;
      }
      visits.pop();
      const parent = visits.at(-1)?.node;
      if (parent !== undefined) low[parent] = Math.min(low[parent] ?? 0, low[node] ?? 0);
      if (low[node] !== order[node]) continue;
      const component = open.splice(open.lastIndexOf(node));
      for (const member of component) isOpen[member] = false;
      components.push(component);
    }
  }
  return components;
}
