import { handsAndBack, highVoltageExample, proveDead, takeAway } from './high-voltage-examples.ts';
import type { Rule } from './rule.ts';
import { unsafeTouch } from './unsafe-touch.ts';

export const notProvenDead: Rule = {
  name: 'not-proven-dead',
  severity: 'error',
  stage: 'order',
  immune: true,
  meaning:
    'Hands on a high-voltage source that is off, after the wait, but without the proof that its voltage is gone.',
  why: 'A contactor that sticks, or a capacitor that does not discharge, shows only when it is measured.',
  source: 'common practice; order of de-energizing as in NFPA 70E-2018, 120.5',
  finder: unsafeTouch,
  examples: {
    triggers: highVoltageExample('nobody measured', `${takeAway}- wait: 5 min${handsAndBack}`),
    passes: highVoltageExample(
      'it is proven dead after the wait',
      `${takeAway}- wait: 5 min${proveDead}${handsAndBack}`,
    ),
  },
};
