import { circuit, example } from '../examples.ts';
import type { Rule } from '../rule.ts';
import { underPower } from './under-power-watch.ts';

const starter = {
  sources: `sources:
  battery: { kind: battery, voltage: 12.6 V, feeds: [control-unit], wait: 3 min }
  link: { kind: battery, voltage: 48 V, feeds: [starter], wait: 1 min }
`,
  parts: `${circuit.parts}  link-wire: { kind: cable, resistance: 5..10 mΩ }
  starter: { kind: coil, resistance: 2..3 Ω }
`,
  connectors: `${circuit.connectors}  K60: { contact: 2..15 mΩ }
`,
  network: `network:
  - { part: link-wire, between: [link-plus, feed] }
  - { connector: K60, pin: 1, between: [feed, starter-feed] }
  - { source: link, between: [link-plus, ground] }
  - { part: starter, between: [starter-feed, ground] }
`,
};

export const workUnderPower: Rule = {
  name: 'work-under-power',
  severity: 'error',
  stage: 'order',
  meaning:
    'A connector is opened or closed, a load fitted or removed, or something replaced, in a circuit powered with more than 30 V DC. A warning: something is replaced that is powered with less.',
  why: 'Above about 30 V DC contacts that part draw an arc, which burns contacts and eyes. Where something is replaced under power a tool can short the supply.',
  source: 'common practice, no source',
  finder: underPower,
  examples: {
    triggers: example(
      'a connector of the 48 V network is opened while that is on',
      `
- unplug: K60
- plug: K60
- ignition: on
- read-codes: control-unit
- clear-codes: control-unit
`,
      starter,
    ),
    passes: example(
      'the 48 V network is off, and its wait is over',
      `
- disconnect: link
- wait: 1 min
- unplug: K60
- plug: K60
- reconnect: link
- ignition: on
- read-codes: control-unit
- clear-codes: control-unit
`,
      starter,
    ),
  },
};
