import type { Job } from './job.ts';

/** A high-voltage heater: isolated, waited for, proven dead and parted, then measured in ohms. */
export const heater: Job = {
  name: 'high-voltage heater',
  text: `format: 1
title: High-voltage heater - resistance of the elements
requires: { training: [high-voltage vehicles], protective: [insulating gloves], information: [maker's service information] }
sources:
  battery: { kind: battery, voltage: 12.2..12.8 V, feeds: [heater-unit] }
  traction: { kind: high-voltage, voltage: 320..410 V, isolated-by: S1, wait: 5 min }
instruments:
  hand-meter:
    kind: multimeter
    voltage: { range: 0..600 V, accuracy: 0.5 % + 2 digits, resolution: 0.1 V, input: 10 MΩ }
    resistance: { range: 0..400 Ω, accuracy: 0.5 % + 2 digits, resolution: 0.1 Ω, test-current: 1 mA }
    leads: 0.1..0.3 Ω
parts:
  link-plus-cable: { kind: cable, resistance: 2..6 mΩ }
  link-minus-cable: { kind: cable, resistance: 2..6 mΩ }
  element: { kind: heater, resistance: 30..36 Ω }
  heater-unit: { kind: resistor, resistance: 1..2 kΩ }
connectors:
  S1: { contact: 1..5 mΩ, sides: [pack, link] }
  K90: { contact: 1..5 mΩ, sides: [link, heater] }
network:
  - { source: traction, between: [pack-plus, pack-minus] }
  - { connector: S1, pin: 1, between: [pack-plus, link-plus] }
  - { connector: S1, pin: 2, between: [pack-minus, link-minus] }
  - { part: link-plus-cable, between: [link-plus, heater-plug-plus] }
  - { part: link-minus-cable, between: [link-minus, heater-plug-minus] }
  - { connector: K90, pin: 1, between: [heater-plug-plus, heater-plus] }
  - { connector: K90, pin: 2, between: [heater-plug-minus, heater-minus] }
  - { part: element, between: [heater-plus, heater-minus] }
  - { source: battery, between: [unit-plus, ground] }
  - { part: heater-unit, between: [unit-plus, ground] }
steps:
  - ignition: off
  - disconnect: traction
    danger: High voltage kills. Wear the insulating gloves from here on.
  - wait: 5 min
  - prove-dead: traction
    at: K90.link
    with: hand-meter
    known: battery
    danger: Until this is proven the pins count as live.
  - unplug: K90
  - measure: resistance
    across: K90.heater
    with: hand-meter
    outcomes: { within: next, else: faulty }
  - plug: K90
  - reconnect: traction
    danger: High voltage comes back. Keep everybody away from its parts.
  - stop: The element is sound.
  - conclude: element
    id: faulty
  - plug: K90
  - reconnect: traction
    danger: High voltage comes back. Keep everybody away from its parts.
  - stop: The element is not sound. Ask the workshop lead.
`,
  mutants: [
    {
      story: 'nobody waits',
      changes: [['  - wait: 5 min\n', '']],
      finds: ['error proof-too-early traction'],
    },
    {
      story: 'nobody proves',
      changes: [
        [
          '  - prove-dead: traction\n    at: K90.link\n    with: hand-meter\n    known: battery\n    danger: Until this is proven the pins count as live.\n',
          '',
        ],
      ],
      finds: ['error not-proven-dead K90'],
    },
    {
      story: 'it is measured at the nodes of the heater without taking power away',
      changes: [
        [
          '  - ignition: off\n',
          '  - ignition: off\n  - measure: resistance\n    across: [heater-plus, heater-minus]\n    with: hand-meter\n',
        ],
      ],
      finds: ['error live-touch heater-plus', 'error powered-measurement heater-plus..heater-minus'],
    },
    {
      story: 'it is measured with the heater still on the link, before the proof',
      changes: [
        [
          '  - prove-dead: traction\n',
          '  - measure: resistance\n    across: [heater-plus, heater-minus]\n    with: hand-meter\n  - prove-dead: traction\n',
        ],
      ],
      finds: ['error not-proven-dead heater-plus', 'error not-proven-dead heater-minus'],
    },
    {
      story: 'the heater is unplugged first, and only the link is proven dead',
      changes: [
        [
          '  - prove-dead: traction\n    at: K90.link\n',
          '  - unplug: K90\n  - prove-dead: traction\n    at: K90.link\n',
        ],
        [
          '  - unplug: K90\n  - measure: resistance\n    across: K90.heater\n',
          '  - measure: resistance\n    across: K90.heater\n',
        ],
      ],
      // The first touch counts as right once it is told.
      finds: ['error not-proven-dead K90'],
    },
    {
      story: 'the poles of the pack are measured, which are never dead',
      changes: [
        [
          '  - unplug: K90\n  - measure: resistance\n    across: K90.heater\n',
          '  - unplug: K90\n  - measure: resistance\n    across: [pack-plus, pack-minus]\n    with: hand-meter\n  - measure: resistance\n    across: K90.heater\n',
        ],
      ],
      finds: ['error live-touch pack-plus', 'error powered-measurement pack-plus..pack-minus'],
    },
    {
      story: 'high voltage comes back with the heater unplugged, with a danger',
      changes: [
        [
          '  - conclude: element\n    id: faulty\n  - plug: K90\n  - reconnect: traction\n    danger: High voltage comes back. Keep everybody away from its parts.\n',
          '  - conclude: element\n    id: faulty\n  - reconnect: traction\n    danger: High voltage comes back. Keep everybody away from its parts.\n',
        ],
        [
          '  - stop: The element is not sound. Ask the workshop lead.\n',
          '  - stop: The element is not sound. Ask the workshop lead.\n    leaves: [K90]\n',
        ],
      ],
      finds: ['error half-open pack-plus'],
    },
    {
      story: 'an earlier look at the element of a running heater',
      changes: [['  - disconnect: traction\n', '  - replace: element\n  - disconnect: traction\n']],
      finds: ['error live-touch element'],
    },
  ],
};
