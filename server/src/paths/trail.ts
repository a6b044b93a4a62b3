import type { Edge, StepGraph } from './graph.ts';
import type { Hops, Way } from './trace.ts';

/*
 * The arrivals of an exploration, nearest first, in one list of numbers since there are very many of them. An arrival is
 * the place of its first number.
 */

export interface Trail {
  cells: Int32Array;
  /** Behind the last arrival. */
  end: number;
  /** By step its first arrival. */
  readonly first: Int32Array;
}

/* What is held of an arrival, and how many numbers that are. `none` stands where there is none. */
export const stepCell = 0;
export const stateCell = 1;
/** The arrival that it was reached from, and the number of the way out that was taken there. */
export const fromCell = 2;
export const byCell = 3;
/** The next arrival at the same step. */
export const nextCell = 4;
export const cellsEach = 5;
export const none = -1;

export function emptyTrail(steps: number): Trail {
  // Many a trail ends where it begins.
  const cells = new Int32Array(64 * cellsEach);
  return { cells, end: 0, first: new Int32Array(steps).fill(none) };
}

/** Adds an arrival, behind the `last` one of its step. */
export function addArrival(
  trail: Trail,
  step: number,
  last: number,
  state: number,
  from: number,
  by: number,
): void {
  if (trail.end === trail.cells.length) {
    const grown = new Int32Array(trail.cells.length * 2);
    grown.set(trail.cells);
    trail.cells = grown;
  }
  const { cells, end: at } = trail;
  cells[at + stepCell] = step;
  cells[at + stateCell] = state;
  cells[at + fromCell] = from;
  cells[at + byCell] = by;
  cells[at + nextCell] = none;
  if (last === none) trail.first[step] = at;
  else cells[last + nextCell] = at;
  trail.end += cellsEach;
}

/** The way to an arrival, and the way out of it; `none` where that does not matter. */
export function wayTo(
  trail: Trail,
  graph: StepGraph,
  ways: readonly Edge[],
  arrival: number,
  out: number,
): Way {
  return { hops: () => hopsTo(trail, graph, ways, arrival, out), length: () => lengthTo(trail, arrival) };
}

function lengthTo({ cells }: Trail, arrival: number): number {
  let length = 0;
  for (let at = arrival; at !== none; at = cells[at + fromCell] ?? none) length += 1;
  return length;
}

/** The hops of that way, with the calls that it enters on it. */
export function hopsTo(
  { cells }: Trail,
  { steps, edges }: StepGraph,
  ways: readonly Edge[],
  arrival: number,
  out: number,
): Hops {
  const hops: { index: number; by: Edge | null }[] = [];
  let by = out;
  for (let at = arrival; at !== none; at = cells[at + fromCell] ?? none) {
    const index = cells[at + stepCell] ?? 0;
    hops.push({ index, by: ways[by] ?? null });
    by = cells[at + byCell] ?? none;
    // Calls stand right before the step that is entered through them, and the way in leads to the first of them.
    const entered = by === none ? 0 : (ways[by]?.to ?? index);
    for (let call = index - 1; call >= Number(entered) && steps[call]?.verb === 'run'; call--)
      hops.push({ index: call, by: edges[call]?.[0] ?? null });
  }
  return hops.reverse();
}
