import { circuit } from '../../../server/src/rules/examples.ts';
import { draftText, readCodes, showSound } from './circuits.ts';
import type { Changes } from './circuits.ts';
import type { Draft } from './drafts.ts';

/* Drafts in which it takes the network to see that hands are near a stage. Kinds of mistakes: common practice, no source. */

/** A tap at a terminal of the stage's connector, and what hangs on it behind further connectors. */
const tapped = (network: string): Changes => ({
  parts: `${circuit.parts}  tap-wire: { kind: cable, resistance: 20..30 mΩ }\n`,
  connectors: `${circuit.connectors}  K4: { contact: 2..15 mΩ, sides: [a, b] }\n  K5: { contact: 2..15 mΩ, sides: [a, b] }\n`,
  network: `network:\n${network}`,
});

const behindTwo = tapped(`  - { connector: K4, pin: 1, between: [K30.end.1, tap] }
  - { connector: K5, pin: 1, between: [K4.a.1, tip] }
  - { part: tap-wire, between: [tip, tap] }
`);

const pinToPin = tapped(`  - { connector: K4, pin: 1, between: [K30.end.1, K5.a.1] }
  - { connector: K5, pin: 1, between: [K4.b.1, far] }
  - { part: tap-wire, between: [far, K30.end.2] }
`);

const fedFromBehind: Changes = {
  ...tapped(`  - { connector: K4, pin: 1, between: [K30.end.1, feed] }
  - { part: tap-wire, between: [K4.b.1, plus] }
  - { source: cabin, between: [plus, ground] }
`),
  connectors: `${circuit.connectors}  K4: { contact: 2..15 mΩ, sides: [a, b] }\n`,
  sources: `${circuit.sources}  cabin: { kind: battery, voltage: 12.6 V, feeds: [tap-wire], wait: 1 min }\n`,
};

const read = '  - clear-codes: control-unit\n  - read: driver-loop\n';

export const hidden: readonly Draft[] = [
  {
    story: 'hands on a connector whose terminal is a terminal of another one on the stage',
    text: draftText(`${readCodes}  - unplug: K5\n  - plug: K5\n${read}`, behindTwo),
    must: ['error 3 live-touch K5'],
  },
  {
    story: 'hands on a part beyond two connectors that lead to the stage, pin to pin',
    text: draftText(`${readCodes}  - do: Look at the wire.\n    at: tap-wire\n${read}`, pinToPin),
    must: ['error 3 live-touch tap-wire'],
  },
  {
    story: 'a second battery feeds the stage through a terminal',
    text: draftText(
      `${readCodes}  - ignition: off\n  - disconnect: battery\n  - wait: 3 min\n  - unplug: K30\n  - plug: K30\n  - reconnect: battery\n  - ignition: on\n${showSound}`,
      fedFromBehind,
    ),
    must: ['error 6 live-touch K30', 'warning 5 wait-without-effect -'],
  },
  {
    story: 'what hangs on the other side of ground is another circuit',
    text: draftText(
      `${readCodes}  - do: Look at the wire.\n    at: tap-wire\n${read}`,
      tapped(`  - { connector: K4, pin: 1, between: [K30.end.1, ground] }
  - { part: tap-wire, between: [K4.b.1, tip] }
  - { connector: K5, pin: 1, between: [tip, ground] }
`),
    ),
    must: [],
  },
];
