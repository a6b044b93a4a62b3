import { example } from './examples.ts';
import { meterTooCoarseFinder } from './meter-too-coarse-check.ts';
import type { Rule } from './rule.ts';

const readOnly = `
- ignition: on
- read-codes: control-unit
- clear-codes: control-unit
- read: driver-loop
`;

function withAccuracy(accuracy: string): { readonly instruments: string } {
  return {
    instruments: `instruments:
  control-unit: { kind: monitor, range: 0..10 Ω, accuracy: ${accuracy}, resolution: 0.01 Ω, test-current: 10 mA }
`,
  };
}

export const meterTooCoarse: Rule = {
  name: 'meter-too-coarse',
  severity: 'information',
  stage: 'windows',
  meaning: 'No reading with this instrument proves the circuit good.',
  why: 'A reading within its window then says only that the circuit may be sound. That may be enough, but should be known.',
  source: 'JCGM 106, guarded acceptance, with the whole error limit as guard band',
  finder: meterTooCoarseFinder,
  examples: {
    triggers: example('an error as wide as the tolerances', readOnly, withAccuracy('3 % + 0.5 Ω')),
    passes: example('an error that leaves room within them', readOnly, withAccuracy('3 % + 0.1 Ω')),
  },
};
