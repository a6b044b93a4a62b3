import { handsAndBack, highVoltageExample, proveDead, takeAway } from './high-voltage-examples.ts';
import type { Rule } from './rule.ts';
import { unsafeTouch } from './unsafe-touch.ts';

export const proofTooEarly: Rule = {
  name: 'proof-too-early',
  severity: 'error',
  stage: 'order',
  immune: true,
  meaning: 'A high-voltage source is proven dead while it is on, or while its wait is still owed.',
  why: 'What is still connected or still charged can only be found live; a low reading then means a wrong place or a meter that does not work.',
  source: 'common practice; order of de-energizing as in NFPA 70E-2018, 120.5',
  finder: unsafeTouch,
  examples: {
    triggers: highVoltageExample(
      'the proof stands before the wait',
      `${takeAway}${proveDead}- wait: 5 min${handsAndBack}`,
    ),
    passes: highVoltageExample(
      'the proof stands after it',
      `${takeAway}- wait: 5 min${proveDead}${handsAndBack}`,
    ),
  },
};
