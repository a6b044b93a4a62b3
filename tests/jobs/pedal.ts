import type { Job } from './job.ts';

/** A pedal sensor: its signal is measured plugged, with 5 V on its track, and the track unplugged. */
export const pedal: Job = {
  name: 'pedal sensor',
  text: `format: 1
title: Pedal sensor - supply, signal and track
sources:
  battery: { kind: battery, voltage: 12.2..12.8 V, feeds: [engine-input], wait: 1 min }
  reference: { kind: regulated, voltage: 5 V ± 1 %, resistance: 0..0.5 Ω, from: battery, needs: ignition-on, after-run: 30 s }
instruments:
  hand-meter:
    kind: multimeter
    voltage: { range: 0..20 V, accuracy: 0.5 % + 2 digits, resolution: 0.01 V, input: 10 MΩ }
    resistance: { range: 0..4 kΩ, accuracy: 0.5 % + 2 digits, resolution: 1 Ω, test-current: 1 mA }
    leads: 0.1..0.3 Ω
parts:
  pedal: { kind: potentiometer, track: 1 kΩ ± 20 %, wiper: 12..88 % }
  engine-input: { kind: resistor, resistance: 200..400 kΩ }
  supply-wire: { kind: cable, wire: 0.35 mm², length: 2 m }
  signal-wire: { kind: cable, wire: 0.35 mm², length: 2 m }
  ground-wire: { kind: cable, wire: 0.35 mm², length: 2 m }
connectors:
  K5: { contact: 2..15 mΩ, sides: [harness, sensor] }
network:
  - { source: reference, between: [unit-supply, ground] }
  - { part: engine-input, between: [unit-signal, ground] }
  - { part: supply-wire, between: [unit-supply, pedal-supply] }
  - { part: signal-wire, between: [unit-signal, pedal-signal] }
  - { part: ground-wire, between: [ground, pedal-ground] }
  - { connector: K5, pin: 1, between: [pedal-supply, track-supply] }
  - { connector: K5, pin: 2, between: [pedal-signal, wiper] }
  - { connector: K5, pin: 3, between: [pedal-ground, track-ground] }
  - { part: pedal, between: [track-supply, wiper, track-ground] }
steps:
  - ignition: on
  - measure: voltage
    across: [pedal-supply, pedal-ground]
    with: hand-meter
    outcomes: { within: signal, else: wires }
  - measure: voltage
    id: signal
    across: [pedal-signal, pedal-ground]
    with: hand-meter
    note: The pedal is moved slowly from its rest to its stop. No value leaves the window.
    outcomes: { within: sound, else: unplugged }
  - ignition: off
    id: unplugged
  - unplug: K5
  - wait: 1 min
  - measure: resistance
    across: [K5.sensor.1, K5.sensor.3]
    with: hand-meter
    outcomes: { within: next, else: faulty }
  - measure: resistance
    across: [K5.sensor.1, K5.sensor.2]
    with: hand-meter
    outcomes: { within: help, else: faulty }
  - conclude: pedal
    id: faulty
  - replace: pedal
  - plug: K5
  - ignition: on
  - measure: voltage
    across: [pedal-signal, pedal-ground]
    with: hand-meter
    outcomes: { within: sound, else: away }
  - stop: The pedal sensor is sound.
    id: sound
  - stop: The supply of the pedal is wrong. Go on with its wires.
    id: wires
  - plug: K5
    id: help
  - stop: The pedal is sound and its signal is not. Ask the workshop lead.
  - stop: Ask the workshop lead.
    id: away
    leaves: [repair]
`,
  mutants: [
    {
      story: 'the track is measured while the pedal is plugged and the ignition on',
      changes: [
        ['  - ignition: off\n    id: unplugged\n  - unplug: K5\n  - wait: 1 min\n  - measure', '  - measure'],
        [
          'across: [K5.sensor.1, K5.sensor.3]\n    with: hand-meter\n',
          'across: [K5.sensor.1, K5.sensor.3]\n    with: hand-meter\n    id: unplugged\n',
        ],
        ['  - plug: K5\n  - ignition: on\n', ''],
        ['  - plug: K5\n    id: help\n  - stop: The pedal is', '  - stop: The pedal is'],
        [
          'its signal is not. Ask the workshop lead.\n',
          'its signal is not. Ask the workshop lead.\n    id: help\n',
        ],
      ],
      finds: ['error powered-measurement K5.sensor.1..K5.sensor.3'],
    },
    {
      story: 'nobody waits until the unit is off',
      changes: [['  - wait: 1 min\n', '']],
      finds: ['error powered-measurement K5.sensor.1..K5.sensor.3'],
    },
    {
      story: 'the track is expected without its tolerance',
      changes: [
        [
          'across: [K5.sensor.1, K5.sensor.3]\n    with: hand-meter\n',
          'across: [K5.sensor.1, K5.sensor.3]\n    with: hand-meter\n    expect: 950..1050 Ω\n',
        ],
      ],
      finds: ['warning expect-excludes-good K5.sensor.1..K5.sensor.3'],
    },
    {
      story: 'any signal below 4.6 V is taken for good, that of a torn wire too',
      changes: [
        [
          'with: hand-meter\n    note: The pedal',
          'with: hand-meter\n    expect: below 4.6 V\n    note: The pedal',
        ],
      ],
      finds: ['warning expect-admits-fault pedal-signal..pedal-ground'],
    },
    {
      story: 'the new pedal is shown by its supply alone',
      changes: [
        [
          '  - measure: voltage\n    across: [pedal-signal, pedal-ground]\n    with: hand-meter\n    outcomes: { within: sound, else: away }',
          '  - measure: voltage\n    across: [pedal-supply, pedal-ground]\n    with: hand-meter\n    outcomes: { within: sound, else: away }',
        ],
      ],
      finds: ['warning repair-not-verified pedal'],
    },
    {
      story: 'the pedal stays unplugged',
      changes: [['  - replace: pedal\n  - plug: K5\n', '  - replace: pedal\n']],
      finds: ['warning not-restored K5'],
    },
    {
      story: 'the wiper is forgotten in the drawing',
      changes: [['between: [track-supply, wiper, track-ground]', 'between: [track-supply, track-ground]']],
      finds: ['error wrong-value pedal'],
    },
    {
      story: 'signal and ground are swapped in the drawing, and the window is that of the sound pedal',
      changes: [
        ['between: [track-supply, wiper, track-ground]', 'between: [track-supply, track-ground, wiper]'],
        [
          'with: hand-meter\n    note: The pedal',
          'with: hand-meter\n    expect: 0.5..4.5 V\n    note: The pedal',
        ],
      ],
      finds: ['warning expect-excludes-good pedal-signal..pedal-ground'],
    },
  ],
};
