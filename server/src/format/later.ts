import type { KindSection } from './words.ts';

/*
 * Words that later versions of the format give a meaning. A file that uses one is told so, instead of being told that
 * the word is unknown.
 */

export const laterKeys: ReadonlySet<string> = new Set(['network', 'faults']);

export const laterVerbs: ReadonlySet<string> = new Set(['measure']);

/** Keys of a step beside its verb. `between` belongs to `fit`, `across` to a later verb. */
export const laterStepKeys: ReadonlySet<string> = new Set(['figure', 'windows', 'between', 'across']);

export const laterEntryKeys: Readonly<
  Record<'loads' | 'parts' | 'connectors' | 'loops', ReadonlySet<string>>
> = {
  loads: new Set([]),
  parts: new Set(['faults']),
  connectors: new Set(['sides']),
  loops: new Set([]),
};

export const laterKinds: Readonly<Record<KindSection, ReadonlySet<string>>> = {
  sources: new Set(['regulated']),
  instruments: new Set([]),
  loads: new Set([]),
  parts: new Set([]),
};
