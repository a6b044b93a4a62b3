/** Conductances from each node to its neighbours, in siemens. */
export type Conductances = readonly Map<number, number>[];

/**
 * A node that was taken out, with all that is needed to put it back: its neighbours, its conductances to them, and the
 * conductance between each two of them before its own were spread over them, (0, 1), (0, 2), ... (1, 2), ...
 */
export interface Star {
  readonly node: number;
  readonly neighbours: readonly number[];
  readonly siemens: ArrayLike<number>;
  readonly between: ArrayLike<number>;
}

/** From this number of neighbours on a full matrix is faster than lists of neighbours. */
const leastDense = 16;

export function addConductance(network: Conductances, a: number, b: number, siemens: number): void {
  if (a === b) return;
  const ofA = network[a];
  const ofB = network[b];
  if (ofA === undefined || ofB === undefined) return;
  const sum = (ofA.get(b) ?? 0) + siemens;
  ofA.set(b, sum);
  ofB.set(a, sum);
}

/**
 * Star-mesh elimination of every node but two, the one with the fewest neighbours first. `taken` receives each node as it
 * is taken out, if what happens inside the network is asked for as well.
 */
export function eliminateAllBut(
  start: number,
  end: number,
  network: Conductances,
  taken: Star[] | null = null,
): void {
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
      eliminateDense(start, end, network, taken);
      return;
    }
    gone[node] = 1;
    left -= 1;
    for (const neighbour of eliminate(node, network, taken)) {
      const size = network[neighbour]?.size ?? 0;
      if (neighbour !== start && neighbour !== end && size > 0) waiting.put(neighbour, size);
    }
  }
}

/** Replaces a star by the mesh of its neighbours: between each two, the product of their conductances over the sum. */
function eliminate(node: number, network: Conductances, taken: Star[] | null): readonly number[] {
  const star = network[node] ?? new Map<number, number>();
  const neighbours = [...star.keys()];
  const siemens = [...star.values()];
  const sum = siemens.reduce((total, each) => total + each, 0);
  for (const neighbour of neighbours) network[neighbour]?.delete(node);
  star.clear();
  const between: number[] = [];
  for (const [first, a] of neighbours.entries()) {
    const share = (siemens[first] ?? 0) / sum;
    const ofA = network[a] ?? star;
    for (let second = first + 1; second < neighbours.length; second += 1) {
      const b = neighbours[second] ?? a;
      const before = ofA.get(b) ?? 0;
      const joined = before + share * (siemens[second] ?? 0);
      ofA.set(b, joined);
      network[b]?.set(a, joined);
      if (taken !== null) between.push(before);
    }
  }
  taken?.push({ node, neighbours, siemens, between });
  return neighbours;
}

/** The same in one full matrix, for the time when nearly every node left is a neighbour of every other. */
function eliminateDense(start: number, end: number, network: Conductances, taken: Star[] | null): void {
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
    if (taken !== null) {
      const neighbours = nodes.slice(0, last);
      taken.push({ node: nodes[last] ?? 0, neighbours, siemens: star.slice(), between: upper(rows, last) });
    }
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

/** What stands above the diagonal in the first rows of a matrix. */
function upper(rows: readonly Float64Array[], size: number): Float64Array {
  const values = new Float64Array((size * (size - 1)) / 2);
  let at = 0;
  for (let first = 0; first < size; first += 1) {
    const row = rows[first]?.subarray(first + 1, size) ?? new Float64Array();
    values.set(row, at);
    at += row.length;
  }
  return values;
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
