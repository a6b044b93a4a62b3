import type { Job } from './job.ts';

/** A starter that turns slowly: the current and the drops of feed and earth are measured while it cranks. */
export const starterFeed: Job = {
  name: 'starter feed',
  text: `format: 1
title: Starter turns slowly - drops in feed and earth while it cranks
sources:
  battery: { kind: battery, voltage: 12.2..12.8 V, resistance: 3..8 mΩ, feeds: [starter], wait: 1 min }
instruments:
  hand-meter:
    kind: multimeter
    voltage: { range: 0..20 V, accuracy: 0.5 % + 2 digits, resolution: 0.01 V, input: 10 MΩ }
    clamp: { range: 0..400 A, accuracy: 2 % + 5 digits, resolution: 1 A }
parts:
  feed-cable: { kind: cable, resistance: 0.4..0.8 mΩ }
  earth-strap: { kind: cable, resistance: 0.2..0.4 mΩ }
  starter: { kind: consumer, draws: 180..220 A }
network:
  - { source: battery, between: [battery-plus, battery-minus] }
  - { part: feed-cable, between: [battery-plus, starter-plus] }
  - { part: starter, between: [starter-plus, engine] }
  - { part: earth-strap, between: [engine, battery-minus] }
steps:
  - do: Make sure that the engine cannot start, in the way that its maker says.
  - measure: current
    around: feed-cable
    with: hand-meter
    drawing: starter
    note: Somebody cranks for five seconds, here and at each reading that follows.
    outcomes: { within: feed, else: starter-itself }
  - measure: voltage
    id: feed
    across: [battery-plus, starter-plus]
    with: hand-meter
    drawing: starter
    outcomes: { within: earth, else: feed-side }
  - measure: voltage
    id: earth
    across: [engine, battery-minus]
    with: hand-meter
    drawing: starter
    outcomes: { within: sound, else: earth-side }
  - stop: Feed and earth are sound.
    id: sound
  - conclude: feed-cable
    id: feed-side
  - disconnect: battery
  - wait: 1 min
  - replace: feed-cable
  - reconnect: battery
  - measure: voltage
    across: [battery-plus, starter-plus]
    with: hand-meter
    drawing: starter
    outcomes: { within: sound, else: away }
  - conclude: earth-strap
    id: earth-side
  - disconnect: battery
  - wait: 1 min
  - replace: earth-strap
  - reconnect: battery
  - measure: voltage
    across: [engine, battery-minus]
    with: hand-meter
    drawing: starter
    outcomes: { within: sound, else: away }
  - conclude: starter
    id: starter-itself
  - stop: The starter draws another current than it should. Ask the workshop lead.
  - stop: The drop is still there. Ask the workshop lead.
    id: away
    leaves: [repair]
`,
  mutants: [
    {
      story: 'nobody cranks while the drop in the feed is measured',
      changes: [
        [
          '    id: feed\n    across: [battery-plus, starter-plus]\n    with: hand-meter\n    drawing: starter\n',
          '    id: feed\n    across: [battery-plus, starter-plus]\n    with: hand-meter\n',
        ],
      ],
      finds: ['warning nothing-flows battery-plus..starter-plus'],
    },
    {
      story: 'the drop of another engine is expected',
      changes: [
        [
          '    id: feed\n    across: [battery-plus, starter-plus]\n    with: hand-meter\n    drawing: starter\n',
          '    id: feed\n    across: [battery-plus, starter-plus]\n    with: hand-meter\n    drawing: starter\n    expect: below 0.1 V\n',
        ],
      ],
      finds: ['warning expect-excludes-good battery-plus..starter-plus'],
    },
    {
      story: 'a clamp that ends at 60 A',
      changes: [['clamp: { range: 0..400 A', 'clamp: { range: 0..60 A']],
      finds: ['error unfit-meter feed-cable'],
    },
    {
      story: 'the new cable is not measured again',
      changes: [
        [
          '  - measure: voltage\n    across: [battery-plus, starter-plus]\n    with: hand-meter\n    drawing: starter\n    outcomes: { within: sound, else: away }\n',
          '  - go: sound\n',
        ],
      ],
      finds: ['warning repair-not-verified feed-cable'],
    },
    {
      story: 'the new cable is measured while nobody cranks',
      changes: [
        [
          '    drawing: starter\n    outcomes: { within: sound, else: away }\n  - conclude: earth-strap',
          '    outcomes: { within: sound, else: away }\n  - conclude: earth-strap',
        ],
      ],
      finds: ['warning repair-not-verified feed-cable'],
    },
    {
      story: 'the cable is changed with the battery on',
      changes: [
        [
          '  - disconnect: battery\n  - wait: 1 min\n  - replace: feed-cable\n  - reconnect: battery\n',
          '  - replace: feed-cable\n',
        ],
      ],
      finds: ['warning work-under-power feed-cable'],
    },
    {
      story: 'the battery is off again while the new cable is measured',
      changes: [
        [
          '  - reconnect: battery\n  - measure: voltage\n    across: [battery-plus, starter-plus]\n',
          '  - measure: voltage\n    across: [battery-plus, starter-plus]\n',
        ],
      ],
      finds: ['warning nothing-flows battery-plus..starter-plus'],
    },
    {
      story: 'a meter that shows tenths of a volt',
      changes: [['resolution: 0.01 V', 'resolution: 0.1 V']],
      finds: ['information meter-too-coarse battery-plus..starter-plus'],
    },
    {
      story: 'the cold cable is measured in ohms on the battery',
      changes: [
        [
          '    clamp:',
          '    resistance: { range: 0..400 Ω, accuracy: 0.8 % + 3 digits, resolution: 0.1 Ω, test-current: 1 mA }\n    clamp:',
        ],
        [
          '  - measure: voltage\n    id: feed\n    across: [battery-plus, starter-plus]\n    with: hand-meter\n    drawing: starter\n',
          '  - measure: resistance\n    id: feed\n    across: [battery-plus, starter-plus]\n    with: hand-meter\n',
        ],
      ],
      finds: ['error powered-measurement battery-plus..starter-plus'],
    },
  ],
};
