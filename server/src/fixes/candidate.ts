import type { Finding } from '../model/finding.ts';
import type { Analysis } from '../project/analysis.ts';
import type { Edit } from '../project/edit.ts';
import type { Change } from './change.ts';

/** A way to mend a finding, before it is known whether it holds. */
export interface Candidate {
  readonly title: string;
  readonly changes: readonly Change[];
  /** What is changed beside the steps. */
  readonly edits?: readonly Edit[];
  /** It settles something that only the author can know: it is offered, but never made unasked. */
  readonly isChoice?: boolean;
}

/** The ways to mend a finding of one rule, the best first. Whether one of them holds is for a trial to say. */
export type Mender = (analysis: Analysis, finding: Finding) => readonly Candidate[];
