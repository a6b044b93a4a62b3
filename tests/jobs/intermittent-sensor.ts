import type { Job } from './job.ts';

/** A wheel speed sensor that comes and goes: the harness is moved under power, and then piece by piece in ohms. */
export const intermittentSensor: Job = {
  name: 'wheel sensor, intermittent',
  text: `format: 1
title: Wheel speed sensor comes and goes - find the wire or contact that moves
conditions: { ambient: 10..35 °C }
sources:
  battery: { kind: battery, voltage: 12.2..14.5 V, feeds: [pull-up], wait: 0 s }
  sensor-supply: { kind: regulated, voltage: 5 V ± 2 %, from: battery, resistance: 0.1 Ω, needs: ignition-on, after-run: 0 s }
instruments:
  hand-meter:
    kind: multimeter
    resistance:
      range: 0..40 Ω
      accuracy: 0.5 % + 2 digits
      resolution: 0.01 Ω
      test-current: 1 mA
      further: [{ range: 0..4 kΩ, accuracy: 0.5 % + 2 digits, resolution: 1 Ω }]
    voltage: { range: 0..20 V, accuracy: 0.5 % + 2 digits, resolution: 0.01 V, input: 10 MΩ }
    zeroed: true
parts:
  pull-up: { kind: resistor, resistance: 1.0 kΩ ± 1 % }
  signal-wire: { kind: cable, wire: 0.5 mm², length: 1.8 m }
  return-wire: { kind: cable, wire: 0.5 mm², length: 1.8 m }
  sensor-coil: { kind: coil, resistance: 1.1 kΩ ± 5 %, temperature: 10..60 °C }
connectors:
  K4: { contact: 2..15 mΩ, sides: [unit, wheel] }
  K9: { contact: 2..15 mΩ, sides: [loom, hub] }
network:
  - { source: sensor-supply, between: [supply, ground] }
  - { part: pull-up, between: [supply, signal] }
  - { connector: K4, pin: 1, between: [signal, arch-signal] }
  - { part: signal-wire, between: [arch-signal, loom-signal] }
  - { connector: K9, pin: 1, between: [loom-signal, coil-one] }
  - { part: sensor-coil, between: [coil-one, coil-two] }
  - { connector: K9, pin: 2, between: [loom-return, coil-two] }
  - { part: return-wire, between: [arch-return, loom-return] }
  - { connector: K4, pin: 2, between: [ground, arch-return] }
steps:
  - ignition: on
  - wiggle: [signal-wire, return-wire, K9]
    id: under-power
    quantity: voltage
    across: [signal, ground]
    with: hand-meter
    for: 2 min
    note: Turn the wheel from lock to lock meanwhile.
    outcomes: { within: quiet, else: next }
  - ignition: off
  - unplug: K4
  - wiggle: [signal-wire, return-wire, K9]
    id: in-ohms
    quantity: resistance
    across: K4.wheel
    with: hand-meter
    for: 2 min
    outcomes: { within: at-unit, else: next }
  - unplug: K9
  - wiggle: [signal-wire, K9.loom]
    quantity: resistance
    across: [K4.wheel.1, K9.loom.1]
    with: hand-meter
    for: 1 min
    expect: 0.03..0.2 Ω
    outcomes: { within: next, else: signal }
  - wiggle: [return-wire, K9.loom]
    quantity: resistance
    across: [K4.wheel.2, K9.loom.2]
    with: hand-meter
    for: 1 min
    expect: 0.03..0.2 Ω
    outcomes: { within: next, else: return }
  - conclude: [K9, sensor-coil]
  - go: restore
  - conclude: signal-wire
    id: signal
  - go: restore
  - conclude: return-wire
    id: return
  - plug: K9
    id: restore
  - plug: K4
  - stop: Mend what was concluded, by a procedure of its own.
  - plug: K4
    id: at-unit
  - stop: The harness and the sensor are quiet. Look at K4 and the unit.
  - ignition: off
    id: quiet
  - stop: Nothing came and went. Ask for a drive with a recorder.
`,
  mutants: [
    {
      story: 'the open connector is named as a whole, and nobody knows which half',
      changes: [['  - wiggle: [signal-wire, K9.loom]\n', '  - wiggle: [signal-wire, K9]\n']],
      finds: ['error impossible K9'],
    },
    {
      story: 'resistance is watched with the ignition still on',
      changes: [['  - ignition: off\n  - unplug: K4\n', '']],
      finds: ['error powered-measurement K4.wheel'],
    },
    {
      story: 'the only outcome that is bad is a broken wire',
      changes: [
        [
          '    for: 2 min\n    outcomes: { within: at-unit, else: next }\n',
          '    for: 2 min\n    outcomes: { within: at-unit, open: next }\n',
        ],
      ],
      finds: ['error uncovered -'],
    },
    {
      story: 'whatever is seen, the work goes on in the same way',
      changes: [['outcomes: { within: quiet, else: next }', 'outcomes: { within: next, else: next }']],
      finds: ['warning no-difference -'],
    },
    {
      story: 'a window by guess, in which a broken wire passes as sound',
      changes: [
        [
          '    for: 2 min\n    note: Turn the wheel',
          '    for: 2 min\n    expect: 2..6 V\n    note: Turn the wheel',
        ],
      ],
      finds: ['warning expect-admits-fault signal..ground'],
    },
    {
      story: 'the wire is replaced, and that nothing shows while it is moved passes as the proof',
      changes: [
        [
          '  - plug: K9\n    id: restore\n  - plug: K4\n  - stop: Mend what was concluded, by a procedure of its own.\n',
          `  - replace: signal-wire
    id: restore
  - plug: K9
  - plug: K4
  - ignition: on
  - wiggle: signal-wire
    quantity: voltage
    across: [signal, ground]
    with: hand-meter
    for: 1 min
    outcomes: { within: repaired, else: again }
  - stop: The wire is mended.
    id: repaired
  - stop: It still comes and goes. Ask the workshop lead.
    id: again
    leaves: [repair]
`,
        ],
      ],
      finds: ['warning repair-not-verified signal-wire'],
    },
    {
      story: 'both things to watch at once',
      changes: [
        [
          '    across: [K4.wheel.2, K9.loom.2]\n',
          '    across: [K4.wheel.2, K9.loom.2]\n    watch: sensor-loop\n',
        ],
      ],
      finds: ['error wrong-value quantity'],
    },
    {
      story: 'the sensor hangs on 48 V, and its contacts are moved while that is on',
      changes: [
        ['voltage: 5 V ± 2 %, from', 'voltage: 48 V ± 2 %, from'],
        ['range: 0..20 V,', 'range: 0..60 V,'],
      ],
      finds: ['error work-under-power signal-wire', 'error work-under-power K9'],
    },
    {
      story: 'a colleague writes it into a note, where nobody checks it',
      changes: [
        ['    note: Turn the wheel from lock to lock meanwhile.\n', '    note: Wiggle K4 as well.\n'],
      ],
      finds: ['warning hands-in-text K4'],
    },
  ],
};
