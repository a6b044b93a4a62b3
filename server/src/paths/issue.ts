import type { Severity } from '../model/finding.ts';
import type { Related } from '../model/finding.ts';
import type { Id } from '../model/procedure.ts';
import type { Path } from '../model/where.ts';

/** Something wrong, as a rule reports it: about a step by its index, or about a place of the file. */
export interface Issue {
  readonly rule: string;
  /** Where it differs from the rule's own. */
  readonly severity?: Severity;
  /** No waiver holds against it, whatever its rule says. */
  readonly immune?: true;
  readonly message: string;
  /** What it is about: one finding stands for one rule, step and subject. */
  readonly subject?: string;
  /** What is underlined in the step, from its keys on; its verb where absent. */
  readonly underline?: Path;
  /** A place of its own, for what is not about a step. */
  readonly place?: { readonly path: Path; readonly part: 'key' | 'value' };
  readonly related?: readonly Related[];
  /** What findings of one rule can have in common: the sources that are not safe, or the step at which paths end. */
  readonly cause?: string;
  /** The sources of which a wait is owed here: a path tells where an earlier wait was undone. */
  readonly owes?: readonly Id[];
}
