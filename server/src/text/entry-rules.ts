import type { Path } from '../model/where.ts';

/** How an entry is spoken of, and what else may stand in it. */
export interface EntryRules {
  /** How people call the entry in a sentence: `the part `K30``. */
  readonly named: string;
  /** Keys that a later version will read. */
  readonly later?: ReadonlySet<string>;
  /** Other words that an unknown key may have been meant as. */
  readonly alsoKnown?: readonly string[];
  /** Where a missing key is reported, if not at the key of the entry. */
  readonly missingAt?: Path;
  /** What is checked entry by entry elsewhere. */
  readonly isOpen?: (path: Path) => boolean;
}
