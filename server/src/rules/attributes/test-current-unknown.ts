import { circuit, example, readOnly } from '../examples.ts';
import type { Rule } from '../rule.ts';
import { testCurrentUnknownFinder } from './test-current-check.ts';

export const testCurrentUnknown: Rule = {
  name: 'test-current-unknown',
  severity: 'warning',
  stage: 'order',
  meaning:
    'An instrument reads a live stage, and its test current or the no-fire current of the stage is not stated.',
  why: 'Without both nobody can compare what flows with what the stage surely bears.',
  source: '14 CFR 417 Appendix D, monitoring circuits: a range-safety rule, not one of vehicles',
  finder: testCurrentUnknownFinder,
  examples: {
    triggers: example('the unit does not say what it sends', readOnly, {
      instruments: circuit.instruments.replace(', test-current: 10 mA', ''),
    }),
    passes: example('both are stated', readOnly),
  },
};
