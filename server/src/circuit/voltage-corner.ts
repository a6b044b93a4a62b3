import { flowBounds } from './flow-bounds.ts';
import type { LooseEdge } from './flow-bounds.ts';
import type { Interval } from './interval.ts';
import { negative, plus, signOf, times, zero } from './interval.ts';
import { atMiddle, isLoose, reachOf, slopesOf, withTrack } from './loose-track.ts';
import type { LooseTrack, TrackSlopes } from './loose-track.ts';
import { voltageBetween } from './operating-point.ts';
import type { Drive } from './operating-point.ts';
import { resistanceBetween } from './solver.ts';

/*
 * The greatest voltage between two nodes over a box of resistances and sources. In each of them alone the voltage goes one
 * way (it is a quotient of two linear functions without a pole), so the extreme lies at a corner. Which way a resistor
 * pushes is the sign of its current times its current in the adjoint circuit: 1 A from the one node to the other, sources
 * at zero (Tellegen). That sign is asked over the whole box by bounds of both currents; whoever's sign is certain is put
 * to its end, the box shrinks, and more signs become certain. Of what stays undecided both ends are tried.
 */

/** A source whose value may be anything within its interval. */
export interface LooseDrive extends Omit<Drive, 'value'> {
  readonly value: Interval;
}

export interface LooseCircuit {
  readonly edges: readonly LooseEdge[];
  readonly drives: readonly LooseDrive[];
  /** The edges of each are within what it leaves them. */
  readonly tracks: readonly LooseTrack[];
  readonly nodes: number;
  readonly from: number;
  readonly to: number;
}

export interface Corner {
  /** Volt. */
  readonly volts: number;
  /** Met by a circuit of the box; else no circuit passes it. */
  readonly exact: boolean;
  /** Where that circuit is: the value of each edge in ohms, NaN where it does not matter. */
  readonly ohms: readonly number[];
}

/** So many undecided resistors and sources are tried at both ends; with more an outer bound is given. */
const mostUndecided = 12;

/** How much may still be searched; below zero an outer bound is given. The unit is about a microsecond. */
export interface Patience {
  left: number;
}

/** The nodes must be connected, and no source in conflict. */
export function greatestVoltage(circuit: LooseCircuit, patience: Patience): Corner {
  const decided = decide(circuit, patience);
  const undecided = looseIn(decided.circuit);
  const outer: Corner = { volts: decided.bound, exact: false, ohms: [] };
  if (undecided.length > mostUndecided) return outer;
  const found = search(decided, -Infinity, patience);
  return found === null || (undecided.length > 0 && patience.left < 0) ? outer : found;
}

/** What is asked of the whole circuit once for each source and once for the probes. */
function workOf({ edges, drives, nodes }: LooseCircuit): number {
  return (drives.length + 2) * (nodes * nodes * 0.02 + (edges.length + drives.length) * 10);
}

interface Decided {
  /** Everything whose sign is certain at its end. */
  readonly circuit: LooseCircuit;
  /** No circuit of the box passes this. */
  readonly bound: number;
  /** Edges that push neither way, whatever the rest does. */
  readonly idle: ReadonlySet<number>;
  /** Of each track. */
  readonly slopes: readonly TrackSlopes[];
}

/** The best corner above `best`; null: there is none. */
function search({ circuit, bound, idle, slopes }: Decided, best: number, patience: Patience): Corner | null {
  const undecided = looseIn(circuit);
  const [next] = undecided;
  if (next === undefined && circuit.tracks.some(isLoose)) {
    const volts = Math.min(bound, aroundMiddle(circuit, slopes));
    return volts > best ? { volts, exact: false, ohms: [] } : null;
  }
  if (next === undefined) {
    const volts = volted(circuit);
    const ohms = circuit.edges.map(({ ohms: { low } }, index) => (idle.has(index) ? NaN : low));
    return volts > best ? { volts, exact: true, ohms } : null;
  }
  // Bounds are rounded; a corner that ties with the best one is not missed by it.
  if (bound < best || patience.left < 0) return null;
  let found: Corner | null = null;
  for (const end of ['low', 'high'] as const) {
    const half = search(decide(atEnd(circuit, next, end), patience, idle), found?.volts ?? best, patience);
    found = half ?? found;
  }
  return found;
}

/** What no voltage passes where only tracks have a width left. */
function aroundMiddle(circuit: LooseCircuit, slopes: readonly TrackSlopes[]): number {
  const middle = circuit.tracks.reduce((sum, track, at) => withTrackAt(sum, at, atMiddle(track)), circuit);
  return circuit.tracks.reduce((sum, track, at) => {
    const own = slopes[at];
    return own === undefined ? Infinity : sum + reachOf(track, own);
  }, volted(middle));
}

/** What still has a width by itself: edges by number, then sources. Those of a track have none by themselves. */
function looseIn({ edges, drives, tracks }: LooseCircuit): readonly number[] {
  const tied = new Set(tracks.flatMap(({ first, second }) => [first, second]));
  return [...edges.map(({ ohms }) => ohms), ...drives.map(({ value }) => value)].flatMap((interval, index) =>
    interval.low < interval.high && !tied.has(index) ? [index] : [],
  );
}

function withTrackAt(circuit: LooseCircuit, at: number, track: LooseTrack): LooseCircuit {
  return {
    ...circuit,
    tracks: circuit.tracks.with(at, track),
    edges: withTrack(circuit.edges, track),
  };
}

function atEnd(circuit: LooseCircuit, index: number, end: 'low' | 'high'): LooseCircuit {
  const fixed = (interval: Interval): Interval => ({ low: interval[end], high: interval[end] });
  const { edges, drives } = circuit;
  const edge = edges[index];
  if (edge !== undefined)
    return { ...circuit, edges: edges.with(index, { ...edge, ohms: fixed(edge.ohms) }) };
  const place = index - edges.length;
  const drive = drives[place];
  if (drive === undefined) return circuit;
  return { ...circuit, drives: drives.with(place, { ...drive, value: fixed(drive.value) }) };
}

/** Puts to its end whatever pushes one way over the whole box, again and again while that makes more certain. */
function decide(
  circuit: LooseCircuit,
  patience: Patience,
  idleBefore: ReadonlySet<number> = new Set(),
): Decided {
  let current = circuit;
  const idle = new Set(idleBefore);
  for (;;) {
    const { pushes, bound, slopes } = pushesIn(current);
    patience.left -= workOf(current);
    let isChanged = false;
    for (const [at, track] of current.tracks.entries()) {
      const put = decidedTrack(track, slopes[at]);
      if (put === track) continue;
      current = withTrackAt(current, at, put);
      isChanged = true;
    }
    for (const index of looseIn(current)) {
      const push = pushes[index] ?? zero;
      const sign = signOf(push);
      const isIdle = push.low === 0 && push.high === 0;
      if (isIdle) idle.add(index);
      if (sign === 0 && !isIdle) continue;
      current = atEnd(current, index, sign === 1 ? 'high' : 'low');
      isChanged = true;
    }
    if (!isChanged || patience.left < 0) return { circuit: current, bound, idle, slopes };
  }
}

/** At the end where the voltage is greatest, as far as that is certain; the same track where nothing is. */
function decidedTrack(track: LooseTrack, slopes: TrackSlopes | undefined): LooseTrack {
  const endOf = (interval: Interval, slope: Interval): Interval => {
    const isIdle = slope.low === 0 && slope.high === 0;
    const sign = signOf(slope);
    if (interval.low === interval.high || (sign === 0 && !isIdle)) return interval;
    const end = sign === 1 ? interval.high : interval.low;
    return { low: end, high: end };
  };
  if (slopes === undefined) return track;
  const [ohms, place] = [endOf(track.ohms, slopes.ohms), endOf(track.place, slopes.place)];
  return ohms === track.ohms && place === track.place ? track : { ...track, ohms, place };
}

/** How much the voltage rises with each edge (volt per ohm, or with that sign) and each source, and a bound of it. */
function pushesIn(circuit: LooseCircuit): {
  readonly pushes: readonly Interval[];
  readonly bound: number;
  readonly slopes: readonly TrackSlopes[];
} {
  const { edges, drives, tracks, from, to } = circuit;
  const adjoint = boundsOf(circuit, from, to, null);
  if (adjoint === null) {
    const slopes = tracks.map(() => ({ place: zero, ohms: zero }));
    return { pushes: edges.map(() => zero), bound: 0, slopes };
  }
  const actual = actualCurrents(circuit);
  const byDrive = drives.map((drive, index) =>
    drive.kind === 'voltage' ? (adjoint[edges.length + index] ?? zero) : dropBetween(circuit, adjoint, drive),
  );
  const volts = drives.reduce(
    (sum, { value }, index) => plus(sum, times(value, byDrive[index] ?? zero)),
    zero,
  );
  const byEdge = edges.map((_, index) => times(actual[index] ?? zero, adjoint[index] ?? zero));
  const bySources = drives.reduce(
    (sum, { kind, value }, index) =>
      kind === 'current' ? plus(sum, times(value, byDrive[index] ?? zero)) : sum,
    zero,
  );
  const slopes = tracks.map((track) =>
    slopesOf(track, {
      edges,
      actual,
      adjoint,
      bySources,
      fromWiper: fromWiper(circuit, track, actual, adjoint),
    }),
  );
  return { pushes: [...byEdge, ...byDrive], bound: volts.high, slopes };
}

/** What flows out of a wiper, by what flows through everything else there. null: a voltage source is there. */
function fromWiper(
  { edges, drives, from, to }: LooseCircuit,
  { first, second }: LooseTrack,
  actual: readonly Interval[],
  adjoint: readonly Interval[],
): readonly [actual: Interval, adjoint: Interval] | null {
  const wiper = edges[first]?.b;
  const isThere = ({ a, b }: { readonly a: number; readonly b: number }): boolean =>
    a === wiper || b === wiper;
  const here = drives.filter(isThere);
  if (here.some(({ kind }) => kind === 'voltage')) return null;
  const out = (currents: readonly Interval[], start: Interval): Interval =>
    edges.reduce((sum, edge, at) => {
      if (at === first || at === second || !isThere(edge) || edge.a === edge.b) return sum;
      const current = currents[at] ?? zero;
      return plus(sum, edge.a === wiper ? current : negative(current));
    }, start);
  const driven = here.reduce((sum, { a, value }) => plus(sum, a === wiper ? negative(value) : value), zero);
  const probed = wiper === from ? -1 : wiper === to ? 1 : 0;
  return [out(actual, driven), out(adjoint, { low: probed, high: probed })];
}

/**
 * Currents for 1 A between two nodes, voltage sources as joints but the one that drives, in the order of edges, then
 * sources (zero for the others).
 */
function boundsOf(
  { edges, drives, nodes }: LooseCircuit,
  from: number,
  to: number,
  driving: number | null,
): readonly Interval[] | null {
  const joints = drives.flatMap(({ kind, a, b }, index) =>
    kind === 'voltage' && index !== driving ? [{ index, edge: { a, b, ohms: zero } }] : [],
  );
  const bounds = flowBounds([...edges, ...joints.map(({ edge }) => edge)], nodes, from, to);
  if (bounds === null) return null;
  const ofDrive = new Map(joints.map(({ index }, place) => [index, bounds[edges.length + place] ?? zero]));
  return [...bounds.slice(0, edges.length), ...drives.map((_, index) => ofDrive.get(index) ?? zero)];
}

/** What the sources drive through each edge. */
function actualCurrents(circuit: LooseCircuit): readonly Interval[] {
  return circuit.drives.reduce<readonly Interval[]>(
    (sums, drive, index) => {
      const bounds = boundsOf(circuit, drive.a, drive.b, index);
      if (bounds === null) return sums;
      const current =
        drive.kind === 'current' ? drive.value : times(drive.value, conductance(circuit, index));
      return sums.map((sum, edge) => plus(sum, times(current, bounds[edge] ?? zero)));
    },
    circuit.edges.map(() => zero),
  );
}

/** That a voltage source sees: it falls with every resistance, so two solves are exact. */
function conductance({ edges, drives, nodes }: LooseCircuit, driving: number): Interval {
  const drive = drives[driving];
  if (drive === undefined) return zero;
  const joints = drives.flatMap(({ kind, a, b }, index) =>
    kind === 'voltage' && index !== driving ? [{ a, b, ohms: 0 }] : [],
  );
  const siemens = (end: 'low' | 'high'): number =>
    1 /
    resistanceBetween(
      [...edges.map(({ a, b, ohms }) => ({ a, b, ohms: ohms[end] })), ...joints],
      nodes,
      drive.a,
      drive.b,
    );
  return { low: siemens('high'), high: siemens('low') };
}

/** The voltage from one node to another by the currents on a way between them. */
function dropBetween(
  { edges, drives, nodes }: LooseCircuit,
  amperes: readonly Interval[],
  { a, b }: { readonly a: number; readonly b: number },
): Interval {
  const steps = [
    ...edges.map((edge, index) => ({ a: edge.a, b: edge.b, drop: times(edge.ohms, amperes[index] ?? zero) })),
    ...drives.flatMap((drive) => (drive.kind === 'voltage' ? [{ a: drive.a, b: drive.b, drop: zero }] : [])),
  ];
  const drops = new Map<number, Interval>([[a, zero]]);
  for (let round = 0; round < nodes && !drops.has(b); round += 1)
    for (const step of steps) {
      const [here, there] = [drops.get(step.a), drops.get(step.b)];
      if (here !== undefined && there === undefined) drops.set(step.b, plus(here, step.drop));
      if (there !== undefined && here === undefined) drops.set(step.a, plus(there, negative(step.drop)));
    }
  return drops.get(b) ?? zero;
}

/** The voltage of a circuit in which nothing has a width. */
function volted({ edges, drives, nodes, from, to }: LooseCircuit): number {
  return voltageBetween(
    edges.map(({ a, b, ohms }) => ({ a, b, ohms: ohms.low })),
    drives.map((drive) => ({ ...drive, value: drive.value.low })),
    nodes,
    from,
    to,
  );
}
