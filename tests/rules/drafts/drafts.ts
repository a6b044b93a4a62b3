import { circuit } from '../../../server/src/rules/examples.ts';
import {
  barOnHarness,
  draftText,
  giveBack,
  makeSafe,
  makeSafeRoutine,
  powerOff,
  readCodes,
  readOnly,
  reserveOnly,
  showSound,
  twoBatteries,
} from './circuits.ts';

/*
 * Drafts broken as real drafts are, each with all that a reviewer has to see in it: severity, step as it is printed (`-`
 * for none), rule, and what it is about. Kinds of mistakes: common practice, no source.
 */

export interface Draft {
  readonly story: string;
  readonly text: string;
  readonly parts?: string;
  readonly must: readonly string[];
}

const unplugged = `${makeSafe}  - unplug: K30\n`;
const lampIn = `${unplugged}  - fit: bench-lamp\n    at: K30.monitor\n`;
const powerWarned = `  - reconnect: battery
    warning: Nobody in front of the airbag while power comes back.
  - ignition: on
`;

export const takenAway: readonly Draft[] = [
  {
    story: 'the battery is disconnected in one branch only',
    text: draftText(`${readCodes}  - read: driver-loop
    outcomes: { within: next, else: take-away }
  - ignition: off
  - go: hands
  - ignition: off
    id: take-away
  - disconnect: battery
  - wait: 3 min
  - unplug: K30
    id: hands
  - plug: K30
${giveBack}`),
    must: ['error 9 live-touch K30', 'error 11 impossible battery'],
  },
  {
    story: 'one minute is waited where the reserve needs almost two',
    text: draftText(`${unplugged.replace('3 min', '1 min')}  - plug: K30\n${giveBack}`, reserveOnly),
    must: ['error 6 short-wait K30'],
  },
  {
    story: 'by its values the reserve needs no wait at all',
    text: draftText(`${unplugged.replace('  - wait: 3 min\n', '')}  - plug: K30\n${giveBack}`, {
      sources: reserveOnly.sources?.replace('charged-to: 24 V', 'charged-to: 2 V') ?? '',
    }),
    must: ['information - zero-wait battery'],
  },
  {
    story: 'the ignition is left on while the battery goes and comes',
    text: draftText(`${readCodes}  - disconnect: battery
  - wait: 3 min
  - unplug: K30
  - plug: K30
  - reconnect: battery
${showSound}`),
    must: [
      'warning 3 ignition-first battery',
      'warning 4 wait-without-effect -',
      'error 5 live-touch K30',
      'warning 7 ignition-first battery',
    ],
  },
  {
    story: 'the wrong battery of two is disconnected',
    text: draftText(
      `${readCodes}  - read-codes: body-unit
  - ignition: off
  - disconnect: cabin
  - wait: 3 min
  - unplug: K30
  - plug: K30
  - reconnect: cabin
  - ignition: on
  - clear-codes: body-unit
${showSound}`,
      twoBatteries,
    ),
    must: ['warning 6 wait-without-effect -', 'error 7 live-touch K30'],
  },
  {
    story: 'power comes back before the lamp is taken out, and stays',
    text: draftText(`${lampIn}${powerWarned}  - read: driver-loop
  - ignition: off
  - remove: bench-lamp
  - plug: K30
  - ignition: on
${showSound}`),
    must: ['error 12 live-touch K30'],
  },
  {
    story: 'power comes back to the lamp without a warning',
    text: draftText(`${lampIn}  - reconnect: battery
  - ignition: on
  - read: driver-loop
${powerOff}  - remove: bench-lamp
  - plug: K30
${giveBack}`),
    must: ['error 8 half-open driver-loop'],
  },
  {
    story: 'the last reading leads back to the connector, past the steps that make safe',
    text: draftText(`${makeSafe}  - unplug: K30
    id: again
  - inspect: Are the pins straight?
    at: K30
  - plug: K30
  - reconnect: battery
  - ignition: on
  - clear-codes: control-unit
  - read: driver-loop
    outcomes: { within: next, else: again }
  - stop: The loop is sound.
`),
    must: ['error 6 live-touch K30', 'error 9 impossible battery', 'warning 9 ignition-first battery'],
  },
  {
    story: 'a whole assembly is lifted with the battery on',
    text: draftText(`${readOnly}  - do: Lift the module.\n    at: driver-module\n`, {
      assemblies: 'assemblies: { driver-module: [stage-1, K30] }\n',
    }),
    must: ['error 5 live-touch stage-1', 'error 5 live-touch K30'],
  },
  {
    story: 'the author waives hands on a live stage',
    text: draftText(`${readOnly}  - do: Lift the module.\n    id: lift\n    at: stage-1\n`, {
      waivers: 'waivers: [{ rule: live-touch, step: lift, reason: We have always done it. }]\n',
    }),
    must: ['error - waiver-refused live-touch', 'error 5 live-touch stage-1'],
  },
  {
    story: 'a waiver is left from an earlier revision',
    text: draftText(readOnly.replace('- read: driver-loop', '- read: driver-loop\n    id: reading'), {
      waivers: 'waivers: [{ rule: repeats, step: reading, reason: It goes round until it holds. }]\n',
    }),
    must: ['warning - unused-waiver repeats'],
  },
];

const look = `routines:
  look:
    steps:
      - ignition: off
      - disconnect: battery
      - wait: 1 min
      - inspect: Are the locks closed?
        at: K30
      - reconnect: battery
`;

export const routines: readonly Draft[] = [
  {
    story: 'the routine that makes safe is called behind the connector',
    text: draftText(`${readCodes}  - unplug: K30\n  - run: make-safe\n  - plug: K30\n${giveBack}`, {
      routines: makeSafeRoutine(3),
    }),
    must: ['error 3 live-touch K30'],
  },
  {
    story: 'the routine that makes safe is called in one branch only',
    text: draftText(
      `${readCodes}  - read: driver-loop
    outcomes: { within: hands, else: next }
  - run: make-safe
  - unplug: K30
    id: hands
  - plug: K30
${giveBack}`,
      { routines: makeSafeRoutine(3) },
    ),
    must: ['error 5 live-touch K30', 'error 7 impossible battery', 'warning 7 ignition-first battery'],
  },
  {
    story: 'a routine with too short a wait is called three times: one finding',
    text: draftText(
      `${readCodes}  - run: look\n  - run: look\n  - run: look\n  - ignition: on\n${showSound.replace('    leaves: [repair]\n', '')}`,
      { routines: look },
    ),
    must: ['error 3.4 short-wait K30'],
  },
  {
    story: 'a parts file makes safe with too short a wait',
    text: draftText(`${readCodes}  - run: make-safe\n  - unplug: K30\n  - plug: K30\n${giveBack}`, {
      uses: 'uses: [workshop.parts.yaml]\n',
    }),
    parts: `format: 1\n${makeSafeRoutine(1)}`,
    must: ['error 4 short-wait K30'],
  },
];

export const bench: readonly Draft[] = [
  {
    story: 'the shorting bar bridges the lamp',
    text: draftText(`${lampIn}  - remove: bench-lamp\n  - plug: K30\n${giveBack}`, barOnHarness),
    must: ['error 7 load-bridged bench-lamp'],
  },
  {
    story: 'the lamp is fitted on the side away from the unit',
    text: draftText(`${makeSafe}  - unplug: K10
  - fit: bench-lamp
    at: K10.end
${powerWarned}  - read: driver-loop
    expect: 2.5..3.5 Ω
${powerOff}  - remove: bench-lamp
  - plug: K10
${giveBack}`),
    must: ['error 10 load-out-of-window driver-loop'],
  },
  {
    story: 'the lamp is fitted twice',
    text: draftText(
      `${lampIn}  - fit: bench-lamp\n    at: K30.monitor\n  - remove: bench-lamp\n  - plug: K30\n${giveBack}`,
    ),
    must: ['error 8 impossible bench-lamp'],
  },
  {
    story: 'the connector is mated with the lamp still on it',
    text: draftText(`${lampIn}  - plug: K30\n  - remove: bench-lamp\n${giveBack}`),
    must: ['error 8 impossible K30'],
  },
  {
    story: 'the loop is read with the ignition off',
    text: draftText(
      `${unplugged}  - plug: K30\n${giveBack.replace('  - read', '  - ignition: off\n  - read')}`,
    ),
    must: ['error 12 impossible control-unit'],
  },
  {
    story: 'the bench is left open behind the last step',
    text: draftText(`${unplugged}  - inspect: Are the pins straight?\n    at: K30\n`),
    must: [
      'error 7 not-restored battery',
      'error 7 not-restored K30',
      'error 7 codes-not-cleared control-unit',
      'warning 7 loop-not-verified driver-loop',
    ],
  },
  {
    story: 'the bench is left open at a stop that does not say so',
    text: draftText(`${unplugged}  - stop: Ask the workshop lead.\n`),
    must: [
      'warning 7 not-restored battery',
      'warning 7 not-restored K30',
      'warning 7 codes-not-cleared control-unit',
      'warning 7 loop-not-verified driver-loop',
    ],
  },
];

export const proof: readonly Draft[] = [
  {
    story: 'codes are cleared before anybody has read them',
    text: draftText(`  - ignition: on
  - clear-codes: control-unit
  - read-codes: control-unit
  - read: driver-loop
`),
    must: ['warning 2 codes-not-recorded control-unit'],
  },
  {
    story: 'codes are never cleared',
    text: draftText(`${unplugged}  - plug: K30\n${giveBack.replace('  - clear-codes: control-unit\n', '')}`),
    must: ['warning 11 codes-not-cleared control-unit', 'warning 12 codes-not-cleared control-unit'],
  },
  {
    story: 'the stage is replaced and not read again',
    text: draftText(`${makeSafe}  - replace: stage-1
  - reconnect: battery
  - ignition: on
  - clear-codes: control-unit
`),
    // The loop of the stage was opened by the same act: one mistake, one message.
    must: ['error 9 repair-not-verified stage-1'],
  },
  {
    story: 'the loop is opened, closed and not read again',
    text: draftText(`${unplugged}  - plug: K30
  - reconnect: battery
  - ignition: on
  - clear-codes: control-unit
`),
    must: ['warning 10 loop-not-verified driver-loop'],
  },
  {
    story: 'the loop is read again by an outcome that is no `within`',
    text: draftText(
      `${unplugged}  - plug: K30\n${giveBack.replace('{ within: sound, else: faulty }', '{ open: faulty, else: sound }')}`,
    ),
    must: ['warning 12 loop-not-verified driver-loop'],
  },
  {
    story: 'the loop is read again, and `else` is what is left: it is within its window',
    text: draftText(
      `${unplugged}  - plug: K30\n${giveBack.replace('{ within: sound, else: faulty }', '{ outside: faulty, else: sound }')}`,
    ),
    must: [],
  },
  {
    story: 'the same with each class by its name',
    text: draftText(
      `${unplugged}  - plug: K30\n${giveBack.replace('{ within: sound, else: faulty }', '{ below: faulty, above: faulty, open: faulty, else: sound }')}`,
    ),
    must: [],
  },
  {
    story: 'the loop is read again by an `else` that a leak leads to as well',
    text: draftText(
      `${unplugged}  - plug: K30\n${giveBack.replace('{ within: sound, else: faulty }', '{ below: faulty, above: faulty, open: faulty, else: sound }')}`,
      { instruments: circuit.instruments.replace('range: 0..10', 'leak: below 5 kΩ, range: 0..10') },
    ),
    must: ['warning 12 loop-not-verified driver-loop'],
  },
  {
    story: 'the loop is read again by an `else` beside a window that is not all that lies below',
    text: draftText(
      `${unplugged}  - plug: K30\n${giveBack.replace('    outcomes: { within: sound, else: faulty }', '    windows: { short: below 1 Ω }\n    outcomes: { short: faulty, above: faulty, open: faulty, else: sound }')}`,
    ),
    must: ['warning 12 loop-not-verified driver-loop'],
  },
];

const readThen = (outcomes: string): string =>
  readOnly.replace('- read: driver-loop', `- read: driver-loop\n    id: reading\n    outcomes: ${outcomes}`);

export const ways: readonly Draft[] = [
  {
    story: 'a branch goes round for ever',
    text: draftText(`${readThen('{ within: next, else: look }')}  - stop: The loop is sound.
  - inspect: Has the lamp gone out?
    at: nothing
    id: look
  - go: look
`),
    must: ['error 6 endless -'],
  },
  {
    story: 'a reading is taken again until it holds',
    text: draftText(`${readThen('{ within: next, else: reading }')}  - stop: The loop is sound.\n`),
    must: ['warning 4 repeats -'],
  },
  {
    story: 'a step is left that no path reaches',
    text: draftText(`${readOnly}  - go: done
  - do: Let it cool.
  - stop: Hand over.
    id: done
`),
    must: ['warning 6 unreachable -'],
  },
  {
    story: 'a reading above the window has no outcome',
    text: draftText(`${readThen('{ within: next, below: next }')}  - stop: Hand over.\n`),
    must: ['error 4 uncovered -'],
  },
  {
    story: 'a loop that reads wrong goes on like a good one',
    text: draftText(`${readThen('{ within: next, below: after, else: next }')}  - stop: Hand over.
    id: after
`),
    must: ['warning 4 no-difference -'],
  },
  {
    story: 'nothing is said of an open loop, and all else goes on',
    text: draftText(`${readThen('{ within: next, below: next, above: next }')}  - stop: Hand over.\n`),
    must: ['error 4 uncovered -'],
  },
  {
    story: 'a defect that is seen goes on like none',
    text: draftText(
      `${readOnly}  - inspect: Is the seat dry?\n    at: nothing\n    outcomes: { ok: next, defect: next }\n  - stop: Hand over.\n`,
    ),
    must: ['warning 5 no-difference -'],
  },
  {
    story: 'a code that is present goes on like none',
    text: draftText(
      readOnly.replace(
        '- read-codes: control-unit',
        '- read-codes: control-unit\n    outcomes: { none: next, else: next }',
      ),
    ),
    must: ['warning 2 no-difference -'],
  },
  {
    story: 'hands are hidden in a sentence',
    text: draftText(`${readOnly}  - do: Unplug K30 and look at its pins.\n`),
    must: ['error 5 touch-not-said -', 'warning 5 hands-in-text K30'],
  },
  {
    story: 'hands are hidden in a sentence that says they touch nothing',
    text: draftText(`${readOnly}  - do: Unplug K30 and look at its pins.\n    at: nothing\n`),
    must: ['error 5 hands-in-text K30'],
  },
];
