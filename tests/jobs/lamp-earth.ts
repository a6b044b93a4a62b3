import type { Job } from './job.ts';

/** A dim tail lamp: the drop on its earth side and its own voltage are measured with the lamp on. */
export const lampEarth: Job = {
  name: 'lamp circuit with a bad earth',
  text: `format: 1
title: Tail lamp is dim - drop on the earth side with the lamp on
sources:
  battery: { kind: battery, voltage: 12.2..12.8 V, resistance: 5..20 mΩ, feeds: [tail-lamp], wait: 0 s }
instruments:
  hand-meter:
    kind: multimeter
    voltage: { range: 0..20 V, accuracy: 0.5 % + 2 digits, resolution: 0.001 V, input: 10 MΩ }
parts:
  tail-lamp: { kind: lamp, rated: 12 V 21 W }
  lamp-switch: { kind: switch, resistance: 5..20 mΩ }
  feed-wire: { kind: cable, resistance: 40..60 mΩ }
  earth-wire: { kind: cable, resistance: 8..15 mΩ }
  earth-point: { kind: series, resistance: 0.5..2 mΩ }
connectors:
  K60: { contact: 2..10 mΩ, sides: [harness, lamp] }
network:
  - { source: battery, between: [battery-plus, ground] }
  - { part: lamp-switch, between: [battery-plus, switched] }
  - { part: feed-wire, between: [switched, lamp-feed] }
  - { connector: K60, pin: 1, between: [lamp-feed, lamp-plus] }
  - { part: tail-lamp, between: [lamp-plus, lamp-minus] }
  - { connector: K60, pin: 2, between: [lamp-earth, lamp-minus] }
  - { part: earth-wire, between: [lamp-earth, earth-stud] }
  - { part: earth-point, between: [earth-stud, ground] }
steps:
  - measure: voltage
    across: [lamp-earth, ground]
    with: hand-meter
    id: earth-side
    note: The lamp is on.
    outcomes: { within: at-lamp, else: earth }
  - measure: voltage
    across: [lamp-plus, lamp-minus]
    with: hand-meter
    id: at-lamp
    outcomes: { within: sound, else: feed }
  - measure: voltage
    across: [lamp-earth, earth-stud]
    with: hand-meter
    id: earth
    note: What the wire takes does not come from the earth point.
    outcomes: { within: point, else: wire }
  - conclude: earth-point
    id: point
  - ignition: off
  - disconnect: battery
  - replace: earth-point
  - go: back
  - conclude: earth-wire
    id: wire
  - ignition: off
  - disconnect: battery
  - replace: earth-wire
  - reconnect: battery
    id: back
  - measure: voltage
    across: [lamp-earth, ground]
    with: hand-meter
    id: final
    outcomes: { within: sound-again, else: help }
  - stop: The earth side takes no more than it should.
    id: sound-again
  - stop: The lamp has its voltage. Look for a fault that comes and goes.
    id: sound
  - stop: The earth side is sound and the lamp lacks voltage. Go on with the feed.
    id: feed
  - stop: Ask the workshop lead.
    id: help
    leaves: [repair]
`,
  mutants: [
    {
      story: 'only the cold resistance of the lamp is stated',
      changes: [['rated: 12 V 21 W', 'resistance: 0.5..0.6 Ω']],
      finds: [
        'error window-needs-value lamp-earth..ground',
        'error window-needs-value lamp-plus..lamp-minus',
      ],
    },
    {
      story: 'nothing is said of what is inside of the battery',
      changes: [['12.8 V, resistance: 5..20 mΩ', '12.8 V']],
      finds: ['error window-needs-value lamp-plus..lamp-minus'],
    },
    {
      story: 'a window from the cold resistance leaves out the sound lamp',
      changes: [['    id: at-lamp\n', '    id: at-lamp\n    expect: 8.3..11.3 V\n']],
      finds: ['warning expect-excludes-good lamp-plus..lamp-minus'],
    },
    {
      story: 'the earth side is measured in ohms with the lamp on',
      changes: [
        [
          '  - measure: voltage\n    across: [lamp-earth, ground]\n    with: hand-meter\n    id: earth-side\n',
          '  - measure: resistance\n    across: [lamp-earth, ground]\n    with: hand-meter\n    id: earth-side\n',
        ],
        [
          '    voltage: { range: 0..20 V',
          '    zeroed: true\n    resistance: { range: 0..400 Ω, accuracy: 0.5 % + 2 digits, resolution: 0.01 Ω, test-current: 1 mA }\n    voltage: { range: 0..20 V',
        ],
      ],
      finds: ['error powered-measurement lamp-earth..ground'],
    },
    {
      story: 'the earth wire is replaced with the battery on',
      changes: [
        [
          '    id: wire\n  - ignition: off\n  - disconnect: battery\n  - replace: earth-wire\n  - reconnect: battery\n    id: back\n',
          '    id: wire\n  - replace: earth-wire\n    id: back\n',
        ],
      ],
      finds: ['warning work-under-power earth-wire'],
    },
    {
      story: 'the battery stays off for the last reading',
      changes: [
        ['  - reconnect: battery\n    id: back\n  - measure', '  - measure'],
        ['    id: final\n', '    id: back\n'],
      ],
      finds: ['warning not-restored battery'],
    },
  ],
};
