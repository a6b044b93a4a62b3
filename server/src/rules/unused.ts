import { circuit, example, readOnly } from './examples.ts';
import type { Rule } from './rule.ts';
import { unusedFinder } from './unused-check.ts';

export const unused: Rule = {
  name: 'unused',
  severity: 'warning',
  stage: 'order',
  meaning:
    'A connector or a source of the file that nothing uses, or a routine of the file that no step calls.',
  why: 'It may be missing from the loop that it stands in, or feed what the file does not say: then the windows and the order hold for another circuit. The steps of a routine that nobody calls are on no path and on no card. What a parts file defines may go unused.',
  source: 'a guard of this program',
  finder: unusedFinder,
  examples: {
    triggers: example('K20 stands in no loop, and no step names it', readOnly, {
      connectors: `${circuit.connectors}  K20: { contact: 2..15 mΩ }\n`,
    }),
    passes: example('K20 stands in the driver loop', readOnly, {
      connectors: `${circuit.connectors}  K20: { contact: 2..15 mΩ }\n`,
      loops: `loops:
  driver-loop: { path: [control-unit, K10, coil-coupling, K20, K30, stage-1] }
`,
    }),
  },
};
