import { circuit, example, withHandMeter } from '../examples.ts';
import type { Rule } from '../rule.ts';
import { underPower } from './under-power-watch.ts';

const pump = {
  ...withHandMeter,
  sources: `sources:
  battery: { kind: battery, voltage: 12.6 V, feeds: [control-unit], wait: 3 min }
  lighting: { kind: battery, voltage: 12.6 V, feeds: [lamp], wait: 1 min }
`,
  parts: `${circuit.parts}  lamp-wire: { kind: cable, resistance: 20..30 mΩ }
  lamp: { kind: resistor, resistance: 2..3 Ω }
`,
  network: `network:
  - { part: lamp-wire, between: [feed, lamp-feed] }
  - { part: lamp, between: [lamp-feed, ground] }
`,
};

const measured = `- measure: resistance
  across: [feed, ground]
  with: hand-meter
`;

export const poweredMeasurement: Rule = {
  name: 'powered-measurement',
  severity: 'error',
  stage: 'order',
  immune: true,
  meaning: 'Resistance is measured where a source is on, or where what it powered can still be charged.',
  why: 'An ohmmeter sends its own current. A voltage from elsewhere makes its reading wrong without a sign, and can damage it. A capacitor holds such a voltage after the source is off.',
  source: 'common practice, no source',
  finder: underPower,
  examples: {
    triggers: example(
      'the source is off, but its wait is not over',
      `
- ignition: on
- read-codes: control-unit
- clear-codes: control-unit
- ignition: off
- disconnect: lighting
- wait: 30 s
${measured}- reconnect: lighting
`,
      pump,
    ),
    passes: example(
      'the wait is over',
      `
- ignition: on
- read-codes: control-unit
- clear-codes: control-unit
- ignition: off
- disconnect: lighting
- wait: 1 min
${measured}- reconnect: lighting
`,
      pump,
    ),
  },
};
