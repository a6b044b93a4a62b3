import { diffLines } from 'diff';
import type { Work } from '../../bench/work.ts';
import type { Finding } from '../../text/finding.ts';
import type { Analysis } from '../analysis.ts';
import type { Edit } from '../edit.ts';
import { editsFor } from './change.ts';
import { endsWithTouch, waysToMakeSafe } from './make-safe.ts';
import { endRules, textOf, tryEdits, tryText } from './trial.ts';
import type { Trial } from './trial.ts';

/** A fix that was tried: the finding is gone after it, and no new one has come. */
export interface Fix {
  readonly title: string;
  readonly edits: readonly Edit[];
}

/** No more ways than this are tried for one finding. */
const mostTrials = 60;

/** A fix may uncover touches that were let pass behind the one it mends; they are mended with it, so many times. */
const mostRounds = 8;

/** Rules that can be mended so. */
export const mendable: ReadonlySet<string> = new Set([
  'live-touch',
  'short-wait',
  'not-proven-dead',
  'proof-too-early',
]);

/**
 * The best fix of a finding, tried on a copy; null where none holds. At the end of a draft, what the path then leaves
 * behind is no reason against it: the writer has not come to that yet.
 */
export function* fixFor(analysis: Analysis, finding: Finding): Work<Fix | null> {
  const mended = mendable.has(finding.rule) ? yield* mend(analysis, finding, mostRounds) : null;
  if (mended === null) return null;
  return { title: mended.title, edits: editsBetween(textOf(analysis), mended.text) };
}

interface Mended {
  readonly title: string;
  readonly text: string;
}

function* mend(analysis: Analysis, finding: Finding, rounds: number): Work<Mended | null> {
  const { value: procedure } = analysis.procedure();
  const isDraftEnd = endsWithTouch(procedure, finding);
  const promising: { title: string; trial: Trial }[] = [];
  for (const { title, changes } of waysToMakeSafe(procedure, finding).slice(0, mostTrials)) {
    const edits = editsFor(analysis, changes);
    if (edits === null) continue;
    yield { stage: 'order', done: 0 };
    const trial = yield* tryEdits(analysis, finding, edits);
    if (!trial.gone) continue;
    const against = trial.fresh.filter(({ rule }) => !(isDraftEnd && endRules.has(rule)));
    if (against.length === 0) return { title, text: trial.text };
    if (against.every(({ rule }) => mendable.has(rule))) promising.push({ title, trial });
  }
  for (const { title, trial } of rounds > 0 ? promising : []) {
    const text = yield* mendRest(analysis, finding, trial, rounds);
    if (text !== null) return { title: `${title}, and the like behind it`, text };
  }
  return null;
}

/** Mends what a trial has uncovered, until nothing is new; null where that is not all to be mended. */
function* mendRest(analysis: Analysis, finding: Finding, first: Trial, rounds: number): Work<string | null> {
  let trial = first;
  for (let left = rounds; left >= 0; left--) {
    const [next] = trial.fresh;
    if (next === undefined) return trial.text;
    if (!trial.gone || !mendable.has(next.rule)) return null;
    const mended = yield* mend(trial.analysis, next, left - 1);
    if (mended === null) return null;
    trial = yield* tryText(analysis, finding, mended.text);
  }
  return null;
}

/** The edits that lead from one text to another, by whole lines. */
function editsBetween(before: string, after: string): readonly Edit[] {
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
