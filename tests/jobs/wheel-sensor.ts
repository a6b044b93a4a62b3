import type { Job } from './job.ts';

/** Two kinds of wheel-speed sensor: one draws 7 or 14 mA as teeth pass, the other is a coil that is measured in ohms. */
export const wheelSensor: Job = {
  name: 'wheel-speed sensors',
  text: `format: 1
title: Wheel-speed sensors - current of the front one, coil of the rear one
sources:
  battery: { kind: battery, voltage: 11.8..12.8 V, feeds: [rear-input], wait: 1 min }
  sensor-supply: { kind: regulated, voltage: 11.5..12.5 V, resistance: 10..20 Ω, from: battery, needs: ignition-on, after-run: 5 s }
instruments:
  hand-meter:
    kind: multimeter
    current: { range: 0..40 mA, accuracy: 1 % + 3 digits, resolution: 0.01 mA, burden: 1..5 Ω }
    resistance: { range: 0..4 kΩ, accuracy: 0.5 % + 2 digits, resolution: 1 Ω, test-current: 1 mA }
    leads: 0.1..0.3 Ω
parts:
  front-sensor: { kind: consumer, draws: 7 mA ± 1.4 mA, always: true }
  front-tooth: { kind: consumer, draws: 7 mA ± 1.4 mA }
  shunt: { kind: resistor, resistance: 49..51 Ω }
  rear-coil: { kind: coil, resistance: 1.1 kΩ ± 8 %, temperature: -10..40 °C }
  rear-input: { kind: resistor, resistance: 8..12 kΩ }
connectors:
  K61: { contact: 2..15 mΩ, sides: [harness, sensor] }
  K62: { contact: 2..15 mΩ, sides: [harness, sensor] }
assemblies:
  front-wheel-sensor: [front-sensor, front-tooth]
network:
  - { source: sensor-supply, between: [front-supply, ground] }
  - { connector: K61, pin: 1, between: [front-supply, front-plus] }
  - { part: front-sensor, between: [front-plus, front-return] }
  - { part: front-tooth, between: [front-plus, front-return] }
  - { part: shunt, between: [front-return, ground] }
  - { part: rear-input, between: [rear-high, rear-low] }
  - { connector: K62, pin: 1, between: [rear-high, rear-one] }
  - { connector: K62, pin: 2, between: [rear-low, rear-two] }
  - { part: rear-coil, between: [rear-one, rear-two] }
steps:
  - ignition: off
  - wait: 5 s
  - unplug: K61
  - ignition: on
  - measure: current
    in: [K61.harness.1, K61.sensor.1]
    with: hand-meter
    note: The wheel stands with a gap before the sensor.
    outcomes: { within: next, else: front }
  - measure: current
    in: [K61.harness.1, K61.sensor.1]
    with: hand-meter
    drawing: front-tooth
    note: The wheel is turned until a tooth stands before the sensor.
    outcomes: { within: next, else: front }
  - ignition: off
  - wait: 5 s
  - plug: K61
  - unplug: K62
  - wait: 1 min
  - measure: resistance
    across: K62.sensor
    with: hand-meter
    outcomes: { within: sound, else: rear }
  - plug: K62
    id: sound
  - stop: Both sensors are sound.
  - conclude: rear-coil
    id: rear
  - plug: K62
  - stop: The rear sensor is not sound. Ask the workshop lead.
  - conclude: front-wheel-sensor
    id: front
  - ignition: off
  - wait: 5 s
  - plug: K61
  - stop: The front sensor is not sound. Ask the workshop lead.
`,
  mutants: [
    {
      story: 'nobody turns the wheel to a tooth',
      changes: [
        [
          '    drawing: front-tooth\n    note: The wheel is turned until a tooth stands before the sensor.\n',
          '    expect: 11..17 mA\n',
        ],
      ],
      finds: ['warning expect-excludes-good K61.harness.1..K61.sensor.1'],
    },
    {
      story: 'the ignition stays off while the current is measured',
      changes: [['  - unplug: K61\n  - ignition: on\n', '  - unplug: K61\n']],
      finds: ['warning nothing-flows K61.harness.1..K61.sensor.1'],
    },
    {
      story: 'the plug of the unit is open too while the current is measured',
      changes: [
        ['  K62: {', '  K63: { contact: 2..15 mΩ, sides: [unit, harness] }\n  K62: {'],
        [
          '  - { part: shunt, between: [front-return, ground] }',
          '  - { connector: K63, pin: 1, between: [unit-return, front-return] }\n  - { part: shunt, between: [unit-return, ground] }',
        ],
        ['  - unplug: K61\n', '  - unplug: K61\n  - unplug: K63\n'],
        ['  - plug: K61\n  - unplug: K62', '  - plug: K61\n  - plug: K63\n  - unplug: K62'],
      ],
      finds: ['warning nothing-flows K61.harness.1..K61.sensor.1'],
    },
    {
      story: 'the instrument is held across the mated plug',
      changes: [
        ['  - unplug: K61\n', ''],
        ['  - plug: K61\n  - unplug: K62', '  - unplug: K62'],
      ],
      finds: ['error impossible K61'],
    },
    {
      story: 'the coil is measured through the input of the unit',
      changes: [['  - unplug: K62\n  - wait: 1 min\n', '']],
      finds: ['error powered-measurement K62.sensor'],
    },
    {
      story: 'the resistance of the front sensor is measured, of which only its current is known',
      changes: [
        [
          '  - plug: K61\n  - unplug: K62\n',
          '  - measure: resistance\n    across: [front-plus, front-return]\n    with: hand-meter\n  - plug: K61\n  - unplug: K62\n',
        ],
      ],
      finds: ['error monitor-in-the-way front-sensor'],
    },
    {
      story: 'the coil is expected as it is at 20 °C alone',
      changes: [
        [
          '    across: K62.sensor\n    with: hand-meter\n',
          '    across: K62.sensor\n    with: hand-meter\n    expect: 1050..1150 Ω\n',
        ],
      ],
      finds: ['warning expect-excludes-good K62.sensor'],
    },
    {
      story: 'a range that ends at 10 mA',
      changes: [['current: { range: 0..40 mA', 'current: { range: 0..10 mA']],
      finds: ['error unfit-meter K61.harness.1..K61.sensor.1'],
    },
    {
      story: 'the sensor is exchanged for a consumer that is not drawn by name',
      changes: [['    drawing: front-tooth\n', '    drawing: shunt\n']],
      finds: ['error wrong-id shunt'],
    },
  ],
};
