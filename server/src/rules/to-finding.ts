import type { StepGraph } from '../bench/graph.ts';
import type { Reported } from '../bench/explore.ts';
import type { Issue } from '../bench/issue.ts';
import { stepAt, traceLength, traceOf, wayAlong } from '../bench/trace.ts';
import type { Way } from '../bench/trace.ts';
import type { Seen } from './rule.ts';
import type { Finding, Severity, Stage } from '../text/finding.ts';
import type { Procedure } from '../text/procedure.ts';
import type { Path, Where } from '../text/where.ts';

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

export function fromSeen(naming: Naming, { issue, index, hops, repeatsFrom }: Seen): Finding {
  const way = hops === undefined || hops.length === 0 ? null : wayAlong(hops);
  return finding(naming, issue, index ?? null, way, repeatsFrom);
}

function finding(
  naming: Naming,
  issue: Issue,
  index: number | null,
  way: Way | null,
  repeatsFrom?: number,
): Finding {
  const { procedure, graph } = naming;
  const step = index === null ? undefined : stepAt(procedure, graph, index);
  return {
    rule: issue.rule,
    severity: issue.severity ?? naming.severityOf(issue.rule),
    stage: naming.stageOf(issue.rule),
    message: issue.message,
    at: placeOf(naming, issue, index),
    ...(step === undefined ? {} : { step }),
    ...(issue.subject === undefined ? {} : { subject: issue.subject }),
    related: issue.related ?? [],
    ...(way === null ? {} : { trace: traceOf(procedure, graph, way, repeatsFrom) }),
    key: [issue.rule, step === undefined ? '' : naming.stepContent(step.path), issue.subject ?? ''].join('/'),
  };
}

function placeOf({ procedure, graph }: Naming, issue: Issue, index: number | null): Where {
  const { file } = procedure;
  if (issue.place !== undefined) return { file, ...issue.place };
  const step = index === null ? undefined : graph.steps[index];
  if (step === undefined) return { file, path: ['steps'], part: 'key' };
  const below = issue.underline ?? [step.verb];
  return { file, path: [...step.path, ...below], part: below[0] === 'outcomes' ? 'key' : 'value' };
}

/** One finding for one rule, step and subject: the gravest, then the one with the shortest path. */
export function onePerSubject(findings: readonly Finding[]): readonly Finding[] {
  const best = new Map<string, Finding>();
  for (const one of findings) {
    const other = best.get(one.key);
    if (other === undefined || isPreferred(one, other)) best.set(one.key, one);
  }
  return [...best.values()];
}

const gravity: Readonly<Record<Severity, number>> = { error: 0, warning: 1, information: 2 };

function isPreferred(one: Finding, other: Finding): boolean {
  if (one.severity !== other.severity) return gravity[one.severity] < gravity[other.severity];
  return traceLength(one.trace) < traceLength(other.trace);
}
