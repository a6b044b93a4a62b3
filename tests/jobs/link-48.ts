import type { Job } from './job.ts';

/** The link of a 48 V starter: capacitors hold its voltage, and its fuse is measured at rest. */
export const link48: Job = {
  name: '48 V link with its capacitors',
  text: `format: 1
title: 48 V starter - winding and cable
sources:
  link-battery:
    kind: battery
    voltage: 36..52 V
    feeds: [inverter]
    reserve: { capacitance: 3 mF ± 20 %, charged-to: 52 V, bleed: 10 kΩ ± 5 %, safe-below: 5 V }
instruments:
  hand-meter:
    kind: multimeter
    resistance: { range: 0..400 Ω, accuracy: 0.5 % + 2 digits, resolution: 0.01 Ω, test-current: 1 mA }
    zeroed: true
parts:
  link-cable: { kind: cable, resistance: 2..6 mΩ }
  inverter: { kind: resistor, resistance: 100..200 kΩ }
  winding: { kind: coil, resistance: 2.0..2.4 Ω }
connectors:
  K80: { contact: 0.5..2 mΩ, sides: [battery, inverter] }
  K81: { contact: 0.5..2 mΩ, sides: [inverter, machine] }
network:
  - { source: link-battery, between: [link-plus, ground] }
  - { part: link-cable, between: [link-plus, link-feed] }
  - { connector: K80, pin: 1, between: [link-feed, inverter-plus] }
  - { part: inverter, between: [inverter-plus, ground] }
  - { connector: K81, pin: 1, between: [inverter-plus, winding-plus] }
  - { part: winding, between: [winding-plus, ground] }
steps:
  - ignition: off
  - disconnect: link-battery
  - wait: 100 s
  - unplug: K81
  - measure: resistance
    across: [winding-plus, ground]
    with: hand-meter
    outcomes: { within: next, else: faulty }
  - plug: K81
  - reconnect: link-battery
  - stop: The winding is sound.
  - conclude: winding
    id: faulty
  - plug: K81
  - reconnect: link-battery
  - stop: The winding is not sound. Ask the workshop lead.
`,
  mutants: [
    {
      story: 'the plug is pulled under power',
      changes: [
        [
          '  - disconnect: link-battery\n  - wait: 100 s\n  - unplug: K81\n',
          '  - unplug: K81\n  - disconnect: link-battery\n  - wait: 100 s\n',
        ],
      ],
      finds: ['error work-under-power K81'],
    },
    {
      story: 'the capacitors are not waited for',
      changes: [['  - wait: 100 s\n', '']],
      finds: ['error short-wait K81', 'error powered-measurement winding-plus..ground'],
    },
    {
      story: 'the wait is too short for the reserve',
      changes: [['  - wait: 100 s\n', '  - wait: 30 s\n']],
      finds: ['error short-wait K81'],
    },
    {
      story: 'it is plugged again with the battery on',
      changes: [
        [
          '    id: faulty\n  - plug: K81\n  - reconnect: link-battery\n',
          '    id: faulty\n  - reconnect: link-battery\n  - plug: K81\n',
        ],
      ],
      finds: ['error work-under-power K81'],
    },
    {
      story: 'the reserve is left out',
      changes: [
        [
          '    reserve: { capacitance: 3 mF ± 20 %, charged-to: 52 V, bleed: 10 kΩ ± 5 %, safe-below: 5 V }\n',
          '',
        ],
      ],
      finds: ['error no-wait link-battery'],
    },
    {
      story: 'a power-off that only turns the key',
      changes: [
        ['  - disconnect: link-battery\n', ''],
        [
          '    outcomes: { within: next, else: faulty }\n  - plug: K81\n  - reconnect: link-battery\n',
          '    outcomes: { within: next, else: faulty }\n  - plug: K81\n',
        ],
        ['    id: faulty\n  - plug: K81\n  - reconnect: link-battery\n', '    id: faulty\n  - plug: K81\n'],
      ],
      finds: ['error work-under-power K81'],
    },
  ],
};
