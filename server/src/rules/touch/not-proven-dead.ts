import {
  handsAndBack,
  highVoltageExample,
  proveDead,
  takeAway,
} from '../high-voltage/high-voltage-examples.ts';
import type { Rule } from '../rule.ts';
import { unsafeTouch } from './unsafe-touch.ts';

export const notProvenDead: Rule = {
  name: 'not-proven-dead',
  severity: 'error',
  stage: 'order',
  immune: true,
  meaning:
    'A step makes someone touch a high-voltage circuit that is isolated, after the wait, but before it is verified to be without voltage.',
  why: 'Only a measurement shows a contactor that is welded, or a capacitor that did not discharge.',
  source: 'common practice; order of de-energizing as in NFPA 70E-2018, 120.5',
  finder: unsafeTouch,
  examples: {
    triggers: highVoltageExample('nobody measured', `${takeAway}- wait: 5 min${handsAndBack}`),
    passes: highVoltageExample(
      'its circuit is verified after the wait',
      `${takeAway}- wait: 5 min${proveDead}${handsAndBack}`,
    ),
  },
};
