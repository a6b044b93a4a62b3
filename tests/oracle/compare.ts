import type { Finding } from '../../server/src/model/finding.ts';
import type { Procedure } from '../../server/src/model/procedure.ts';
import { ORACLE_RULES, WINDOW_RULES } from './coverage.ts';
import { codesForetold, oracle } from './oracle.ts';
import type { Told } from './oracle.ts';
import { isOfCurrent } from './reads.ts';
import { windowRules, windowsOf } from './windows.ts';
import type { WindowTold } from './windows.ts';

/** A finding of the engine in the oracle's terms. */
export function told(finding: Finding): Told {
  return {
    rule: finding.rule,
    step: finding.step?.number ?? null,
    subject: finding.subject ?? null,
    shortest: finding.trace?.hops.length ?? null,
    isError: finding.severity === 'error',
  };
}

/** Any initiator of the piece may be named, and of all that does not bear a tester any. */
export const subjectOf = ({ rule, subject }: Pick<Told, 'rule' | 'subject'>): string | null =>
  rule === 'meter-across-live' || rule === 'insulation-on-electronics' ? null : subject;

const nameOf = (each: Told): string => {
  const subject = subjectOf(each);
  const of = subject === null ? '' : ` of ${subject}`;
  return each.step === null ? `${each.rule}${of}` : `${each.rule}${of} at step ${each.step}`;
};

/** Readable differences, empty where both say the same. Lengths are compared where both have one. */
export function compare(ours: readonly Told[], oracles: readonly Told[]): string[] {
  const differences: string[] = [];
  const mine = new Map<string, Told>();
  for (const each of ours) {
    const before = mine.get(nameOf(each));
    // On two benches two initiators may be named.
    const isNamedTwice = before !== undefined && before.subject !== each.subject;
    if (before !== undefined && !isNamedTwice) differences.push(`engine twice: ${nameOf(each)}`);
    if (!isNamedTwice || (each.shortest ?? 0) < (before.shortest ?? 0)) mine.set(nameOf(each), each);
  }
  const theirs = new Map(oracles.map((each) => [nameOf(each), each]));
  for (const [name, each] of mine) {
    const other = theirs.get(name);
    if (other === undefined) {
      differences.push(`engine only: ${name} (${each.shortest ?? 'no'} steps)`);
    } else if (each.shortest !== null && other.shortest !== null && each.shortest !== other.shortest) {
      differences.push(`${name}: engine ${each.shortest} steps, oracle ${other.shortest}`);
    }
    if (other?.isError !== undefined && other.isError !== each.isError)
      differences.push(`${name}: engine ${each.isError === true ? 'error' : 'no error'}, oracle otherwise`);
  }
  for (const [name, each] of theirs)
    if (!mine.has(name)) differences.push(`oracle only: ${name} (${each.shortest ?? 'no'} steps)`);
  return differences.sort();
}

/** Where the engine's findings on a procedure and the oracle's differ. */
export function difference(findings: readonly Finding[], procedure: Procedure): string[] {
  const ours = findings.filter((finding) => ORACLE_RULES.includes(finding.rule)).map(told);
  return compare(ours, oracle(procedure));
}

/** Where what is told of windows differs. */
export function windowRuleDifference(findings: readonly Finding[], procedure: Procedure): string[] {
  const rules: readonly string[] = WINDOW_RULES;
  const ofCurrents = procedure.steps.filter(isOfCurrent).map(({ number }) => number);
  const ours = findings
    .filter(({ rule, step }) => rules.includes(rule) && !ofCurrents.includes(step?.number ?? 0))
    .map(({ rule, step, subject }) => `${rule} of ${subject ?? '-'} at step ${step?.number ?? '-'}`);
  const line = ({ rule, step, loop }: WindowTold): string => `${rule} of ${loop} at step ${step}`;
  // The engine asks by step, not by bench, where a sound circuit can go: it may come to more steps, never to fewer.
  const excused = windowRules(procedure, 'anywhere').map(line);
  return onlyInOne(ours, windowRules(procedure).map(line)).filter(
    (different) => !excused.some((each) => different === `engine only: ${each}`),
  );
}

/** A code as the engine foretells it at a step. */
export interface CodeAtStep {
  readonly step: number;
  readonly loop: string;
  readonly code: string;
  readonly certain: boolean;
}

/** Where the codes that the engine foretells and the oracle's differ. */
export function codeDifference(ours: readonly CodeAtStep[], procedure: Procedure): string[] {
  const line = (each: CodeAtStep): string =>
    `${each.certain ? 'certain' : 'possible'} code of ${each.loop} at step ${each.step}: ${each.code}`;
  const theirs = [...codesForetold(procedure)].flatMap(([step, codes]) =>
    codes.map((each) => line({ step, ...each })),
  );
  return onlyInOne(ours.map(line), theirs);
}

/** An accepted window as the engine computed it, in ohms; null: it has none. */
export interface WindowAtStep {
  readonly step: number;
  readonly loop: string;
  readonly accepted: 'open' | { readonly least: number | null; readonly most: number | null } | null;
}

/** Where accepted windows differ, by more than nine digits. Steps that no path reaches are left out. */
export function windowDifference(ours: readonly WindowAtStep[], procedure: Procedure): string[] {
  const number = (value: number | null): string =>
    value === null ? '-' : String(Number(value.toPrecision(9)));
  const line = ({ step, loop, accepted }: WindowAtStep): string => {
    if (accepted === null) return `no window of ${loop} at step ${step}`;
    const text = accepted === 'open' ? 'open' : `${number(accepted.least)}..${number(accepted.most)}`;
    return `window of ${loop} at step ${step}: ${text}`;
  };
  const theirs = windowsOf(procedure)
    .filter(({ shown }) => shown.length > 0)
    .map(({ step, read, accepted }): WindowAtStep => ({ step: step.number, loop: read.of, accepted }));
  const reached = new Set(theirs.map(({ step }) => step));
  return onlyInOne(ours.filter(({ step }) => reached.has(step)).map(line), theirs.map(line));
}

function onlyInOne(ours: readonly string[], theirs: readonly string[]): string[] {
  return [
    ...[...new Set(ours)].filter((each) => !theirs.includes(each)).map((each) => `engine only: ${each}`),
    ...[...new Set(theirs)].filter((each) => !ours.includes(each)).map((each) => `oracle only: ${each}`),
  ];
}
