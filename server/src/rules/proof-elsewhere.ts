import { handsAndBack, highVoltageExample, proveDead, takeAway } from './high-voltage-examples.ts';
import type { Rule } from './rule.ts';
import { proofElsewhereFinder } from './proof-elsewhere-check.ts';

export const proofElsewhere: Rule = {
  name: 'proof-elsewhere',
  severity: 'error',
  stage: 'order',
  immune: true,
  meaning: 'Absence of voltage is verified at a place that the high-voltage source does not reach.',
  why: 'There is never voltage at such a place, so a reading of 0 V proves nothing.',
  source: 'a guard of this program',
  finder: proofElsewhereFinder,
  examples: {
    triggers: highVoltageExample(
      'K8 does not lead the traction voltage',
      `${takeAway}- wait: 5 min${proveDead.replace('K7', 'K8')}${handsAndBack}`,
    ),
    passes: highVoltageExample('K7 does', `${takeAway}- wait: 5 min${proveDead}${handsAndBack}`),
  },
};
