import type { Job } from './job.ts';

/** A two-wire bus with three units: its resistance is measured at the socket, with all units asleep. */
export const bus: Job = {
  name: 'bus with three units',
  text: `format: 1
title: Body bus with three units - resistance between the wires
sources:
  battery: { kind: battery, voltage: 12.6 V, feeds: [front-end, rear-end, door-input], wait: 2 min }
instruments:
  hand-meter:
    kind: multimeter
    resistance: { range: 0..400 Ω, accuracy: 0.8 % + 3 digits, resolution: 0.1 Ω, test-current: 1 mA }
    leads: 0.1..0.3 Ω
parts:
  front-end: { kind: resistor, resistance: 118..122 Ω }
  rear-end: { kind: resistor, resistance: 118..122 Ω }
  door-input: { kind: resistor, resistance: 20..50 kΩ }
  wire-high: { kind: cable, wire: 0.35 mm², length: 4 m }
  wire-low: { kind: cable, wire: 0.35 mm², length: 4 m }
connectors:
  K70: { contact: 2..15 mΩ, sides: [unit, harness] }
  K71: { contact: 2..15 mΩ, sides: [harness, unit] }
  K72: { contact: 2..15 mΩ, sides: [harness, unit] }
network:
  - { part: front-end, between: [front-high, front-low] }
  - { connector: K70, pin: 1, between: [front-high, bus-high] }
  - { connector: K70, pin: 2, between: [front-low, bus-low] }
  - { part: wire-high, between: [bus-high, far-high] }
  - { part: wire-low, between: [bus-low, far-low] }
  - { connector: K71, pin: 1, between: [far-high, rear-high] }
  - { connector: K71, pin: 2, between: [far-low, rear-low] }
  - { part: rear-end, between: [rear-high, rear-low] }
  - { connector: K72, pin: 1, between: [bus-high, door-high] }
  - { connector: K72, pin: 2, between: [bus-low, door-low] }
  - { part: door-input, between: [door-high, door-low] }
steps:
  - ignition: off
  - disconnect: battery
  - wait: 2 min
    why: Units stay awake and put a voltage on the bus until then.
  - measure: resistance
    across: [bus-high, bus-low]
    with: hand-meter
    windows: { one-end: 110..140 Ω }
    outcomes: { within: sound, one-end: front, else: help }
  - unplug: K70
    id: front
  - measure: resistance
    across: K70.unit
    with: hand-meter
    id: front-alone
    outcomes: { within: wires, else: front-unit }
  - conclude: front-end
    id: front-unit
  - replace: front-end
  - plug: K70
  - go: final
  - conclude: [wire-high, wire-low, rear-end]
    id: wires
  - plug: K70
  - stop: The front unit is sound. Go on with the rear unit.
    leaves: [battery]
  - measure: resistance
    id: final
    across: [bus-high, bus-low]
    with: hand-meter
    outcomes: { within: sound, else: help }
  - reconnect: battery
    id: sound
  - stop: The bus is closed at both ends.
  - stop: Ask the workshop lead.
    id: help
    leaves: [battery, repair]
`,
  mutants: [
    {
      story: 'the battery stays connected',
      changes: [
        ['  - disconnect: battery\n', ''],
        [
          '  - reconnect: battery\n    id: sound\n  - stop: The bus is closed at both ends.',
          '  - stop: The bus is closed at both ends.\n    id: sound',
        ],
      ],
      finds: ['error powered-measurement bus-high..bus-low', 'error powered-measurement K70.unit'],
    },
    {
      story: 'nobody waits until the units sleep',
      changes: [
        ['  - wait: 2 min\n    why: Units stay awake and put a voltage on the bus until then.\n', ''],
      ],
      finds: ['error powered-measurement bus-high..bus-low', 'error powered-measurement K70.unit'],
    },
    {
      story: 'half of the wait',
      changes: [['  - wait: 2 min', '  - wait: 1 min']],
      finds: ['error powered-measurement bus-high..bus-low'],
    },
    {
      story: 'the battery is back for the last reading',
      changes: [
        ['  - plug: K70\n  - go: final', '  - plug: K70\n  - reconnect: battery\n  - go: final'],
        [
          '    outcomes: { within: sound, else: help }\n  - reconnect',
          '    outcomes: { within: bye, else: help }\n  - reconnect',
        ],
        [
          '  - stop: The bus is closed at both ends.',
          '  - stop: The bus is closed at both ends.\n    id: bye',
        ],
      ],
      finds: ['error powered-measurement bus-high..bus-low'],
    },
    {
      story: 'the unit is changed with the battery on',
      changes: [
        [
          '  - ignition: off\n  - disconnect: battery\n',
          '  - ignition: off\n  - replace: rear-end\n  - disconnect: battery\n',
        ],
      ],
      finds: ['warning work-under-power rear-end'],
    },
  ],
};
