import type { StepGraph } from '../paths/graph.ts';
import type { Reported } from '../paths/explore.ts';
import type { Issue } from '../paths/issue.ts';
import { stepAt, traceLength, traceOf } from '../paths/trace.ts';
import type { Way } from '../paths/trace.ts';
import type { Seen } from './rule.ts';
import type { Finding, Related, Severity, Stage } from '../model/finding.ts';
import type { Procedure } from '../model/procedure.ts';
import { sectionAndId, stepNumber } from '../model/where.ts';
import type { Path, StepRef, Where } from '../model/where.ts';

/** What the making of findings needs to know of the procedure and its rules. */
export interface Naming {
  readonly procedure: Procedure;
  readonly graph: StepGraph;
  readonly stepContent: (path: Path) => string;
  readonly severityOf: (rule: string) => Severity;
  readonly stageOf: (rule: string) => Stage;
}

/** An issue with the path to it, from an automaton. Several may stand for one finding. */
export function fromReported(naming: Naming, { issue, index, way }: Reported): Finding {
  return finding(naming, issue, index, way);
}

export function fromSeen(naming: Naming, { issue, index, way, repeatsFrom }: Seen): Finding {
  return finding(naming, issue, index ?? null, way ?? null, repeatsFrom);
}

function finding(
  naming: Naming,
  issue: Issue,
  index: number | null,
  way: Way | null,
  repeatsFrom?: number,
): Finding {
  const { graph } = naming;
  const step = index === null ? undefined : stepAt(graph, index);
  return {
    rule: issue.rule,
    severity: issue.severity ?? naming.severityOf(issue.rule),
    stage: naming.stageOf(issue.rule),
    message: issue.message,
    at: placeOf(naming, issue, index),
    ...(step === undefined ? {} : { step }),
    ...(issue.subject === undefined ? {} : { subject: issue.subject }),
    ...(issue.cause === undefined ? {} : { cause: issue.cause }),
    related: issue.related ?? [],
    ...(issue.immune === undefined ? {} : { immune: issue.immune }),
    ...(way === null ? {} : { trace: traceOf(graph, way, { repeatsFrom, owes: issue.owes }) }),
    key: [issue.rule, step === undefined ? '' : naming.stepContent(step.path), issue.subject ?? ''].join('/'),
  };
}

function placeOf({ procedure, graph }: Naming, issue: Issue, index: number | null): Where {
  if (issue.place !== undefined) return { file: fileOf(procedure, issue.place.path), ...issue.place };
  const step = index === null ? undefined : graph.steps[index];
  if (step === undefined) return { file: procedure.file, path: ['steps'], part: 'key' };
  const below = issue.underline ?? [step.verb];
  return { file: step.file, path: [...step.path, ...below], part: below[0] === 'outcomes' ? 'key' : 'value' };
}

function fileOf({ file, elsewhere }: Procedure, path: Path): string {
  return elsewhere.get(sectionAndId(path)) ?? file;
}

/**
 * One finding for one rule, step and subject: the gravest, then the one with the shortest path. A step of a routine is
 * one step however often it is called; the finding names the calls.
 */
export function onePerSubject(findings: readonly Finding[]): readonly Finding[] {
  const groups = new Map<string, Finding[]>();
  for (const one of findings) {
    const group = groups.get(one.key);
    if (group === undefined) groups.set(one.key, [one]);
    else group.push(one);
  }
  return [...groups.values()].flatMap((group) => {
    const [first, ...others] = group;
    if (first === undefined) return [];
    return [
      withCalls(
        others.reduce((best, one) => (isPreferred(one, best) ? one : best), first),
        group,
      ),
    ];
  });
}

/** No more calls than this are named. */
const mostCalls = 5;

function withCalls(best: Finding, group: readonly Finding[]): Finding {
  if (best.step === undefined || best.step.calls.length === 0) return best;
  const found = group.flatMap(({ step }) => step?.calls.slice(-1) ?? []);
  const calls = [...new Map(found.map((call) => [stepNumber(call), call])).values()].toSorted(inOrder);
  // A call that stands in a routine may itself be called from several places.
  const writtenAt = ({ path }: StepRef): string => path.join('/');
  const places = [...new Map(calls.map((call) => [writtenAt(call), call])).values()];
  return {
    ...best,
    message: `${best.message} In ${best.step.routine ?? 'the routine'}, called by ${inSteps(calls)}.`,
    related: [
      ...best.related,
      ...places.slice(0, mostCalls).map((place): Related => ({
        at: { file: place.file, path: [...place.path, 'run'], part: 'value' },
        message: `The call in ${inSteps(calls.filter((call) => writtenAt(call) === writtenAt(place)))}.`,
      })),
    ],
  };
}

function inOrder(one: StepRef, other: StepRef): number {
  return stepNumber(one).localeCompare(stepNumber(other), 'en', { numeric: true });
}

/** `step 5`, `steps 5, 9`, and no more than some of many. */
function inSteps(calls: readonly StepRef[]): string {
  const named = calls.slice(0, mostCalls).map(stepNumber).join(', ');
  const more = calls.length > mostCalls ? ` and ${calls.length - mostCalls} more` : '';
  return `step${calls.length === 1 ? '' : 's'} ${named}${more}`;
}

const gravity: Readonly<Record<Severity, number>> = { error: 0, warning: 1, information: 2 };

function isPreferred(one: Finding, other: Finding): boolean {
  if (one.immune !== other.immune) return one.immune === true;
  if (one.severity !== other.severity) return gravity[one.severity] < gravity[other.severity];
  return traceLength(one.trace) < traceLength(other.trace);
}
