import type { Work } from '../model/work.ts';
import type { Finding } from '../model/finding.ts';
import { analyse } from '../project/analysis.ts';
import type { Analysis } from '../project/analysis.ts';
import { applyEdits } from '../project/edit.ts';
import type { Edit } from '../project/edit.ts';
import { editsBetween, fixFor, isMendable } from './fix.ts';
import { textOf } from './trial.ts';

/** What mends all findings that have a sure way. */
export interface FixAll {
  readonly edits: readonly Edit[];
  /** How many fixes were made, one after another. */
  readonly count: number;
}

/** No more fixes than this are made at once. */
const mostFixes = 200;

/**
 * Makes the preferred fix of one finding after another, each on the text as the one before it left it, until none is
 * left. A fix that settles what only the author can know is never among them. null: there is nothing to be made.
 */
export function* fixAll(analysis: Analysis): Work<FixAll | null> {
  let current = analysis;
  let count = 0;
  // Without a sure way so far: looked at again when nothing else is left, since other fixes may have opened one.
  const without = new Set<string>();
  let countBefore = 0;
  while (count < mostFixes) {
    const fixed = yield* nextFixed(current, without);
    if (fixed === null) {
      if (count === countBefore) break;
      countBefore = count;
      without.clear();
      continue;
    }
    current = fixed;
    count += 1;
    yield { stage: 'order', done: count };
  }
  return count === 0 ? null : { edits: editsBetween(textOf(analysis), textOf(current)), count };
}

function* nextFixed(analysis: Analysis, without: Set<string>): Work<Analysis | null> {
  const findings = yield* analysis.findings('order');
  for (const finding of findings.filter((one) => isOpen(one, analysis))) {
    if (without.has(finding.key)) continue;
    const fix = yield* fixFor(analysis, finding);
    if (fix?.isPreferred !== true || fix.edits.length === 0) {
      without.add(finding.key);
      continue;
    }
    const text = applyEdits(textOf(analysis), fix.edits);
    return analyse(analysis.snapshot.with({ id: analysis.file, text }), analysis.file);
  }
  return null;
}

function isOpen({ rule, waived, at }: Finding, { file }: Analysis): boolean {
  return waived === undefined && at.file === file && isMendable(rule);
}
