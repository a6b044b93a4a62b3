import { addConductance, eliminateAllBut } from './elimination.ts';
import type { Conductances, Star } from './elimination.ts';
import type { Edge } from './solver.ts';
import { isJoint } from './solver.ts';

/** What happens in a network when 1 A goes in at one node and comes out at another. */
export interface Flow {
  /** Between the two nodes. */
  readonly ohms: number;
  /** Through each edge, from its `a` to its `b`, in ampere. */
  readonly amperes: Float64Array;
  /** Of each node above the node where the current comes out, in volt; NaN where nothing connects it. */
  readonly volts: Float64Array;
}

/** A joint is reckoned with as this part of the least resistance: far below the last digit, and never a division by zero. */
const jointPart = 1e-30;

/**
 * The currents that 1 A from one node to another drives through a network. null: no path, or the same node.
 *
 * Nodes are taken out as for the resistance and put back in reverse. What flowed between two neighbours is then divided
 * between what stood there before and the way over the node, in the ratio of their conductances. Currents are sums of
 * such parts, never differences of potentials: in series and parallel each is accurate to a few units in the last place,
 * however unlike the resistances; where currents meet from both sides, as in a bridge, to that of the parts that meet.
 * Joints of 0 Ω carry what they would as equal resistances too small to matter.
 */
export function flowBetween(edges: readonly Edge[], nodes: number, from: number, to: number): Flow | null {
  const siemens = conductances(edges);
  const whole = networkOf(edges, siemens, nodes);
  const network = whole.map((neighbours) => new Map(neighbours));
  const taken: Star[] = [];
  eliminateAllBut(from, to, network, taken);
  const between = from === to ? undefined : network[from]?.get(to);
  if (between === undefined) return null;
  const ohms = 1 / between;
  const volts = new Float64Array(nodes).fill(NaN);
  volts[from] = ohms;
  volts[to] = 0;
  const flow = pairFlows(nodes);
  flow.add(from, to, 1);
  for (const star of taken.toReversed()) putBack(star, volts, flow);
  const amperes = Float64Array.from(edges, ({ a, b }, index) => {
    if (a === b) return 0;
    const share = (siemens[index] ?? 0) / (whole[a]?.get(b) ?? Infinity);
    return flow.get(a, b) * share + 0;
  });
  return { ohms, amperes, volts };
}

/** The currents between pairs of nodes, in ampere: from the first to the second, as it is asked for. */
interface PairFlows {
  readonly get: (a: number, b: number) => number;
  readonly set: (a: number, b: number, amperes: number) => void;
  readonly add: (a: number, b: number, amperes: number) => void;
}

/** Up to so many nodes there is room for every pair (8 MB); beyond, only pairs with a current are kept. */
const mostInFull = 1000;

function pairFlows(nodes: number): PairFlows {
  const full = nodes <= mostInFull ? new Float64Array(nodes * nodes) : null;
  const sparse = new Map<number, number>();
  const at = (a: number, b: number): number => (a < b ? a * nodes + b : b * nodes + a);
  const read = (key: number): number => (full === null ? sparse.get(key) : full[key]) ?? 0;
  const write = (key: number, amperes: number): void => {
    if (full === null) sparse.set(key, amperes);
    else full[key] = amperes;
  };
  const signed = (a: number, b: number, amperes: number): number => (a < b ? amperes : -amperes);
  return {
    get: (a, b) => signed(a, b, read(at(a, b))),
    set: (a, b, amperes) => {
      write(at(a, b), signed(a, b, amperes));
    },
    add: (a, b, amperes) => {
      const key = at(a, b);
      write(key, read(key) + signed(a, b, amperes));
    },
  };
}

function putBack({ node, neighbours, siemens, between }: Star, volts: Float64Array, flow: PairFlows): void {
  let sum = 0;
  let weighted = 0;
  for (let index = 0; index < neighbours.length; index += 1) {
    const conductance = siemens[index] ?? 0;
    sum += conductance;
    if (conductance > 0) weighted += conductance * (volts[neighbours[index] ?? 0] ?? NaN);
  }
  volts[node] = weighted / sum;
  let pair = 0;
  for (let first = 0; first < neighbours.length; first += 1) {
    const a = neighbours[first] ?? 0;
    const share = (siemens[first] ?? 0) / sum;
    let through = 0;
    for (let second = first + 1; second < neighbours.length; second += 1) {
      const b = neighbours[second] ?? 0;
      const before = between[pair] ?? 0;
      pair += 1;
      const over = share * (siemens[second] ?? 0);
      const both = flow.get(a, b);
      if (both === 0 || over === 0) continue;
      const overNode = both * (over / (before + over));
      flow.set(a, b, before === 0 ? 0 : both * (before / (before + over)));
      flow.add(node, b, overNode);
      through += overNode;
    }
    if (through !== 0) flow.add(a, node, through);
  }
}

function conductances(edges: readonly Edge[]): Float64Array {
  let least = Infinity;
  for (const { ohms } of edges) if (!isJoint(ohms)) least = Math.min(least, ohms);
  const joint = 1 / ((least === Infinity ? 1 : least) * jointPart);
  return Float64Array.from(edges, ({ ohms }) => (isJoint(ohms) ? joint : 1 / ohms));
}

function networkOf(edges: readonly Edge[], siemens: Float64Array, nodes: number): Conductances {
  const network: Conductances = Array.from({ length: nodes }, () => new Map<number, number>());
  for (const [index, { a, b, ohms }] of edges.entries())
    if (ohms !== Infinity) addConductance(network, a, b, siemens[index] ?? 0);
  return network;
}
