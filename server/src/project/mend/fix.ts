import type { Work } from '../../bench/work.ts';
import type { Finding } from '../../text/finding.ts';
import type { Analysis } from '../analysis.ts';
import type { Edit } from '../edit.ts';
import { editsFor } from './change.ts';
import { waysToMakeSafe } from './make-safe.ts';
import { tryEdits } from './trial.ts';

/** A fix that was tried: the finding is gone after it, and no new one has come. */
export interface Fix {
  readonly title: string;
  readonly edits: readonly Edit[];
}

/** No more ways than this are tried for one finding. */
const mostTrials = 60;

/** Rules that can be mended so. */
export const mendable: ReadonlySet<string> = new Set(['live-touch', 'short-wait']);

/** The best fix of a finding, tried on a copy; null where none holds. */
export function* fixFor(analysis: Analysis, finding: Finding): Work<Fix | null> {
  if (!mendable.has(finding.rule)) return null;
  const { value: procedure } = analysis.procedure();
  for (const { title, changes } of waysToMakeSafe(procedure, finding).slice(0, mostTrials)) {
    const edits = editsFor(analysis, changes);
    if (edits === null) continue;
    yield { stage: 'order', done: 0 };
    const { gone, fresh } = yield* tryEdits(analysis, finding, edits);
    if (gone && fresh.length === 0) return { title, edits };
  }
  return null;
}
