import { valueAt } from './problem.ts';
import type { Problem } from './problem.ts';
import type { Action, Id, Outcome, Routine, Step, Target } from '../model/procedure.ts';
import type { RoutineReader } from './read-routines.ts';
import type { ListedStep } from './read-steps.ts';
import { refTo } from '../model/where.ts';
import type { FileId, Path, StepRef } from '../model/where.ts';

/** With its routines a procedure has no more steps than this. */
export const mostSteps = 50_000;

export interface Expanding {
  readonly routines: ReadonlyMap<Id, Routine>;
  readonly readRoutine: RoutineReader;
  readonly fileOf: (path: Path) => FileId;
  readonly report: (problem: Problem) => void;
}

/**
 * All that is done, in order: behind each call the steps of its routine, as they are called. null: they are too many, and
 * that has been reported.
 */
export function expanded(listed: readonly ListedStep[], expanding: Expanding): readonly Step[] | null {
  const { calls } = expanding.readRoutine;
  const behind = listed.map((step) => (step.verb === 'run' ? calls.sizeOf(step.runs) : 0));
  const size = behind.reduce((sum, each) => sum + each, listed.length);
  if (size > mostSteps) {
    const message = `With the routines that it calls this procedure has more than ${mostSteps} steps. It is not checked: make a procedure of its own of part of it.`;
    expanding.report({ rule: 'file', at: { path: ['steps'], part: 'key' }, message });
    return null;
  }
  const list = listOf(listed, expanding, new Map());
  const steps: Step[] = [];
  lay(list, [], undefined, list.size, steps, expanding);
  return steps;
}

interface List {
  readonly steps: readonly { readonly step: ListedStep; readonly inner: List | null }[];
  /** With all that it calls. */
  readonly size: number;
  /** What is wrong with its steps as they are called here. */
  readonly problems: readonly Problem[];
}

/** Calls stand in each other no deeper than the call graph lets them. */
function listOf(listed: readonly ListedStep[], expanding: Expanding, known: Map<string, List>): List {
  const steps = listed.map((step) => ({
    step,
    inner: step.verb === 'run' ? innerOf(step, expanding, known) : null,
  }));
  const size = steps.reduce((sum, { inner }) => sum + 1 + (inner?.size ?? 0), 0);
  return { steps, size, problems: [] };
}

function innerOf(
  call: ListedStep & { readonly verb: 'run' },
  expanding: Expanding,
  known: Map<string, List>,
): List | null {
  const { asCalled, calls } = expanding.readRoutine;
  const routine = expanding.routines.get(call.runs);
  if (routine === undefined || !calls.leadsOn(call)) return null;
  const key = JSON.stringify([call.runs, ...call.given]);
  const earlier = known.get(key);
  if (earlier !== undefined) return earlier;
  const { steps, problems } = asCalled(routine, call.given);
  const list = { ...listOf(steps, expanding, known), problems };
  known.set(key, list);
  return list;
}

function lay(
  list: List,
  calls: readonly StepRef[],
  routine: Id | undefined,
  total: number,
  out: Step[],
  expanding: Expanding,
): void {
  const start = out.length;
  const at: number[] = [];
  let next = start;
  for (const { inner } of list.steps) {
    at.push(next);
    next += 1 + (inner?.size ?? 0);
  }
  const behind: Target = next < total ? next : 'end';
  const moved = (target: Target): Target =>
    typeof target === 'number' ? (at[target] ?? null) : target === 'end' ? behind : null;
  for (const { step, inner } of list.steps) {
    const here = placed(withTargets(step, moved), out.length, calls, routine, expanding);
    out.push(step.verb === 'run' && inner === null ? { ...here, ...broken } : here);
    if (inner === null || step.verb !== 'run') continue;
    const call = refTo(here);
    tellProblems(inner.problems, [...calls, call], step.runs, expanding);
    lay(inner, [...calls, call], step.runs, total, out, expanding);
  }
}

const broken: Action = { verb: 'broken' };

/** What is wrong with a routine only as it is called is told at the call in the procedure's own steps. */
function tellProblems(
  problems: readonly Problem[],
  calls: readonly StepRef[],
  routine: Id,
  { report }: Expanding,
): void {
  const [outermost] = calls;
  if (outermost === undefined) return;
  for (const { rule, at, message, subject } of problems) {
    const related = 'path' in at ? [{ at, message: `Here in \`${routine}\`.` }] : [];
    report({
      rule,
      at: valueAt([...outermost.path, 'run']),
      message: `In \`${routine}\` as it is called here: ${message}`,
      ...(subject === undefined ? {} : { subject }),
      related,
    });
  }
}

function placed(
  step: ListedStep,
  index: number,
  calls: readonly StepRef[],
  routine: Id | undefined,
  { fileOf }: Expanding,
): Step {
  const place = { index, file: fileOf(step.path), calls };
  return Object.assign({}, step, routine === undefined ? place : { ...place, routine });
}

function withTargets(step: ListedStep, moved: (target: Target) => Target): ListedStep {
  const led = (outcome: Outcome): Outcome => ({ ...outcome, target: moved(outcome.target) });
  switch (step.verb) {
    case 'go':
      return { ...step, to: moved(step.to) };
    case 'read':
    case 'measure':
    case 'wiggle':
    case 'read-codes':
    case 'inspect':
      return { ...step, outcomes: step.outcomes?.map(led) ?? null };
    case 'prove-dead':
      return { ...step, outcomes: step.outcomes.map(led) };
    case 'ignition':
    case 'disconnect':
    case 'reconnect':
    case 'wait':
    case 'unlock':
    case 'unplug':
    case 'plug':
    case 'fit':
    case 'move':
    case 'remove':
    case 'clear-codes':
    case 'do':
    case 'replace':
    case 'conclude':
    case 'stop':
    case 'run':
    case 'broken':
      return step;
  }
}
