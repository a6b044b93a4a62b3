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
  for (let next = waiting.take(); next !== undefined; next = waiting.take()) {
    const { node, degree } = next;
    // A node is put again whenever its degree changes; older entries are passed over here.
    if (gone[node] === 1 || network[node]?.size !== degree) continue;
    gone[node] = 1;
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
    for (let second = first + 1; second < neighbours.length; second += 1) {
      addConductance(network, a, neighbours[second] ?? a, share * (siemens[second] ?? 0));
    }
  }
  return neighbours;
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
