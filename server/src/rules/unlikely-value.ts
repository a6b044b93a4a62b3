import { circuit, example, readOnly } from './examples.ts';
import type { Rule } from './rule.ts';
import { unlikelyValueFinder } from './unlikely-value-check.ts';

export const unlikelyValue: Rule = {
  name: 'unlikely-value',
  severity: 'warning',
  stage: 'order',
  meaning:
    'A value that no such system has: a wait under 10 s after a restraint battery or under 1 min after high voltage, a wait of a tenth of what the reserve needs, a safe voltage near the voltage itself, a stage outside 0.5 to 10 Ω, a test current above 100 mA, a `wiggle` under 5 s or over 1 h.',
  why: 'All that is computed rests on these values. A slip of a unit or a digit makes a wait too short or a window too wide.',
  source: 'common practice, no source',
  finder: unlikelyValueFinder,
  examples: {
    triggers: example('three seconds in place of three minutes', readOnly, {
      sources: circuit.sources.replace('3 min', '3 s'),
    }),
    passes: example('three minutes', readOnly),
  },
};
