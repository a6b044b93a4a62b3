import type { Reported } from '../bench/explore.ts';
import { runAll } from '../bench/run.ts';
import type { Work } from '../bench/work.ts';
import type { Finding } from '../text/finding.ts';
import type { Context, Finder, Rule } from './rule.ts';
import { rules } from './rules.ts';
import { fromReported, fromSeen, onePerSubject } from './to-finding.ts';
import type { Naming } from './to-finding.ts';

export interface Applied {
  readonly findings: readonly Finding[];
  readonly complete: boolean;
}

/** Applies every rule of a stage; rules that share a finder share its run. */
export function* applyRules(context: Context, stage: Rule['stage']): Work<Applied> {
  const naming = namingOf(context);
  const findings: Finding[] = [];
  const report = (reported: readonly Reported[]): void => {
    findings.push(...reported.map((one) => fromReported(naming, one)));
  };
  if (stage === 'windows') report(context.readings.reported);
  let complete = true;
  const finders = new Set<Finder>(rules.filter((rule) => rule.stage === stage).map((rule) => rule.finder));
  for (const finder of finders) {
    const watched = yield* runAll(context.explorer, finder.watch?.(context) ?? []);
    report(watched.reported);
    complete &&= watched.complete;
    findings.push(...(finder.check?.(context) ?? []).map((seen) => fromSeen(naming, seen)));
  }
  return { findings: onePerSubject(findings), complete };
}

function namingOf({ procedure, graph, stepContent }: Context): Naming {
  const byName = new Map(rules.map((rule) => [rule.name, rule]));
  return {
    procedure,
    graph,
    stepContent,
    severityOf: (name) => byName.get(name)?.severity ?? 'error',
    stageOf: (name) => byName.get(name)?.stage ?? 'order',
  };
}
