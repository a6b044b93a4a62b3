import { draftText, highVoltage, showSound } from './circuits.ts';
import type { Changes } from './circuits.ts';
import type { Draft } from './drafts.ts';

/* Drafts broken where high voltage is taken away, proven dead and given back. Kinds of mistakes: common practice, no source. */

const tractionOff = `  - ignition: on
  - read-codes: vehicle-unit
  - ignition: off
  - disconnect: traction
  - wait: 5 min
`;
const handsAndBack = `  - unplug: K7
  - plug: K7
  - reconnect: traction
    danger: High voltage comes back.
`;
const tractionBack = `${handsAndBack}  - ignition: on
${showSound.replace('control-unit', 'vehicle-unit').replace('driver-loop', 'interlock')}`;
const prove = `  - prove-dead: traction
    at: K7.end
    with: hand-meter
    known: battery
`;

/** The service plug leads an airbag loop too, which the battery feeds through its unit. */
const plugOfBoth: Changes = {
  sources: highVoltage.sources?.replace('[vehicle-unit]', '[vehicle-unit, control-unit], wait: 3 min') ?? '',
  instruments: `${highVoltage.instruments ?? ''}  control-unit: { kind: monitor, range: 0..10 Ω, accuracy: 3 % + 0.1 Ω, resolution: 0.01 Ω, test-current: 10 mA }\n`,
  parts: `${highVoltage.parts ?? ''}  stage-1: { kind: initiator, resistance: 1.7..2.3 Ω, no-fire: 400 mA, live: true }\n`,
  loops: `${highVoltage.loops?.replace(' }', ', pins: { S1: [1, 2] } }') ?? ''}  stage-loop: { path: [control-unit, S1, stage-1], pins: { S1: [3, 4] } }\n`,
};

export const voltage: readonly Draft[] = [
  {
    story: 'high voltage is switched off and never proven dead',
    text: draftText(tractionOff + tractionBack, highVoltage),
    must: ['error 6 not-proven-dead K7'],
  },
  {
    story: 'high voltage was proven dead, then the ignition came on again',
    text: draftText(
      `${tractionOff}${prove}  - ignition: on\n  - ignition: off\n  - wait: 5 min\n${tractionBack}`,
      highVoltage,
    ),
    must: ['error 10 not-proven-dead K7'],
  },
  {
    story: 'high voltage is proven dead before the wait is over',
    text: draftText(tractionOff.replace('5 min', '1 min') + prove + tractionBack, highVoltage),
    must: ['error 6 proof-too-early traction'],
  },
  {
    story: 'high voltage is measured at the pins of the interlock',
    text: draftText(
      `${tractionOff}${prove.replace('K7.end', '[K7.end.1, K7.end.2]')}${tractionBack}`,
      highVoltage,
    ),
    must: ['error 6 proof-elsewhere traction'],
  },
  {
    story: 'high voltage is measured between the two halves of one pin',
    text: draftText(
      `${tractionOff}${prove.replace('K7.end', '[K7.monitor.9, K7.end.9]')}${tractionBack}`,
      highVoltage,
    ),
    must: ['error 6 proof-elsewhere traction'],
  },
  {
    story: 'high voltage is measured between its own pins',
    text: draftText(
      `${tractionOff}${prove.replace('K7.end', '[K7.end.8, K7.end.9]')}${tractionBack}`,
      highVoltage,
    ),
    must: [],
  },
  {
    story: 'the service plug has pins of an airbag loop too',
    text: draftText(
      `${tractionOff}${prove}${handsAndBack}  - stop: Ask the workshop lead.\n    leaves: [codes, repair]\n`,
      { ...highVoltage, ...plugOfBoth },
    ),
    // Where the proof fails the work ends, with the airbag loop open under power.
    must: ['error 4 live-touch S1', 'error 6 not-restored S1'],
  },
];
