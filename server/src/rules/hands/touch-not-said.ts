import { example } from '../examples.ts';
import { handsFinder } from './hands-watch.ts';
import type { Rule } from '../rule.ts';

const looking = (keys: string): string => `
- ignition: on
- inspect: Does the warning lamp come on and go out again?
${keys}- read-codes: control-unit
- clear-codes: control-unit
- read: driver-loop
`;

export const touchNotSaid: Rule = {
  name: 'touch-not-said',
  severity: 'error',
  stage: 'order',
  immune: true,
  meaning:
    'A `do` or `inspect` says neither what hands touch nor `at: nothing`, and on some path something can still fire, is charged or is not verified to be without voltage.',
  why: 'Only what a step says can be checked. `at` names what is touched, or says `nothing`; what is only looked at stands in `of`.',
  source: 'common practice, no source',
  finder: handsFinder,
  examples: {
    triggers: example('nobody knows where hands are while the ignition is on', looking('')),
    passes: example('hands touch nothing', looking('  at: nothing\n')),
  },
};
