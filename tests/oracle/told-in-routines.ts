import { stepNumber } from '../../server/src/model/where.ts';
import type { Finding } from '../../server/src/model/finding.ts';
import type { Procedure } from '../../server/src/model/procedure.ts';
import { subjectOf } from './compare.ts';
import { ORACLE_RULES } from './coverage.ts';
import { reachable } from './graph.ts';
import { oracle } from './oracle.ts';
import type { WrittenAt } from './walk.ts';

/*
 * Procedures with routines against the flat list that they stand for: the oracle goes through the list, the engine reads
 * the calls. A step of a routine is one written step: over its calls the gravest counts, then the shortest.
 */

interface Line {
  readonly printed: string | null;
  readonly shortest: number | null;
  readonly isError: boolean;
}

/** What the oracle says of the flat list, told by where it is written. */
function expected(procedure: Procedure, written: readonly WrittenAt[]): Map<string, Line[]> {
  const reached = reachable(procedure);
  const placesReached = new Set(
    [...reached].flatMap((index) => {
      const step = written[index];
      return step === undefined ? [] : [step.place, ...step.calls.map(({ place }) => place)];
    }),
  );
  const lines = new Map<string, Line[]>();
  const add = (rule: string, place: string | undefined, subject: string | null, line: Line): void => {
    const key = `${rule} ${place ?? '-'} ${subjectOf({ rule, subject }) ?? '-'}`;
    lines.set(key, [...(lines.get(key) ?? []), line]);
  };
  for (const { rule, step, subject, shortest, isError } of oracle(procedure)) {
    const here = step === null ? undefined : written[step - 1];
    const line = { shortest, isError: isError === true, printed: here?.printed ?? null };
    if (rule !== 'unreachable' || here === undefined) add(rule, here?.place, subject, line);
    else {
      const call = here.calls.find(({ place }) => !placesReached.has(place));
      const told = call ?? here;
      if (!placesReached.has(told.place)) add(rule, told.place, null, { ...line, printed: told.printed });
    }
  }
  // What a `stop` may leave is too much only where no call of it leaves that.
  for (const [key, told] of lines) {
    const [rule, place] = key.split(' ');
    const copies = [...reached].filter((index) => written[index]?.place === place);
    if (rule === 'leaves-too-much' && told.length < copies.length) lines.delete(key);
  }
  return lines;
}

/** Where the engine's findings on a procedure as it is written and the oracle's on its flat list differ. */
export function differencesAsWritten(
  findings: readonly Finding[],
  flat: Procedure,
  written: readonly WrittenAt[],
): readonly string[] {
  const lines = expected(flat, written);
  const told: string[] = [];
  for (const { rule, step, subject, trace } of findings.filter((one) => ORACLE_RULES.includes(one.rule))) {
    const of = subjectOf({ rule, subject: subject ?? null });
    const key = `${rule} ${step?.path.join('/') ?? '-'} ${of ?? '-'}`;
    const theirs = lines.get(key);
    lines.delete(key);
    if (theirs === undefined) {
      told.push(`engine only: ${key}`);
      continue;
    }
    const gravest = theirs.some(({ isError }) => isError) ? theirs.filter(({ isError }) => isError) : theirs;
    const least = Math.min(...gravest.map(({ shortest }) => shortest ?? Infinity));
    const length = trace?.hops.filter(({ taken }) => taken?.kind !== 'run').length;
    if (least !== Infinity && length !== undefined && least !== length)
      told.push(`${key}: engine ${length} steps, oracle ${least}`);
    // Without a path of its own any call will do for which it is so.
    const best = gravest.filter(({ shortest }) => length === undefined || (shortest ?? Infinity) === least);
    if (step !== undefined && !best.some(({ printed }) => printed === stepNumber(step)))
      told.push(
        `${key}: engine at ${stepNumber(step)}, oracle at ${best.map((one) => one.printed).join(' or ')}`,
      );
  }
  told.push(...[...lines.keys()].map((key) => `oracle only: ${key}`));
  return told;
}
