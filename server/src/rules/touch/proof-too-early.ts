import {
  handsAndBack,
  highVoltageExample,
  proveDead,
  takeAway,
} from '../high-voltage/high-voltage-examples.ts';
import type { Rule } from '../rule.ts';
import { unsafeTouch } from './unsafe-touch.ts';

export const proofTooEarly: Rule = {
  name: 'proof-too-early',
  severity: 'error',
  stage: 'order',
  immune: true,
  meaning:
    'Absence of voltage is verified while the high-voltage source is on, or before its waiting time is over.',
  why: 'A circuit that is connected or charged has voltage. A low reading then means a wrong test point or a defective meter, not a circuit without voltage.',
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
