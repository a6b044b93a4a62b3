/* A small procedure in which every section of the format stands, and the parts file that it uses. */

export const partsFile = 'shared.parts.yaml';

export const parts = `format: 1
title: What several procedures share
connectors:
  S1: { contact: 2..15 mΩ }
  K7: { contact: 2..15 mΩ, sides: [front, rear], carries: traction, shorting-bar: { side: rear, closes: unplugged, resistance: 0.2..0.4 Ω, pins: [1, 2] } }
parts:
  end-resistor: { kind: resistor, resistance: 120 Ω ± 1 % }
loads:
  load-plug: { kind: resistor, resistance: 120 Ω }
sources:
  traction: { kind: high-voltage, voltage: 400 V, isolated-by: S1, wait: 5 min, safe-below: 30 V }
`;

export const using = `format: 1
title: Interlock, sensor and stage
uses: [${partsFile}]
applies-to: A rig
revision: C
purpose: Find what opens the loop.
requires: { training: [high voltage], protective: [gloves], information: [circuit diagram] }
conditions: { ambient: 10..35 °C }
sources:
  battery: { kind: battery, voltage: 12..12.8 V, feeds: [vehicle-unit], wait: 1 min, reserve: { capacitance: 6.8 mF ± 20 %, charged-to: 24 V, bleed: 4.7 kΩ ± 5 %, safe-below: 2 V } }
  five-volts: { kind: regulated, voltage: 5 V ± 2 %, from: battery, needs: ignition-on }
entries:
  coolant: { ask: Coolant temperature, range: 15..90 °C, accuracy: 1 °C }
instruments:
  vehicle-unit: { kind: monitor, range: 0..400 Ω, accuracy: 2 % + 1 Ω, resolution: 1 Ω, test-current: 10 mA, codes: { too-low: below 60 Ω, too-high: above 200 Ω }, leak: below 5 kΩ }
  hand-meter:
    kind: multimeter
    resistance: { range: 0..400 Ω, accuracy: 0.5 % + 2 digits, resolution: 0.1 Ω, test-current: 1 mA, further: [{ range: 0..40 kΩ, accuracy: 1 %, resolution: 10 Ω }] }
    voltage: { range: 0..600 V, accuracy: 1 %, resolution: 0.1 V, input: 10 MΩ }
    leads: 0.1..0.3 Ω
parts:
  harness: { kind: cable, wire: 0.5 mm², length: 1.2 m }
  stage: { kind: initiator, resistance: 1.7..2.3 Ω, no-fire: 400 mA, live: true }
  sensor: { kind: thermistor, r25: 10 kΩ, beta: 3380 K ± 1 %, tolerance: 3 %, temperature: coolant }
  platinum: { kind: rtd, r0: 100 Ω, class: B, temperature: 20..30 °C }
  pull-up: { kind: resistor, resistance: 2.2 kΩ, series: E24 }
  lamp: { kind: lamp, rated: 12 V 5 W }
  blade-fuse: { kind: fuse, rated: 10 A }
connectors:
  K30: { contact: 2..15 mΩ, shorting-bar: { side: end, closes: unlocked, resistance: 0.2..0.4 Ω } }
  K40: { contact: 5 mΩ }
assemblies: { box: [end-resistor, K7] }
loops:
  interlock: { path: [vehicle-unit, S1, K7, harness, end-resistor] }
  stage-loop: { path: [vehicle-unit, K30, stage], pins: { K30: [3, "04"] } }
network:
  - { source: five-volts, between: [plus, ground] }
  - { part: pull-up, between: [plus, K40.monitor.1] }
  - { connector: K40, pin: 1, between: [a, b] }
  - { part: sensor, between: [b, ground] }
waivers:
  - { rule: hands-in-text, step: look, reason: The text stands as the maker has it. }
routines:
  make-dead:
    needs: { where: side, source: source, meter: instrument, thing: part, joint: connector, load: load, circuit: loop }
    steps:
      - ignition: off
      - disconnect: source
      - wait: 5 min
      - prove-dead: source
        at: where
        with: meter
        known: battery
        outcomes: { dead: next, live: again }
        id: again
      - replace: thing
      - unplug: joint
        danger: High voltage.
      - fit: load
        at: where
      - read: circuit
steps:
  - section: Look
  - ignition: on
  - read-codes: vehicle-unit
    outcomes: { none: next, else: next }
  - inspect: Is K30 whole?
    id: look
    at: [K30.end, stage]
    outcomes: { ok: next, defect: hand-over }
  - read: [interlock, stage-loop]
    outcomes: { interlock: { open: next, leak: next }, within: hand-over, else: next }
  - measure: resistance
    across: K40.end
    with: hand-meter
    windows: { cold: 20..40 kΩ, hot: 1..3 kΩ }
    outcomes: { within: next, cold: next, hot: next, else: hand-over }
  - measure: voltage
    across: [plus, ground]
    with: hand-meter
    expect: 4.9..5.1 V
  - run: make-dead
    given: { where: K7.rear, source: traction, meter: hand-meter, thing: end-resistor, joint: K7, load: load-plug, circuit: interlock }
  - section: Give back
  - move: load-plug
    to: K7.front
    loop: interlock
  - remove: load-plug
  - plug: K7
  - reconnect: traction
    warning: Nobody at the box.
  - conclude: [box, harness]
  - conclude: none
  - go: hand-over
  - do: Write it down.
    at: K7
    note: Wait, then plug K7.
    minutes: 2.5
    see: Sheet 3
    why: So it stays.
    caution: Hot.
  - clear-codes: vehicle-unit
    id: hand-over
  - unlock: K30
  - stop: Hand over.
    leaves: [traction, K7, codes, repair, K30]
`;
