import type { Id } from './procedure.ts';
import type { Path, StepRef, Where } from './where.ts';

export type Severity = 'error' | 'warning' | 'information';

/** The part of the analysis that a finding comes from, in the order in which they run. */
export type Stage = 'text' | 'windows' | 'order' | 'diagnosis';

/** What an instrument can show, held against the accepted window. */
export type ReadingClass = 'leak' | 'open' | 'below' | 'within' | 'above';

export type OutcomeName =
  | ReadingClass
  | 'outside'
  | 'else'
  | 'none'
  | 'stored'
  | 'present'
  | 'ok'
  | 'defect'
  | 'dead'
  | 'live'
  | 'window';

/** How a path leaves a step. */
export type Taken =
  | { readonly kind: 'next' | 'go' | 'run' | 'return' | 'end' }
  | {
      readonly kind: 'outcome';
      readonly outcome: OutcomeName;
      /** The name of the window, where the outcome is `window`. */
      readonly window?: string;
      readonly of?: string;
    };

export interface Hop {
  readonly step: StepRef;
  /** Of the step, in `steps` of the procedure. */
  readonly index: number;
  /** null for the last step of a path that is told because of the step itself, not of the way out of it. */
  readonly taken: Taken | null;
}

/** A path through the procedure, shortest by number of steps. Its last hop is the step that the finding is about. */
export interface Trace {
  readonly hops: readonly Hop[];
  /** How many hops there are, where that is known without making them. */
  readonly length?: number;
  /** For cycles: index of the hop that the path returns to. */
  readonly repeatsFrom?: number;
  /** The sources of which a wait is owed at its end. */
  readonly owes?: readonly Id[];
}

export interface Related {
  readonly at: Where;
  readonly message: string;
}

export interface Finding {
  readonly rule: string;
  readonly severity: Severity;
  readonly stage: Stage;
  /** One sentence or two, plain text. */
  readonly message: string;
  readonly at: Where;
  readonly step?: StepRef;
  readonly subject?: string;
  /** The word that was probably meant where it is found. */
  readonly suggestion?: string;
  readonly related: readonly Related[];
  readonly trace?: Trace;
  /** No waiver holds against it, whatever its rule says. */
  readonly immune?: true;
  /** The author takes it upon himself, and says why. It stays on report and card and counts no longer. */
  readonly waived?: { readonly reason: string; readonly at: Where };
  /** What findings of one rule can have in common: the sources that are not safe, or the step at which paths end. */
  readonly cause?: string;
  /** The key of the finding that this one comes with: mended together, and shown there. */
  readonly because?: string;
  /** The keys of those that come with this one. */
  readonly consequences?: readonly string[];
  /** Rule, step id or content, subject: survives when lines move. */
  readonly key: string;
}

/** What was thrown where nothing should throw. */
export interface Thrown {
  readonly error: unknown;
}

/** What a stage found, with the problems beside it. `complete` is false where a bound was met; a finding says which. */
export interface Checked<T> {
  readonly value: T;
  readonly findings: readonly Finding[];
  readonly complete: boolean;
}

export type { Path };

/** Whether it stands in the way: an error that no waiver takes, and that comes with no other. */
export function isStandingError(finding: Pick<Finding, 'severity' | 'waived' | 'because'>): boolean {
  return finding.severity === 'error' && finding.waived === undefined && isShown(finding);
}

/** Whether it is shown as a finding of its own, and counted. */
export function isShown({ because }: Pick<Finding, 'because'>): boolean {
  return because === undefined;
}
