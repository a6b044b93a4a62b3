/*
 * Words that later versions of the format give a meaning. A file that uses one is told so, instead of being told that
 * the word is unknown.
 */

export const laterKeys: ReadonlySet<string> = new Set(['faults']);

/** Keys of a step beside its verb. `between` belongs to `fit`. */
export const laterStepKeys: ReadonlySet<string> = new Set(['figure', 'between']);

export const laterEntryKeys: Readonly<
  Record<'loads' | 'parts' | 'connectors' | 'loops', ReadonlySet<string>>
> = {
  loads: new Set([]),
  parts: new Set(['faults']),
  connectors: new Set([]),
  loops: new Set([]),
};
