import type { KindSection } from './definitions.ts';

/*
 * Words that later versions of the format give a meaning. A file that uses one is told so, instead of being told that
 * the word is unknown.
 */

export const laterKeys: ReadonlySet<string> = new Set([
  'uses',
  'assemblies',
  'network',
  'routines',
  'waivers',
  'faults',
]);

export const laterVerbs: ReadonlySet<string> = new Set(['prove-dead', 'measure', 'run']);

/** Keys of a step beside its verb. `between` belongs to `fit`, `with` and `across` to later verbs. */
export const laterStepKeys: ReadonlySet<string> = new Set([
  'figure',
  'windows',
  'between',
  'given',
  'with',
  'across',
]);

export const laterEntryKeys: Readonly<
  Record<'loads' | 'parts' | 'connectors' | 'loops', ReadonlySet<string>>
> = {
  loads: new Set([]),
  parts: new Set(['faults']),
  connectors: new Set(['sides', 'carries']),
  loops: new Set([]),
};

export const laterKinds: Readonly<Record<KindSection, ReadonlySet<string>>> = {
  sources: new Set(['regulated', 'high-voltage']),
  instruments: new Set(['multimeter']),
  loads: new Set([]),
  parts: new Set(['hv-section']),
};
