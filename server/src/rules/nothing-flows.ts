import { circuit, example, readOnly } from './examples.ts';
import { nothingFlowsFinder } from './nothing-flows-check.ts';
import type { Rule } from './rule.ts';

/** A lamp on a wire of its own, fed behind the plug K50. */
const lamp = {
  sources: `sources:
  battery: { kind: battery, voltage: 12.6 V, feeds: [control-unit], wait: 3 min }
  lighting: { kind: battery, voltage: 12..12.8 V, feeds: [lamp] }
`,
  instruments: `${circuit.instruments}  hand-meter: { kind: multimeter, voltage: { range: 0..40 V, accuracy: 0.5 % + 2 digits, resolution: 0.001 V, input: 10 MΩ } }
`,
  parts: `${circuit.parts}  lamp-wire: { kind: cable, resistance: 20..30 mΩ }
  lamp: { kind: resistor, resistance: 4..5 Ω }
`,
  connectors: `${circuit.connectors}  K50: { contact: 2..15 mΩ }
`,
  network: `network:
  - { source: lighting, between: [plus, ground] }
  - { part: lamp-wire, between: [plus, lamp-feed] }
  - { connector: K50, pin: 1, between: [lamp-feed, lamp-plus] }
  - { part: lamp, between: [lamp-plus, ground] }
`,
};

const measured = `- measure: voltage
  across: [plus, lamp-feed]
  with: hand-meter
`;

export const nothingFlows: Rule = {
  name: 'nothing-flows',
  severity: 'warning',
  stage: 'windows',
  meaning: 'A drop of voltage or a current is measured where no current flows on a sound circuit.',
  why: 'A bad contact shows its drop only while current flows through it. Without current every contact looks good, and a current of zero says nothing.',
  source: 'common practice, no source',
  finder: nothingFlowsFinder,
  examples: {
    triggers: example(
      'the lamp is unplugged',
      `${readOnly}- ignition: off
- unplug: K50
${measured}- plug: K50
`,
      lamp,
    ),
    passes: example('the lamp is on', `${readOnly}${measured}`, lamp),
  },
};
