/** A resistor between two nodes. 0 Ω joins them, Infinity is no connection. */
export interface Edge {
  readonly a: number;
  readonly b: number;
  readonly ohms: number;
}

/** Conductances from each node to its neighbours, in siemens. */
type Conductances = readonly Map<number, number>[];

/**
 * Resistance in ohms between two nodes of a network of `nodes` nodes, numbered from 0. Infinity: no path. 0: the same
 * node, or joined by 0 Ω.
 *
 * Star-mesh elimination, the node with the fewest neighbours first. It only adds, multiplies and divides positive
 * numbers, so nothing cancels and the relative error stays near that of one operation for any spread of values.
 */
export function resistanceBetween(edges: readonly Edge[], nodes: number, from: number, to: number): number {
  const joined = joinByZero(edges, nodes);
  const start = joined(from);
  const end = joined(to);
  if (start === end) return 0;
  const network: Conductances = Array.from({ length: nodes }, () => new Map<number, number>());
  for (const { a, b, ohms } of edges) {
    if (!isJoint(ohms) && ohms !== Infinity) addConductance(network, joined(a), joined(b), 1 / ohms);
  }
  eliminateAllBut(start, end, network);
  return 1 / (network[start]?.get(end) ?? 0);
}

/** From this number of neighbours on a full matrix is faster than lists of neighbours. */
const leastDense = 16;

/** So small a resistance has no finite conductance. */
function isJoint(ohms: number): boolean {
  return 1 / ohms === Infinity;
}

/** Names one node for all that are joined by 0 Ω. */
function joinByZero(edges: readonly Edge[], nodes: number): (node: number) => number {
  const parent = Int32Array.from({ length: nodes }, (_, node) => node);
  const root = (node: number): number => {
    let at = node;
    for (;;) {
      const above = parent[at] ?? at;
      if (above === at) return at;
      parent[at] = parent[above] ?? above;
      at = above;
    }
  };
  for (const { a, b, ohms } of edges) {
    if (isJoint(ohms)) parent[root(a)] = root(b);
  }
  return root;
}

function addConductance(network: Conductances, a: number, b: number, siemens: number): void {
  if (a === b) return;
  const ofA = network[a];
  const ofB = network[b];
  if (ofA === undefined || ofB === undefined) return;
  const sum = (ofA.get(b) ?? 0) + siemens;
  ofA.set(b, sum);
  ofB.set(a, sum);
}

function eliminateAllBut(start: number, end: number, network: Conductances): void {
  const waiting = waitingNodes();
  for (const [node, neighbours] of network.entries()) {
    if (node !== start && node !== end && neighbours.size > 0) waiting.put(node, neighbours.size);
  }
  const gone = new Uint8Array(network.length);
  let left = network.length;
  for (let next = waiting.take(); next !== undefined; next = waiting.take()) {
    const { node, degree } = next;
    // A node is put again whenever its degree changes; older entries are passed over here.
    if (gone[node] === 1 || network[node]?.size !== degree) continue;
    if (degree >= leastDense && 2 * degree >= left) {
      eliminateDense(start, end, network);
      return;
    }
    gone[node] = 1;
    left -= 1;
    for (const neighbour of eliminate(node, network)) {
      const size = network[neighbour]?.size ?? 0;
      if (neighbour !== start && neighbour !== end && size > 0) waiting.put(neighbour, size);
    }
  }
}

/** Replaces a star by the mesh of its neighbours: between each two, the product of their conductances over the sum. */
function eliminate(node: number, network: Conductances): readonly number[] {
  const star = network[node] ?? new Map<number, number>();
  const neighbours = [...star.keys()];
  const siemens = [...star.values()];
  const sum = siemens.reduce((total, each) => total + each, 0);
  for (const neighbour of neighbours) network[neighbour]?.delete(node);
  star.clear();
  for (const [first, a] of neighbours.entries()) {
    const share = (siemens[first] ?? 0) / sum;
    const ofA = network[a] ?? star;
    for (let second = first + 1; second < neighbours.length; second += 1) {
      const b = neighbours[second] ?? a;
      const joined = (ofA.get(b) ?? 0) + share * (siemens[second] ?? 0);
      ofA.set(b, joined);
      network[b]?.set(a, joined);
    }
  }
  return neighbours;
}

/** The same in one full matrix, for the time when nearly every node left is a neighbour of every other. */
function eliminateDense(start: number, end: number, network: Conductances): void {
  const others = [...network.keys()].filter(
    (node) => node !== start && node !== end && network[node]?.size !== 0,
  );
  const nodes = [start, end, ...others];
  const place = new Map(nodes.map((node, index) => [node, index]));
  const rows = nodes.map(() => new Float64Array(nodes.length));
  for (const [index, node] of nodes.entries()) {
    for (const [neighbour, siemens] of network[node] ?? []) {
      const row = rows[index];
      const column = place.get(neighbour);
      if (row !== undefined && column !== undefined) row[column] = siemens;
    }
  }
  for (let last = nodes.length - 1; last >= 2; last -= 1) {
    const star = rows[last]?.subarray(0, last) ?? new Float64Array();
    const sum = star.reduce((total, each) => total + each, 0);
    if (sum === 0) continue;
    for (const [index, siemens] of star.entries()) {
      const row = rows[index];
      if (row === undefined || siemens === 0) continue;
      const share = siemens / sum;
      for (let column = 0; column < last; column += 1) {
        if (column !== index) row[column] = (row[column] ?? 0) + share * (star[column] ?? 0);
      }
    }
  }
  const remaining = rows[0]?.[1] ?? 0;
  if (remaining > 0) network[start]?.set(end, remaining);
  else network[start]?.delete(end);
}

interface WaitingNodes {
  readonly put: (node: number, degree: number) => void;
  /** The node with the fewest neighbours. */
  readonly take: () => { readonly node: number; readonly degree: number } | undefined;
}

/** Nodes in one stack for each number of neighbours. */
function waitingNodes(): WaitingNodes {
  const stacks: number[][] = [];
  let least = 0;
  return {
    put(node, degree) {
      while (stacks.length <= degree) stacks.push([]);
      stacks[degree]?.push(node);
      least = Math.min(least, degree);
    },
    take() {
      for (; least < stacks.length; least += 1) {
        const node = stacks[least]?.pop();
        if (node !== undefined) return { node, degree: least };
      }
      return undefined;
    },
  };
}
