import { zeroWaitFinder } from './assumed-check.ts';
import { example, readOnly } from './examples.ts';
import type { Rule } from './rule.ts';

export const zeroWait: Rule = {
  name: 'zero-wait',
  severity: 'information',
  stage: 'order',
  meaning: 'A source of a live circuit with a stated wait of nothing.',
  why: 'Systems without any reserve are rare: a zero is more often a value that nobody looked up.',
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
