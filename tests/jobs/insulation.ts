import type { Job } from './job.ts';

const proveAfter =
  '  - prove-dead: traction\n    at: K90.heater\n    with: hand-meter\n    known: battery\n    danger: The heater still holds the voltage of the tester.\n';

/** A high-voltage heater: its insulation to ground, with 500 V, after it was isolated, proven dead and parted. */
export const insulation: Job = {
  name: 'high-voltage insulation',
  text: `format: 1
title: High-voltage heater - insulation of the elements
requires: { training: [high-voltage vehicles], protective: [insulating gloves], information: [maker's service information] }
sources:
  battery: { kind: battery, voltage: 12.2..12.8 V, feeds: [heater-unit], wait: 1 min }
  traction: { kind: high-voltage, voltage: 320..410 V, isolated-by: S1, wait: 5 min }
instruments:
  hand-meter:
    kind: multimeter
    voltage: { range: 0..600 V, accuracy: 0.5 % + 2 digits, resolution: 0.1 V, input: 10 MΩ }
  tester:
    kind: multimeter
    insulation: { range: 0..2 GΩ, accuracy: 3 % + 5 digits, resolution: 10 kΩ, discharge: 10 s }
parts:
  link-plus-cable: { kind: cable, resistance: 2..6 mΩ, withstands: 1000 V }
  link-minus-cable: { kind: cable, resistance: 2..6 mΩ, withstands: 1000 V }
  inverter: { kind: resistor, resistance: 100..200 kΩ }
  element: { kind: heater, resistance: 30..36 Ω, withstands: 1000 V }
  heater-unit: { kind: resistor, resistance: 1..2 kΩ }
connectors:
  S1: { contact: 1..5 mΩ, sides: [pack, link], withstands: 1000 V }
  K90: { contact: 1..5 mΩ, sides: [link, heater], withstands: 1000 V }
network:
  - { source: traction, between: [pack-plus, pack-minus] }
  - { connector: S1, pin: 1, between: [pack-plus, link-plus] }
  - { connector: S1, pin: 2, between: [pack-minus, link-minus] }
  - { part: inverter, between: [link-plus, link-minus] }
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
  - measure: insulation
    across: [K90.heater.1, ground]
    at-voltage: 500 V
    with: tester
    expect: above 500 kΩ
    outcomes: { within: next, else: faulty }
${proveAfter}  - plug: K90
  - reconnect: traction
    danger: High voltage comes back. Keep everybody away from its parts.
  - stop: The insulation is sound.
  - conclude: element
    id: faulty
${proveAfter.replace('traction\n', 'traction\n    id: faulty-dead\n')}  - plug: K90
  - reconnect: traction
    danger: High voltage comes back. Keep everybody away from its parts.
  - stop: The insulation is not sound. Ask the workshop lead.
`,
  mutants: [
    {
      story: 'K90 is mated with the charge of the tester still on the heater',
      changes: [
        [
          `outcomes: { within: next, else: faulty }\n${proveAfter}`,
          'outcomes: { within: next, else: faulty }\n',
        ],
      ],
      finds: ['error short-wait K90'],
    },
    {
      story: 'a wait in place of the proof, although the tester had 500 V',
      changes: [
        [
          `outcomes: { within: next, else: faulty }\n${proveAfter}`,
          'outcomes: { within: next, else: faulty }\n  - wait: 10 min\n',
        ],
      ],
      finds: ['error short-wait K90'],
    },
    {
      story: 'it is measured with the inverter still on it',
      changes: [['across: [K90.heater.1, ground]', 'across: [K90.link.1, ground]']],
      finds: ['error insulation-on-electronics inverter'],
    },
    {
      story: 'K90 stays mated',
      changes: [
        ['  - unplug: K90\n', ''],
        [`${proveAfter}  - plug: K90\n`, proveAfter],
        [
          '    danger: The heater still holds the voltage of the tester.\n  - plug: K90\n  - reconnect: traction\n    danger: High voltage comes back. Keep everybody away from its parts.\n  - stop: The insulation is not sound.',
          '    danger: The heater still holds the voltage of the tester.\n  - reconnect: traction\n    danger: High voltage comes back. Keep everybody away from its parts.\n  - stop: The insulation is not sound.',
        ],
      ],
      finds: ['error insulation-on-electronics inverter'],
    },
    {
      story: 'more than the heater withstands',
      changes: [['at-voltage: 500 V', 'at-voltage: 1500 V']],
      finds: ['error insulation-on-electronics K90'],
    },
    {
      story: 'nobody waits, proves and isolates',
      changes: [
        [
          '  - disconnect: traction\n    danger: High voltage kills. Wear the insulating gloves from here on.\n  - wait: 5 min\n',
          '',
        ],
      ],
      finds: ['error proof-too-early traction'],
    },
    {
      story: 'the tester is held to the 12 V unit of the heater',
      changes: [['across: [K90.heater.1, ground]', 'across: [unit-plus, ground]']],
      finds: ['error powered-measurement unit-plus..ground', 'error insulation-on-electronics battery'],
    },
    {
      story: 'it is not said from where it counts as sound',
      changes: [['    expect: above 500 kΩ\n', '']],
      finds: ['error window-undefined K90.heater.1..ground'],
    },
  ],
};
