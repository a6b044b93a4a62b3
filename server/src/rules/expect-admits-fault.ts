import { example } from './examples.ts';
import { expectAdmitsFaultFinder } from './expect-admits-fault-check.ts';
import type { Rule } from './rule.ts';

function expecting(window: string): string {
  return `
- ignition: on
- read-codes: control-unit
- clear-codes: control-unit
- read: driver-loop
  expect: ${window}
`;
}

export const expectAdmitsFault: Rule = {
  name: 'expect-admits-fault',
  severity: 'warning',
  stage: 'windows',
  meaning:
    'The stated window surely accepts a circuit with a typical fault: open, bridged, or with the least added resistance that counts.',
  why: 'A faulty circuit would be judged good and handed back. The window that is computed from the parts would not accept it.',
  source:
    'a consequence of the circuit as written; a tenth of the least load as the least added resistance, 1 Ω at least in a loop, is common practice',
  finder: expectAdmitsFaultFinder,
  examples: {
    triggers: example('a window without an upper limit accepts an open loop', expecting('above 1.5 Ω')),
    passes: example('a window that holds little more than the sound loop', expecting('1.6..2.9 Ω')),
  },
};
