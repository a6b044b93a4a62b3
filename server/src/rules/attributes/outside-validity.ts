import { example, readOnly } from '../examples.ts';
import type { Rule } from '../rule.ts';
import { outsideValidityFinder } from './sensor-check.ts';

const withSensor = (temperature: string): { readonly parts: string } => ({
  parts: `parts:
  coil-coupling: { kind: rotary-coupling, resistance: 0.05..0.15 Ω }
  stage-1: { kind: initiator, resistance: 1.7..2.3 Ω, no-fire: 400 mA, live: true }
  exhaust-sensor: { kind: rtd, r0: 200 Ω, class: A, temperature: ${temperature} }
`,
});

export const outsideValidity: Rule = {
  name: 'outside-validity',
  severity: 'error',
  stage: 'windows',
  meaning: 'A temperature sensor at a temperature for which its class or its curve does not hold.',
  why: 'Its tolerance there is not known, and a window made from it would only look exact.',
  source: 'IEC 60751 for platinum; for thermistors a guard of this program',
  finder: outsideValidityFinder,
  examples: {
    triggers: example('class A ends at 450 °C', readOnly, withSensor('400..500 °C')),
    passes: example('a range that class A covers', readOnly, withSensor('20..450 °C')),
  },
};
