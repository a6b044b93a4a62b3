import { TooMuchWork } from '../paths/effort.ts';
import type { Reported } from '../paths/explore.ts';
import { runAll } from '../paths/run.ts';
import type { Work } from '../model/work.ts';
import type { Finding, Thrown } from '../model/finding.ts';
import type { Context, Finder, Rule } from './rule.ts';
import { fromReported, fromSeen, onePerSubject } from './to-finding.ts';
import { tooMuchWork } from './flow/too-much-work.ts';
import type { Naming } from './to-finding.ts';

export interface Applied {
  readonly findings: readonly Finding[];
  readonly complete: boolean;
  /** What a rule threw: the findings are those before it. */
  readonly thrown: Thrown | null;
  /** It would have taken too much, and a finding says so beside those before it. */
  readonly isTooMuch: boolean;
}

/** Applies every rule of a stage; rules that share a finder share its run. */
export function* applyRules(asked: Context, stage: Rule['stage'], rules: readonly Rule[]): Work<Applied> {
  const context = { ...asked, explorer: asked.explorer.renewed() };
  const naming = namingOf(context, rules);
  const findings: Finding[] = [];
  const report = (reported: readonly Reported[]): void => {
    for (const one of reported) findings.push(fromReported(naming, one));
  };
  let complete = true;
  let thrown: Thrown | null = null;
  let isTooMuch = false;
  try {
    if (stage === 'windows') report(context.readings.reported);
    const finders = new Set<Finder>(rules.filter((rule) => rule.stage === stage).map((rule) => rule.finder));
    for (const finder of finders) {
      const watched = yield* runAll(context.explorer, finder.watch?.(context) ?? []);
      report(watched.reported);
      complete &&= watched.complete;
      for (const seen of finder.check?.(context) ?? []) findings.push(fromSeen(naming, seen));
    }
  } catch (error) {
    isTooMuch = error instanceof TooMuchWork;
    if (isTooMuch) findings.push(tooMuchWork(context.procedure, stage));
    else thrown = { error };
  }
  complete &&= thrown === null && !isTooMuch;
  return { findings: onePerSubject(findings), complete, thrown, isTooMuch };
}

function namingOf({ procedure, graph, stepContent }: Context, rules: readonly Rule[]): Naming {
  const byName = new Map(rules.map((rule) => [rule.name, rule]));
  return {
    procedure,
    graph,
    stepContent,
    severityOf: (name) => byName.get(name)?.severity ?? 'error',
    stageOf: (name) => byName.get(name)?.stage ?? 'order',
  };
}
