import { handsAndBack, highVoltageExample, proveDead, takeAway } from './high-voltage-examples.ts';
import type { Rule } from '../rule.ts';
import { unfitMeterFinder } from './high-voltage-check.ts';

export const unfitMeter: Rule = {
  name: 'unfit-meter',
  severity: 'error',
  stage: 'order',
  immune: true,
  meaning:
    'The meter that verifies absence of voltage does not suit: its range is too small, its error is too large to show that the voltage is gone, or it does not surely show the known source; or a sound circuit carries more current than the instrument.',
  why: 'A meter beyond its range can be destroyed and then shows nothing. A meter with too large an error can show a dangerous voltage as zero, and cannot be told from a broken one on the known source.',
  source: 'common practice: instruments rated for the circuit',
  finder: unfitMeterFinder,
  examples: {
    triggers: highVoltageExample('a meter for 200 V', `${takeAway}- wait: 5 min${proveDead}${handsAndBack}`, {
      instruments: `instruments:
  control-unit: { kind: monitor, range: 0..400 Ω, accuracy: 2 % + 1 Ω, resolution: 1 Ω }
  hand-meter: { kind: multimeter, voltage: { range: 0..200 V, accuracy: 0.5 % + 2 digits, resolution: 0.1 V, input: 10 MΩ } }
`,
    }),
    passes: highVoltageExample('a meter for 600 V', `${takeAway}- wait: 5 min${proveDead}${handsAndBack}`),
  },
};
