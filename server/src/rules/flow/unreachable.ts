import { example } from '../examples.ts';
import { unreachableFinder } from './flow-check.ts';
import type { Rule } from '../rule.ts';

export const unreachable: Rule = {
  name: 'unreachable',
  severity: 'warning',
  stage: 'order',
  meaning: 'A step that no path leads to.',
  why: 'Something before it leads past it: a step that was meant to be done is not.',
  source: 'common practice',
  finder: unreachableFinder,
  examples: {
    triggers: example(
      'nothing leads behind the stop',
      `
- ignition: on
- read-codes: control-unit
- clear-codes: control-unit
- read: driver-loop
- stop: Loop read.
- conclude: stage-1
`,
    ),
    passes: example(
      'the conclusion stands before the stop',
      `
- ignition: on
- read-codes: control-unit
- clear-codes: control-unit
- read: driver-loop
- conclude: stage-1
- stop: Loop read.
`,
    ),
  },
};
