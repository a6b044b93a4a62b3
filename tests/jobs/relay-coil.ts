import type { Job } from './job.ts';

/** A relay that does not pull: the voltage at its coil while it is switched, then the coil in ohms, unplugged. */
export const relayCoil: Job = {
  name: 'relay coil',
  text: `format: 1
title: Pump relay does not pull - voltage and resistance of its coil
conditions: { ambient: 10..35 °C }
sources:
  battery: { kind: battery, voltage: 12.2..12.8 V, feeds: [relay-coil], wait: 0 s }
instruments:
  hand-meter:
    kind: multimeter
    resistance: { range: 0..400 Ω, accuracy: 0.8 % + 3 digits, resolution: 0.1 Ω, test-current: 1 mA }
    voltage: { range: 0..20 V, accuracy: 0.5 % + 2 digits, resolution: 0.01 V, input: 10 MΩ }
    leads: 0.1..0.3 Ω
parts:
  relay-coil: { kind: coil, resistance: 85 Ω ± 10 %, temperature: 10..80 °C }
  driver: { kind: switch, resistance: 0.2..0.6 Ω }
  feed-wire: { kind: cable, resistance: 40..60 mΩ }
  driver-wire: { kind: cable, resistance: 40..60 mΩ }
connectors:
  K61: { contact: 2..10 mΩ, sides: [harness, relay] }
network:
  - { source: battery, between: [battery-plus, ground] }
  - { part: feed-wire, between: [battery-plus, coil-feed] }
  - { connector: K61, pin: 1, between: [coil-feed, coil-plus] }
  - { part: relay-coil, between: [coil-plus, coil-minus] }
  - { connector: K61, pin: 2, between: [coil-driver, coil-minus] }
  - { part: driver-wire, between: [coil-driver, driver-pin] }
  - { part: driver, between: [driver-pin, ground] }
steps:
  - measure: voltage
    across: [coil-feed, coil-driver]
    with: hand-meter
    id: at-coil
    note: The pump is switched on.
    outcomes: { within: coil, else: low }
  - measure: voltage
    across: [coil-driver, ground]
    with: hand-meter
    id: low
    outcomes: { within: feed, else: drive }
  - stop: The driver takes the voltage. Go on with the driver and its wire.
    id: drive
  - stop: The driver is sound and the coil lacks voltage. Go on with the feed.
    id: feed
  - ignition: off
    id: coil
  - disconnect: battery
  - unplug: K61
  - measure: resistance
    across: K61.relay
    with: hand-meter
    id: ohms
    outcomes: { within: sound, else: faulty }
  - plug: K61
    id: sound
  - reconnect: battery
  - stop: The coil is sound and has its voltage. Look at the contacts of the relay.
  - conclude: relay-coil
    id: faulty
  - replace: relay-coil
  - plug: K61
  - reconnect: battery
  - stop: The relay is new. Check that it pulls.
    leaves: [repair]
`,
  mutants: [
    {
      story: 'the coil is measured in ohms under power',
      changes: [
        [
          '  - measure: voltage\n    across: [coil-feed, coil-driver]\n',
          '  - measure: resistance\n    across: [coil-feed, coil-driver]\n',
        ],
      ],
      finds: ['error powered-measurement coil-feed..coil-driver'],
    },
    {
      story: 'the window of the coil forgets what the driver takes and that the battery may be low',
      changes: [['    id: at-coil\n', '    id: at-coil\n    expect: 12.5..12.8 V\n']],
      finds: ['warning expect-excludes-good coil-feed..coil-driver'],
    },
    {
      story: 'the new relay is left unplugged',
      changes: [['  - replace: relay-coil\n  - plug: K61\n', '  - replace: relay-coil\n']],
      finds: ['warning not-restored K61'],
    },
    {
      story: 'the coil is a lamp in the file, with its cold resistance',
      changes: [
        [
          '{ kind: coil, resistance: 85 Ω ± 10 %, temperature: 10..80 °C }',
          '{ kind: lamp, resistance: 3 Ω }',
        ],
      ],
      finds: ['error window-needs-value coil-feed..coil-driver'],
    },
    {
      story: 'the driver is replaced under power',
      changes: [
        [
          '  - stop: The driver takes the voltage. Go on with the driver and its wire.\n    id: drive\n',
          '  - replace: driver\n    id: drive\n  - stop: The driver is new.\n    leaves: [repair]\n',
        ],
      ],
      finds: ['warning work-under-power driver'],
    },
  ],
};
