import { circuit } from '../../../server/src/rules/examples.ts';
import { draftText, giveBack, highVoltage, makeSafe, powerOff, readCodes, showSound } from './circuits.ts';
import type { Changes } from './circuits.ts';
import type { Draft } from './drafts.ts';

/* Drafts in which a harness is moved to find a fault that comes and goes. Kinds of mistakes: common practice, no source. */

const wiggle = (what: string, more = ''): string =>
  `  - wiggle: ${what}\n    watch: driver-loop\n    for: 1 min\n    warning: Stay clear of the stage.\n${more}`;

const byHand = (what: string, across: string): string =>
  `  - wiggle: ${what}\n    quantity: resistance\n    across: ${across}\n    with: hand-meter\n    for: 1 min\n`;

/** Eight steps: the stage is unplugged, a lamp is in its place, power is back. */
const lampIn = `${makeSafe}  - unplug: K30
  - fit: bench-lamp
    at: K30.monitor
  - reconnect: battery
    warning: Nobody in front of the airbag while power comes back.
  - ignition: on
`;

/** Nothing has been opened. */
const readSound = showSound.replace('    leaves: [repair]\n', '');

const putBack = `${powerOff}  - remove: bench-lamp
  - plug: K30
${giveBack}`;

const withMeter: Changes = {
  instruments: `${circuit.instruments}  hand-meter:
    kind: multimeter
    zeroed: true
    resistance: { range: 0..40 Ω, accuracy: 0.5 % + 2 digits, resolution: 0.01 Ω, test-current: 1 mA }
`,
};

/** The connector and a wire of the loop lead another stage too. */
const twoStages: Changes = {
  instruments: `${circuit.instruments}  other-unit: { kind: monitor, range: 0..10 Ω, accuracy: 3 % + 0.1 Ω, resolution: 0.01 Ω, test-current: 10 mA }\n`,
  sources: circuit.sources.replace('[control-unit]', '[control-unit, other-unit]'),
  parts: `${circuit.parts}  stage-2: { kind: initiator, resistance: 1.7..2.3 Ω, no-fire: 400 mA, live: true }\n`,
  loops: `loops:
  driver-loop: { path: [control-unit, K10, coil-coupling, K30, stage-1], pins: { K10: [1, 2] } }
  other-loop: { path: [other-unit, K10, stage-2], pins: { K10: [3, 4] } }
`,
};

/** A pump on a supply of its own. */
const pumpOn = (volts: string, steps: string): string => `format: 1
title: A pump that stops now and then
sources: { link: { kind: battery, voltage: ${volts}, resistance: 5..20 mΩ, feeds: [pump], wait: 1 min } }
instruments:
  hand-meter:
    kind: multimeter
    zeroed: true
    voltage: { range: 0..60 V, accuracy: 0.5 % + 2 digits, resolution: 0.01 V, input: 10 MΩ }
    resistance: { range: 0..400 Ω, accuracy: 0.5 % + 2 digits, resolution: 0.01 Ω, test-current: 1 mA }
parts:
  feed-wire: { kind: cable, wire: 1.5 mm², length: 3 m }
  pump: { kind: heater, resistance: 20..26 Ω, hot: same }
connectors: { K4: { contact: 2..15 mΩ, sides: [loom, body] } }
network:
  - { source: link, between: [plus, ground] }
  - { part: feed-wire, between: [plus, feed] }
  - { connector: K4, pin: 1, between: [feed, pump-feed] }
  - { part: pump, between: [pump-feed, ground] }
steps:
${steps}`;

const drop = (what: string): string => `  - wiggle: ${what}
    quantity: voltage
    across: [pump-feed, ground]
    with: hand-meter
    for: 1 min
`;

const ohms = (what: string): string =>
  `  - wiggle: ${what}\n    quantity: resistance\n    across: [pump-feed, ground]\n    with: hand-meter\n    for: 1 min\n`;

export const moving: readonly Draft[] = [
  {
    story: 'the stage is unplugged, and the harness is moved with the ignition on: nothing is wrong',
    text: draftText(`${lampIn}${wiggle('[coil-coupling, K10, K30.monitor]')}${putBack}`),
    must: [],
  },
  {
    story: 'the same with the stage plugged in',
    text: draftText(`${readCodes}${wiggle('[coil-coupling, K10, K30.monitor]')}${readSound}`),
    must: [
      'error 3 moved-with-stage K10',
      'error 3 moved-with-stage K30',
      'error 3 moved-with-stage coil-coupling',
    ],
  },
  {
    story: 'K30 is only unlocked',
    text: draftText(`${makeSafe}  - unlock: K30
  - reconnect: battery
    warning: Nobody in front of the airbag while power comes back.
  - ignition: on
${wiggle('coil-coupling')}${powerOff}  - plug: K30
${giveBack}`),
    must: ['error 9 moved-with-stage coil-coupling'],
  },
  {
    story: 'the half that hangs on the stage is moved',
    text: draftText(`${lampIn}${wiggle('K30.end')}${putBack}`),
    must: ['error 10 moved-with-stage K30', 'warning 10 moved-unseen driver-loop'],
  },
  {
    story: 'both halves are moved, whichever hangs on the stage',
    text: draftText(`${lampIn}${wiggle('K30')}${putBack}`),
    must: ['error 10 impossible K30'],
  },
  {
    story: 'the stage of another loop hangs on the same connector',
    text: draftText(
      `${lampIn.replace('control-unit\n', 'control-unit\n  - read-codes: other-unit\n')}${wiggle('K10')}${putBack.replace('  - clear-codes', '  - clear-codes: other-unit\n  - clear-codes')}`,
      twoStages,
    ),
    must: ['error 11 moved-with-stage K10'],
  },
  {
    story: 'the loop is watched with the ignition off',
    text: draftText(
      `${makeSafe}  - unplug: K30\n  - fit: bench-lamp\n    at: K30.monitor\n${wiggle('coil-coupling')}  - remove: bench-lamp\n  - plug: K30\n${giveBack}`,
    ),
    must: ['error 8 impossible control-unit'],
  },
  {
    story: 'that nothing showed while the harness was moved passes as the proof that the loop is sound',
    text: draftText(
      `${makeSafe}  - unplug: K30\n  - plug: K30\n  - reconnect: battery\n  - ignition: on\n  - clear-codes: control-unit\n${wiggle('coil-coupling', '    outcomes: { within: sound, else: faulty }\n')}  - stop: The loop is sound.\n    id: sound\n  - stop: The loop is not sound. Ask the workshop lead.\n    id: faulty\n    leaves: [repair]\n`,
    ),
    must: ['error 11 moved-with-stage coil-coupling', 'warning 12 loop-not-verified driver-loop'],
  },
  {
    story: 'the harness is measured by hand while it is moved, with the stage on the probes',
    text: draftText(
      `${makeSafe}  - unplug: K30\n${byHand('coil-coupling', 'K30.end')}  - plug: K30\n${giveBack}`,
      withMeter,
    ),
    must: [
      'error 7 bar-in-the-way K30',
      'error 7 meter-across-live stage-1',
      'warning 7 moved-unseen K30.end',
    ],
  },
  {
    story: 'the error is waived, since it was always done so',
    text: draftText(`${readCodes}${wiggle('coil-coupling', '    id: shake\n')}${readSound}`, {
      waivers: 'waivers:\n  - { rule: moved-with-stage, step: shake, reason: It was always done so. }\n',
    }),
    must: ['error 3 moved-with-stage coil-coupling', 'error - waiver-refused moved-with-stage'],
  },
  {
    story: 'a wire of 12 V is moved with the battery connected: nothing is wrong',
    text: pumpOn('12..14.5 V', drop('[feed-wire, K4]')),
    must: [],
  },
  {
    story: 'a wire of 48 V is moved with the battery connected',
    text: pumpOn('44..52 V', drop('[feed-wire, K4]')),
    must: ['error 1 work-under-power K4', 'error 1 work-under-power feed-wire'],
  },
  {
    story: 'a wire of 48 V is moved before its wait is over',
    text: pumpOn('44..52 V', `  - disconnect: link\n${ohms('feed-wire')}  - reconnect: link\n`),
    must: [
      'error 2 powered-measurement pump-feed..ground',
      'error 2 short-wait feed-wire',
      'warning 2 moved-unseen pump-feed..ground',
    ],
  },
  {
    story:
      'the connector beside high voltage is moved with the interlock watched, and so with the ignition on',
    text: draftText(
      `  - ignition: on
  - read-codes: vehicle-unit
${wiggle('K7').replace('driver-loop', 'interlock')}${readSound.replace('control-unit', 'vehicle-unit').replace('driver-loop', 'interlock')}`,
      highVoltage,
    ),
    must: ['error 3 live-touch K7'],
  },
];
