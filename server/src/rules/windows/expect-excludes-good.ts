import { example } from '../examples.ts';
import { expectExcludesGoodFinder } from './window-check.ts';
import type { Rule } from '../rule.ts';

export const expectExcludesGood: Rule = {
  name: 'expect-excludes-good',
  severity: 'warning',
  stage: 'windows',
  meaning: 'The stated window leaves out readings that a sound circuit can show.',
  why: 'A good part would be judged faulty and replaced.',
  source: 'a consequence of the circuit as written',
  finder: expectExcludesGoodFinder,
  examples: {
    triggers: example(
      'the window is narrower than the tolerances',
      `
- ignition: on
- read-codes: control-unit
- clear-codes: control-unit
- read: driver-loop
  expect: 1.9..2.1 Ω
`,
    ),
    passes: example(
      'the window holds all that a sound loop can show',
      `
- ignition: on
- read-codes: control-unit
- clear-codes: control-unit
- read: driver-loop
  expect: 1.6..2.9 Ω
`,
    ),
  },
};
