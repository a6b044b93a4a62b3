import type { Step } from '../model/procedure.ts';
import type { Edge, StepGraph } from './graph.ts';

/** The graph as lists of numbers, for explorations that pass each step many times. */
export interface NumberedGraph {
  /** What each step does: steps that do the very same have the same number, from 0. A step that could not be read: -1. */
  readonly act: Int32Array;
  readonly acts: number;
  /** By step the number of its first way out; those of the next step follow behind its last one. */
  readonly firstWay: Int32Array;
  readonly ways: readonly Edge[];
  /** By way out: 1 where it is an outcome. */
  readonly byOutcome: Uint8Array;
  /** By way out the step that it leads to; see `atEnd` and `nowhere`. */
  readonly to: Int32Array;
  /** The steps behind which a path can end. */
  readonly ending: readonly (readonly [index: number, step: Step])[];
}

export const atEnd = -1;
export const nowhere = -2;

const known = new WeakMap<StepGraph, NumberedGraph>();

export function numberedGraph(graph: StepGraph): NumberedGraph {
  const made = known.get(graph) ?? makeNumbered(graph);
  known.set(graph, made);
  return made;
}

function makeNumbered({ steps, edges }: StepGraph): NumberedGraph {
  const numbers = new Map<string, number>();
  const act = Int32Array.from(steps, (step) => {
    if (step.verb === 'broken') return -1;
    const words = actOf(step);
    const number = numbers.get(words) ?? numbers.size;
    numbers.set(words, number);
    return number;
  });
  const ways = edges.flat();
  const byOutcome = Uint8Array.from(ways, ({ taken }) => (taken.kind === 'outcome' ? 1 : 0));
  const to = Int32Array.from(ways, (way) =>
    way.to === 'end' ? atEnd : way.to === null ? nowhere : behindCalls(steps, way.to),
  );
  const firstWay = new Int32Array(edges.length + 1);
  for (const [index, out] of edges.entries()) firstWay[index + 1] = (firstWay[index] ?? 0) + out.length;
  const ending = [...steps.entries()].filter(([index]) => edges[index]?.some((way) => way.to === 'end'));
  return { act, acts: numbers.size, firstWay, ways, byOutcome, to, ending };
}

/** A call does nothing and does not count as a step: what is entered is the first step of its routine. */
export function behindCalls(steps: StepGraph['steps'], index: number): number {
  let at = index;
  while (steps[at]?.verb === 'run') at += 1;
  return at;
}

/** What of a step is only said, or says where it stands and leads. */
const unacted: ReadonlySet<string> = new Set([
  'number',
  'index',
  'file',
  'routine',
  'calls',
  'path',
  'section',
  'id',
  'note',
  'why',
  'notice',
  'caution',
  'minutes',
  'see',
  'text',
  'outcomes',
]);

/** All of a step but that; of warnings, whether there are any. Keys that are not known here make steps differ. */
function actOf(step: Step): string {
  if (step.verb === 'go') return step.verb;
  let act = '';
  for (const [key, value] of Object.entries(step)) {
    if (unacted.has(key)) continue;
    const said = key === 'warning' || key === 'danger' ? '' : JSON.stringify(value);
    act += `${key} ${said}\n`;
  }
  return act;
}
