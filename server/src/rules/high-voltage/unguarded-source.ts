import { highVoltageExample } from './high-voltage-examples.ts';
import type { Rule } from '../rule.ts';
import { unguardedSourceFinder } from './high-voltage-check.ts';

const readOnly = `
- ignition: on
- read-codes: control-unit
- clear-codes: control-unit
- read: interlock
`;

export const unguardedSource: Rule = {
  name: 'unguarded-source',
  severity: 'error',
  stage: 'order',
  immune: true,
  meaning:
    'The file does not say where the high-voltage source can be touched: nothing that it `feeds` is live, and no connector `carries` it.',
  why: 'No step would be checked against it, and every order of work would pass as safe.',
  source: 'a guard of this program',
  finder: unguardedSourceFinder,
  examples: {
    triggers: highVoltageExample('no connector carries it', readOnly, {
      connectors: `connectors:
  S1: { contact: 2..15 mΩ }
  K7: { contact: 2..15 mΩ }
  K8: { contact: 2..15 mΩ }
`,
    }),
    passes: highVoltageExample('K7 carries it', readOnly),
  },
};
