import { circuit } from '../../../server/src/rules/examples.ts';
import { draftText, giveBack, makeSafe } from './circuits.ts';
import type { Changes } from './circuits.ts';
import type { Draft } from './drafts.ts';

/* Drafts broken where somebody measures by hand. Kinds of mistakes: common practice, no source. */

const withMeter: Changes = {
  instruments: `${circuit.instruments}  hand-meter:
    kind: multimeter
    zeroed: true
    resistance: { range: 0..40 Ω, accuracy: 0.5 % + 2 digits, resolution: 0.01 Ω, test-current: 1 mA }
`,
};

/** A pump behind a connector, fed by the battery itself. */
const pump = (steps: string): string => `format: 1
title: A pump that does not run
sources: { battery: { kind: battery, voltage: 12..14.5 V, resistance: 5..20 mΩ, feeds: [pump] } }
${withMeter.instruments?.replace(/ {2}control-unit: .*\n/, '') ?? ''}parts:
  feed-wire: { kind: cable, wire: 1.5 mm², length: 3 m }
  pump: { kind: heater, resistance: 2.0..2.6 Ω, hot: same }
connectors: { K4: { contact: 2..15 mΩ, sides: [loom, body] } }
network:
  - { source: battery, between: [plus, ground] }
  - { part: feed-wire, between: [plus, feed] }
  - { connector: K4, pin: 1, between: [feed, pump-feed] }
  - { part: pump, between: [pump-feed, ground] }
steps:
${steps}`;

const across = (where: string, more = ''): string =>
  `  - measure: resistance\n    across: ${where}\n    with: hand-meter\n${more}`;

export const measuring: readonly Draft[] = [
  {
    story: 'the stage is checked with an ohmmeter',
    text: draftText(`${makeSafe}  - unplug: K30\n${across('K30.end')}  - plug: K30\n${giveBack}`, withMeter),
    must: ['error 7 bar-in-the-way K30', 'error 7 meter-across-live stage-1'],
  },
  {
    story: 'the ohmmeter is held to the stage with the battery on',
    text: draftText(
      `  - ignition: on\n  - read-codes: control-unit\n  - ignition: off\n${across('K30.end')}  - ignition: on
  - clear-codes: control-unit
  - read: driver-loop
    outcomes: { within: sound, else: faulty }
  - stop: Sound.
    id: sound
  - stop: Not sound.
    id: faulty
`,
      withMeter,
    ),
    // The wires lead through the connectors to the unit too, but the stage is what counts.
    must: [
      'error 4 live-touch K30',
      'error 4 meter-across-live stage-1',
      'error 4 monitor-in-the-way control-unit',
      'error 4 powered-measurement K30.end',
      'warning 4 missing-notice -',
    ],
  },
  {
    story: 'the harness is measured with the control unit still on it',
    text: draftText(
      `${makeSafe}  - unplug: K30\n${across('K30.monitor')}  - plug: K30\n${giveBack}`,
      withMeter,
    ),
    must: ['error 7 monitor-in-the-way control-unit'],
  },
  {
    story: 'a resistance is measured with the battery connected',
    text: pump(across('[feed, ground]')),
    must: ['error 1 powered-measurement feed..ground'],
  },
  {
    story: 'the connector parts the battery from it, so that may stay on',
    text: pump(`  - unplug: K4\n${across('[pump-feed, ground]')}  - plug: K4\n`),
    must: [],
  },
  {
    story: 'the window also takes a wire that is open for good',
    text: pump(
      `  - disconnect: battery\n${across('[feed, ground]', '    expect: above 1 Ω\n')}  - reconnect: battery\n`,
    ),
    must: ['warning 2 expect-admits-fault feed..ground'],
  },
  {
    story: 'a node is written in two ways',
    text: pump(`  - disconnect: battery\n${across('[plus, ground]')}  - reconnect: battery\n`).replace(
      'between: [feed, pump-feed]',
      'between: [fed, pump-feed]',
    ),
    must: [
      'error 2 window-undefined plus..ground',
      'warning - dangling-node fed',
      'warning - dangling-node feed',
    ],
  },
  {
    story: 'the new pump is never measured again',
    text: pump(
      `  - disconnect: battery\n  - replace: pump\n  - reconnect: battery\n${across('[feed, ground]').replace('resistance', 'voltage').replace('hand-meter', 'hand-meter\n    outcomes: { within: next, else: faulty }')}  - stop: The pump has its voltage.\n  - stop: The pump has no voltage.\n    id: faulty\n`,
    ).replace(
      'resistance: { range: 0..40',
      'voltage: { range: 0..40 V, accuracy: 0.5 % + 2 digits, resolution: 0.01 V, input: 10 MΩ }\n    resistance: { range: 0..40',
    ),
    must: ['warning 5 repair-not-verified pump', 'warning 6 repair-not-verified pump'],
  },
];
