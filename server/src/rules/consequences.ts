import { traceLength } from '../paths/trace.ts';
import type { Finding, Severity } from '../model/finding.ts';
import { stepNumber } from '../model/where.ts';
import type { StepRef } from '../model/where.ts';
import { listed } from './words.ts';

/*
 * One cause, many findings: a step that is missing makes each touch behind it unsafe. The first on a path stands for those
 * that come behind it for the same cause, which stay in the list and are not shown by themselves.
 */

/** So many steps of paths are looked at for one file; findings beyond stand by themselves. */
const mostHops = 200_000;

/** No more consequences than this are named. */
const mostNamed = 8;

const gravity: Readonly<Record<Severity, number>> = { error: 0, warning: 1, information: 2 };

/** The findings in their order, with those marked that come with another one of the same rule and cause. */
export function withConsequences(findings: readonly Finding[]): readonly Finding[] {
  const groups = new Map<string, Finding[]>();
  for (const finding of findings) {
    if (finding.cause === undefined || finding.step === undefined || finding.waived !== undefined) continue;
    const key = `${finding.rule}\n${finding.cause}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [finding]);
    else group.push(finding);
  }
  const led = new Map<Finding, Finding>();
  let left = mostHops;
  for (const group of groups.values()) {
    const inOrder = group.toSorted((one, other) => traceLength(one.trace) - traceLength(other.trace));
    const leaders: Finding[] = [];
    for (const finding of inOrder) {
      left -= traceLength(finding.trace);
      const leader = leaders.length === 0 || left < 0 ? undefined : leaderOf(finding, leaders);
      if (leader === undefined) leaders.push(finding);
      else led.set(finding, leader);
    }
  }
  if (led.size === 0) return findings;
  const consequences = new Map<Finding, Finding[]>();
  for (const [finding, leader] of led)
    consequences.set(leader, [...(consequences.get(leader) ?? []), finding]);
  return findings.map((finding) => {
    const leader = led.get(finding);
    if (leader !== undefined) return { ...finding, because: leader.key };
    const following = consequences.get(finding);
    return following === undefined ? finding : leading(finding, following);
  });
}

/** The first whose step lies on the path to a finding, or is the same, and that is as grave at least. */
function leaderOf(finding: Finding, leaders: readonly Finding[]): Finding | undefined {
  const passed = new Set((finding.trace?.hops ?? []).map(({ step }) => placeOf(step)));
  if (finding.step !== undefined) passed.add(placeOf(finding.step));
  return leaders.find(
    ({ step, severity }) =>
      step !== undefined && passed.has(placeOf(step)) && gravity[severity] <= gravity[finding.severity],
  );
}

function placeOf({ file, path }: StepRef): string {
  return `${file}\n${path.join('/')}`;
}

function leading(finding: Finding, following: readonly Finding[]): Finding {
  const named = following.slice(0, mostNamed).map(({ subject, step }) => {
    const isSame =
      step !== undefined && finding.step !== undefined && placeOf(step) === placeOf(finding.step);
    const where = step === undefined || isSame ? '' : `step ${stepNumber(step)}`;
    return subject === undefined ? where : where === '' ? subject : `${subject} (${where})`;
  });
  const more = following.length - named.length;
  const words = more > 0 ? `${named.join(', ')} and ${more} more` : listed(named);
  return {
    ...finding,
    message: `${finding.message} For the same cause: ${words}.`,
    consequences: following.map(({ key }) => key),
  };
}
