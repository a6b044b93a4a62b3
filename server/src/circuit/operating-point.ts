import { flowBetween } from './flow.ts';
import { nodeGroups } from './node-groups.ts';
import type { Edge } from './solver.ts';
import { isJoint } from './solver.ts';

/**
 * An ideal source between two nodes: `a` is its plus, or where its current comes out. What is inside a real one stands
 * beside it as a resistor.
 */
export interface Drive {
  readonly a: number;
  readonly b: number;
  readonly kind: 'voltage' | 'current';
  /** Volt or ampere. */
  readonly value: number;
}

export interface OperatingPoint {
  /** Of each node above ground, in volt; NaN where nothing connects it with ground. */
  readonly volts: Float64Array;
  /** Through each edge, from its `a` to its `b`, in ampere. */
  readonly amperes: Float64Array;
  /** Out of the `a` of each source, in ampere. */
  readonly delivered: Float64Array;
}

/** Sources that cannot be as stated, by index. */
export interface Conflicts {
  /** Their terminals are joined by 0 Ω or by other sources: what they carry is not determined. */
  readonly joined: readonly number[];
  /** Current sources whose current has no way back. */
  readonly stranded: readonly number[];
}

/** A network and its sources in which something has no answer, or nothing at all. */
export function conflictsOf(edges: readonly Edge[], drives: readonly Drive[], nodes: number): Conflicts {
  const joints = nodeGroups(nodes);
  const connected = nodeGroups(nodes);
  for (const { a, b, ohms } of edges) {
    if (isJoint(ohms)) joints.join(a, b);
    if (ohms !== Infinity) connected.join(a, b);
  }
  const joined: number[] = [];
  for (const [index, { kind, a, b }] of drives.entries()) {
    if (kind !== 'voltage') continue;
    if (!joints.join(a, b)) joined.push(index);
    connected.join(a, b);
  }
  const stranded = drives.flatMap(({ kind, a, b }, index) =>
    kind === 'current' && connected.of(a) !== connected.of(b) ? [index] : [],
  );
  return { joined, stranded };
}

/**
 * Currents and potentials of a network with any number of sources, by superposition: one flow for each source, the other
 * voltage sources as joints. Sources in conflict (see `conflictsOf`) are left out. Each flow is accurate as `flowBetween`
 * is; where sources work against each other, what is left is accurate to the last places of what each does.
 */
export function operatingPoint(
  edges: readonly Edge[],
  drives: readonly Drive[],
  nodes: number,
  ground: number,
): OperatingPoint {
  const { joined, stranded } = conflictsOf(edges, drives, nodes);
  const working = drives.flatMap((drive, index) =>
    joined.includes(index) || stranded.includes(index) ? [] : [{ drive, index }],
  );
  const amperes = new Float64Array(edges.length);
  const delivered = new Float64Array(drives.length);
  for (const { drive, index } of working) {
    const others = working.filter((other) => other.drive.kind === 'voltage' && other.index !== index);
    const joints = others.map(({ drive: { a, b } }): Edge => ({ a, b, ohms: 0 }));
    const flow = flowBetween([...edges, ...joints], nodes, drive.a, drive.b);
    // Where there is no way around a voltage source nothing flows; a current source with both ends on one node feeds itself.
    if (flow === null) continue;
    const current = drive.kind === 'voltage' ? drive.value / flow.ohms : drive.value;
    for (const at of amperes.keys()) amperes[at] = (amperes[at] ?? 0) + current * (flow.amperes[at] ?? 0);
    delivered[index] = (delivered[index] ?? 0) + current;
    for (const [place, other] of others.entries())
      delivered[other.index] =
        (delivered[other.index] ?? 0) - current * (flow.amperes[edges.length + place] ?? 0);
  }
  const steps = [
    ...edges.map(({ a, b, ohms }, index) => ({
      a,
      b,
      drop: isJoint(ohms) ? 0 : ohms * (amperes[index] ?? 0),
    })),
    ...working.flatMap(({ drive: { a, b, kind, value } }) =>
      kind === 'voltage' ? [{ a, b, drop: value }] : [],
    ),
  ].filter(({ drop }) => Number.isFinite(drop));
  return { volts: potentials(steps, nodes, ground), amperes, delivered };
}

/** Adds up the drops on the shortest way from ground to each node. */
function potentials(
  steps: readonly { readonly a: number; readonly b: number; readonly drop: number }[],
  nodes: number,
  ground: number,
): Float64Array {
  const volts = new Float64Array(nodes).fill(NaN);
  const beside = Array.from({ length: nodes }, (): (readonly [number, number])[] => []);
  for (const { a, b, drop } of steps) {
    beside[a]?.push([b, -drop]);
    beside[b]?.push([a, drop]);
  }
  volts[ground] = 0;
  const reached = [ground];
  for (const node of reached)
    for (const [other, rise] of beside[node] ?? [])
      if (Number.isNaN(volts[other] ?? 0)) {
        volts[other] = (volts[node] ?? NaN) + rise;
        reached.push(other);
      }
  return volts;
}

/**
 * The voltage of one node above another, in volt: NaN where nothing connects them. One flow from the one to the other,
 * voltage sources as joints, says how much each source adds to it (reciprocity). Sources in conflict are left out.
 */
export function voltageBetween(
  edges: readonly Edge[],
  drives: readonly Drive[],
  nodes: number,
  from: number,
  to: number,
): number {
  if (from === to) return 0;
  const { joined, stranded } = conflictsOf(edges, drives, nodes);
  const left = new Set([...joined, ...stranded]);
  const voltages = drives.flatMap((drive, index) =>
    drive.kind === 'voltage' && !left.has(index) ? [drive] : [],
  );
  const joints = voltages.map(({ a, b }): Edge => ({ a, b, ohms: 0 }));
  const flow = flowBetween([...edges, ...joints], nodes, from, to);
  if (flow === null) return NaN;
  const bySource = voltages.map(({ value }, index) => value * (flow.amperes[edges.length + index] ?? 0));
  const byCurrent = drives.map(({ kind, a, b, value }, index) => {
    const across = (flow.volts[a] ?? NaN) - (flow.volts[b] ?? NaN);
    return kind === 'current' && !left.has(index) && !Number.isNaN(across) ? value * across : 0;
  });
  return [...bySource, ...byCurrent].reduce((sum, each) => sum + each, 0);
}
