import { diffLines } from 'diff';
import type { Work } from '../model/work.ts';
import type { Finding } from '../model/finding.ts';
import type { Analysis } from '../project/analysis.ts';
import type { Edit } from '../project/edit.ts';
import { editsFor } from './change.ts';
import type { Candidate } from './candidate.ts';
import { endsWithTouch } from './make-safe.ts';
import { menders, touchRules } from './menders.ts';
import { endRules, textOf, tryEdits, tryText } from './trial.ts';
import type { Trial } from './trial.ts';

/** A fix that was tried: the finding is gone after it, and no new one has come. */
export interface Fix {
  readonly title: string;
  readonly edits: readonly Edit[];
  /** It settles nothing that only the author can know. */
  readonly isPreferred: boolean;
}

/** No more ways than this are tried for one finding. */
const mostTrials = 60;

/** A fix may uncover touches that were let pass behind the one it mends; they are mended with it, so many times. */
const mostRounds = 8;

/** Where the author has to choose, so many ways are offered. */
const mostChoices = 5;

/** The best fix of a finding, tried on a copy; null where none holds. */
export function* fixFor(analysis: Analysis, finding: Finding): Work<Fix | null> {
  const [best = null] = yield* fixesUpTo(1, analysis, finding);
  return best;
}

/** The best fix of a finding, and where that is a choice the others beside it. */
export function* fixesFor(analysis: Analysis, finding: Finding): Work<readonly Fix[]> {
  return yield* fixesUpTo(mostChoices, analysis, finding);
}

function* fixesUpTo(most: number, analysis: Analysis, finding: Finding): Work<readonly Fix[]> {
  const ways = yield* mend(analysis, finding, mostRounds, most);
  return ways.map(({ title, text, isPreferred }) => ({
    title,
    edits: editsBetween(textOf(analysis), text),
    isPreferred,
  }));
}

/** Whether there are ways to mend what a rule finds. */
export function isMendable(rule: string): boolean {
  return menders.has(rule);
}

interface Mended {
  readonly title: string;
  readonly text: string;
  readonly isPreferred: boolean;
}

/**
 * The first way that holds; as long as the ways are choices, so many of them. At the end of a draft, what the path then
 * leaves behind is no reason against a way: the writer has not come to that yet.
 */
function* mend(analysis: Analysis, finding: Finding, rounds: number, most = 1): Work<readonly Mended[]> {
  const { value: procedure } = analysis.procedure();
  const isTouch = touchRules.has(finding.rule);
  const isDraftEnd = isTouch && endsWithTouch(procedure, finding);
  // What is put in may be a touch, or leave an end to be mended.
  const mayFollow = ({ rule }: Finding): boolean => touchRules.has(rule) || endRules.has(rule);
  const promising: { way: Candidate; trial: Trial }[] = [];
  const holding: Mended[] = [];
  const ways = menders.get(finding.rule)?.(analysis, finding) ?? [];
  for (const way of ways.slice(0, mostTrials)) {
    const changed = editsFor(analysis, way.changes);
    if (changed === null) continue;
    yield { stage: 'order', done: 0 };
    const trial = yield* tryEdits(analysis, finding, [...changed, ...(way.edits ?? [])]);
    if (!trial.gone) continue;
    const against = trial.fresh.filter(({ rule }) => !(isDraftEnd && endRules.has(rule)));
    if (against.length === 0) {
      const isPreferred = way.isChoice !== true;
      holding.push({ title: way.title, text: trial.text, isPreferred });
      if (isPreferred || holding.length >= most) return holding;
    } else if (against.every(mayFollow)) promising.push({ way, trial });
  }
  if (holding.length > 0) return holding;
  for (const { way, trial } of rounds > 0 ? promising : []) {
    const rest = yield* mendRest(analysis, finding, trial, rounds);
    if (rest === null) continue;
    const title = `${way.title}, and ${isTouch ? 'the like behind it' : 'what follows from it'}`;
    return [{ title, text: rest.text, isPreferred: way.isChoice !== true && rest.isPreferred }];
  }
  return [];
}

/** Mends what a trial has uncovered, until nothing is new; null where that is not all to be mended. */
function* mendRest(
  analysis: Analysis,
  finding: Finding,
  first: Trial,
  rounds: number,
): Work<Omit<Mended, 'title'> | null> {
  let trial = first;
  let isPreferred = true;
  for (let left = rounds; left >= 0; left--) {
    const [next] = trial.fresh;
    if (next === undefined) return { text: trial.text, isPreferred };
    if (!trial.gone) return null;
    const [mended] = yield* mend(trial.analysis, next, left - 1);
    if (mended === undefined) return null;
    isPreferred &&= mended.isPreferred;
    trial = yield* tryText(analysis, finding, mended.text);
  }
  return null;
}

/** The edits that lead from one text to another, by whole lines. */
export function editsBetween(before: string, after: string): readonly Edit[] {
  const edits: Edit[] = [];
  let at = 0;
  let open: { from: number; text: string } | null = null;
  const close = (): void => {
    if (open !== null) edits.push({ range: { from: open.from, to: at }, text: open.text });
    open = null;
  };
  for (const { added, removed, value } of diffLines(before, after)) {
    if (!added && !removed) {
      close();
      at += value.length;
      continue;
    }
    open ??= { from: at, text: '' };
    if (added) open.text += value;
    else at += value.length;
  }
  close();
  return edits;
}
