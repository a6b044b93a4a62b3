import type { Job } from './job.ts';

/** What a vehicle at rest draws: in series at the battery, then which fuse it flows through, by the voltage across it. */
export const parasitic: Job = {
  name: 'parasitic current',
  text: `format: 1
title: Current at rest - which unit stays awake
sources:
  battery: { kind: battery, voltage: 12.2..12.8 V, feeds: [radio, door-unit], wait: 2 min }
instruments:
  hand-meter:
    kind: multimeter
    current: { range: 0..400 mA, accuracy: 1 % + 3 digits, resolution: 0.1 mA, burden: 1..2 Ω }
    clamp: { range: 0..60 A, accuracy: 2 % + 5 digits, resolution: 10 mA }
    voltage: { range: 0..60 V, accuracy: 0.5 % + 2 digits, resolution: 0.01 mV, input: 10 MΩ }
    resistance: { range: 0..40 kΩ, accuracy: 0.5 % + 2 digits, resolution: 1 Ω, test-current: 1 mA }
    zeroed: true
parts:
  plus-cable: { kind: cable, resistance: 1..3 mΩ }
  radio-fuse: { kind: fuse, rated: 10 A }
  door-fuse: { kind: fuse, rated: 7.5 A }
  radio: { kind: resistor, resistance: 2.0..2.4 kΩ }
  door-unit: { kind: consumer, draws: 7 mA ± 1 mA, always: true }
connectors:
  T1: { contact: 0.1..0.5 mΩ, sides: [body, battery] }
  K50: { contact: 2..15 mΩ, sides: [harness, radio] }
network:
  - { source: battery, between: [battery-plus, battery-minus] }
  - { connector: T1, pin: 1, between: [ground, battery-minus] }
  - { part: plus-cable, between: [battery-plus, fuse-box] }
  - { part: radio-fuse, between: [fuse-box, radio-feed] }
  - { part: door-fuse, between: [fuse-box, door-feed] }
  - { connector: K50, pin: 1, between: [radio-feed, radio-plus] }
  - { part: radio, between: [radio-plus, ground] }
  - { part: door-unit, between: [door-feed, ground] }
steps:
  - ignition: off
  - do: Leave the vehicle alone until its units sleep.
    minutes: 30
  - unplug: T1
  - measure: current
    id: at-rest
    in: [T1.body.1, T1.battery.1]
    with: hand-meter
    outcomes: { within: sound, else: next }
  - plug: T1
  - measure: voltage
    across: [fuse-box, radio-feed]
    with: hand-meter
    outcomes: { within: door, else: next }
  - conclude: radio
  - replace: radio-fuse
  - stop: The radio stays awake. Ask the workshop lead.
    leaves: [repair]
  - conclude: door-unit
    id: door
  - stop: The door unit stays awake. Ask the workshop lead.
  - plug: T1
    id: sound
  - stop: The current at rest is sound.
`,
  mutants: [
    {
      story: 'the instrument is held across the mated terminal',
      changes: [
        ['  - unplug: T1\n', ''],
        ['  - plug: T1\n  - measure', '  - measure'],
        [
          '  - plug: T1\n    id: sound\n  - stop: The current at rest is sound.',
          '  - stop: The current at rest is sound.\n    id: sound',
        ],
      ],
      finds: ['error impossible T1'],
    },
    {
      story: 'the range ends below what a sound vehicle draws',
      changes: [['range: 0..400 mA', 'range: 0..4 mA']],
      finds: ['error unfit-meter T1.body.1..T1.battery.1'],
    },
    {
      story: 'the resistance of the radio is measured while the instrument has just powered it',
      changes: [
        [
          '    outcomes: { within: sound, else: next }\n  - plug: T1\n',
          '    outcomes: { within: sound, else: next }\n  - unplug: K50\n  - measure: resistance\n    across: [radio-plus, ground]\n    with: hand-meter\n  - plug: K50\n  - plug: T1\n',
        ],
      ],
      finds: ['error powered-measurement radio-plus..ground'],
    },
    {
      story: 'the resistance of the door unit is measured, of which only its current is known',
      changes: [
        [
          '  - conclude: door-unit\n    id: door\n',
          '  - disconnect: battery\n    id: door\n  - wait: 2 min\n  - measure: resistance\n    across: [door-feed, ground]\n    with: hand-meter\n  - reconnect: battery\n  - conclude: door-unit\n',
        ],
      ],
      finds: ['error monitor-in-the-way door-unit'],
    },
    {
      story: 'the fuse is changed with the ignition on',
      changes: [
        ['  - replace: radio-fuse\n', '  - ignition: on\n  - replace: radio-fuse\n  - ignition: off\n'],
      ],
      finds: ['warning work-under-power radio-fuse'],
    },
    {
      story: 'the radio is changed with the battery on',
      changes: [['  - replace: radio-fuse\n', '  - replace: radio\n']],
      finds: ['warning work-under-power radio'],
    },
    {
      story: 'two terminals that are not of one pin',
      changes: [['in: [T1.body.1, T1.battery.1]', 'in: [T1.body.1, K50.harness.1]']],
      finds: ['error wrong-value -'],
    },
    {
      story: 'a clamp around a part that nobody drew',
      changes: [
        ['in: [T1.body.1, T1.battery.1]', 'around: spare-wire'],
        ['  plus-cable: {', '  spare-wire: { kind: cable, resistance: 1 mΩ }\n  plus-cable: {'],
      ],
      finds: ['error wrong-id spare-wire'],
    },
    {
      story: 'an expected current at which a sound vehicle is judged faulty',
      changes: [
        [
          '    with: hand-meter\n    outcomes: { within: sound, else: next }',
          '    with: hand-meter\n    expect: below 10 mA\n    outcomes: { within: sound, else: next }',
        ],
      ],
      finds: ['warning expect-excludes-good T1.body.1..T1.battery.1'],
    },
  ],
};
