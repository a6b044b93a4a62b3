import { inertStageFinder } from './assumed-check.ts';
import { example } from '../examples.ts';
import type { Rule } from '../rule.ts';

const readOnly = `
- ignition: on
- read-codes: control-unit
- clear-codes: control-unit
- read: driver-loop
`;

export const inertStage: Rule = {
  name: 'inert-stage',
  severity: 'warning',
  stage: 'order',
  meaning: 'A stage that is stated not to be live.',
  why: 'Nothing about hands is checked for it. Only the inert part of a trainer may be written so.',
  source: 'a guard of this program',
  finder: inertStageFinder,
  examples: {
    triggers: example('the stage of a trainer', readOnly, {
      parts: `parts:
  coil-coupling: { kind: rotary-coupling, resistance: 0.05..0.15 Ω }
  stage-1: { kind: initiator, resistance: 1.7..2.3 Ω, live: false }
`,
    }),
    passes: example('a live stage', readOnly),
  },
};
