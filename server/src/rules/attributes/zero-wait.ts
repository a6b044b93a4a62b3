import { zeroWaitFinder } from './assumed-check.ts';
import { example, readOnly } from '../examples.ts';
import type { Rule } from '../rule.ts';

export const zeroWait: Rule = {
  name: 'zero-wait',
  severity: 'information',
  stage: 'order',
  meaning: 'A source of a live circuit, or of more than 30 V, for which no wait is asked.',
  why: 'Systems without any reserve are rare: a wait of 0 s, or a reserve that is never above the safe voltage, is more often a value that nobody looked up.',
  source: 'a guard of this program',
  finder: zeroWaitFinder,
  examples: {
    triggers: example('no wait at all', readOnly, {
      sources: `sources:
  battery: { kind: battery, voltage: 12.6 V, feeds: [control-unit], wait: 0 s }
`,
    }),
    passes: example('the wait of the maker', readOnly),
  },
};
