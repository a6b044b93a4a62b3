/** Definitions that the procedure below uses. */
export const sharedParts = `format: 1
title: Shared
parts:
  shared-lamp: { kind: lamp, rated: 12 V 21 W }
connectors:
  K9: { contact: 5 mΩ }
routines:
  look:
    needs: { what: connector }
    steps:
      - inspect: Look at it.
        at: what
        of: what
`;

/** A procedure that is read without an error and has every key of the format once at least, in brackets or in lines. */
export const everyKey = `format: 1
uses: [shared.parts.yaml]
title: "All of it"
applies-to: 'The rig''s first half'
revision: B
purpose: |
  Every key once,
  over lines.
requires:
  training: [restraint systems]
  protective:
    - eye protection
    - gloves
  information: [handbook]
conditions: { ambient: 10..35 °C }
sources:
  battery: { kind: battery, voltage: 12.6 V, resistance: 5..20 mΩ, feeds: [unit, seat-heater], wait: 1 min }
  second:
    kind: battery
    voltage: 12..14 V
    feeds: unit
    reserve: { capacitance: 6.8 mF ± 20 %, charged-to: 24 V, bleed: 4.7 kΩ ± 5 %, safe-below: 2 V }
  traction:
    kind: high-voltage
    voltage: 400 V
    feeds: [inverter]
    isolated-by: S1
    wait: 5 min
    safe-below: 50 V
    reserve: { capacitance: 1 mF, charged-to: 400 V, bleed: 10 kΩ }
  five: { kind: regulated, voltage: 5 V ± 2 %, from: battery, needs: ignition-on, after-run: 10 s }
entries:
  coolant: { ask: There, range: 15..90 °C, accuracy: 1 °C }
instruments:
  unit:
    kind: monitor
    range: 0..10 Ω
    accuracy: 1 %
    resolution: 0.1 Ω
    test-current: 40 mA
    codes: { too-low: below 1 Ω, too-high: above 4.5 Ω }
    leak: below 5 kΩ
  ohms:
    kind: multimeter
    leads: 0.1 Ω
    resistance:
      range: 0..400 Ω
      accuracy: 1 % + 2 digits
      resolution: 0.1 Ω
      test-current: 1 mA
      further: [{ range: 0..4 kΩ, accuracy: 1 %, resolution: 1 Ω }]
  volts:
    kind: multimeter
    zeroed: true
    voltage: { range: 0..600 V, accuracy: 1 %, resolution: 1 V, input: 10 MΩ }
  tester:
    kind: multimeter
    insulation: { range: 0..2 GΩ, accuracy: 3 % + 2 digits, resolution: 10 kΩ, discharge: 10 s }
    current: { range: 0..10 A, accuracy: 1 % + 3 digits, resolution: 1 mA, burden: 20..50 mΩ }
    clamp: { range: 0..60 A, accuracy: 2 % + 5 digits, resolution: 10 mA }
loads:
  plug-load: { kind: resistor, resistance: 2.2 Ω, series: E24, opens-shorting-bar: true }
  cold-lamp: { kind: lamp, resistance: 3 Ω, hot: 30 Ω, opens-shorting-bar: false }
  rated-lamp: { kind: lamp, rated: 13.5 V 5 W, opens-shorting-bar: true, withstands: 100 V }
parts:
  wire: { kind: cable, wire: AWG 20, length: 1 m, temperature: coolant }
  harness: { kind: cable, resistance: 50 mΩ, withstands: 100 V }
  coupling: { kind: rotary-coupling, resistance: 0.05..0.15 Ω }
  filter: { kind: series, resistance: 50 mΩ }
  stage: { kind: initiator, resistance: 1.7..2.3 Ω, live: true, no-fire: 400 mA }
  inverter: { kind: hv-section, voltage: 400 V, resistance: 100 kΩ, live: true }
  seat-heater: { kind: heater, resistance: 4 Ω, hot: same }
  screen-heater: { kind: heater, rated: 12 V 120 W }
  buckle: { kind: switch, resistance: 20 mΩ }
  valve: { kind: coil, resistance: 12 Ω, at: 23 °C, temperature: coolant }
  sensor: { kind: thermistor, r25: 10 kΩ, beta: 3380 K, tolerance: 3 %, temperature: 15..20 °C }
  probe: { kind: thermistor, coefficients: [1.129148e-3, 2.34125e-4, 8.76741e-8], tolerance: 1 °C, temperature: coolant }
  platinum: { kind: rtd, r0: 100 Ω, class: AA, temperature: coolant }
  end-resistor: { kind: resistor, resistance: 2.2 kΩ, series: E24 }
  bulb: { kind: lamp, resistance: 2 Ω, hot: 20..25 Ω }
  rated-bulb: { kind: lamp, rated: 12 V 21 W }
  starter: { kind: consumer, draws: 150 A ± 20 A, always: true }
  spare-fuse: { kind: fuse, resistance: 8 mΩ }
  blade-fuse: { kind: fuse, rated: 7.5 A }
  pedal: { kind: potentiometer, track: 1 kΩ ± 20 %, wiper: 10..90 % }
connectors:
  K1:
    contact: 5 mΩ
    shorting-bar: { side: monitor, closes: unplugged, resistance: 0.3 Ω, pins: [3, A2] }
  K2: { contact: 2..15 mΩ, sides: [here, there], withstands: 100 V }
  K7: { contact: 5 mΩ, carries: traction }
  K8: { contact: 5 mΩ, carries: [traction] }
  S1: { contact: 5 mΩ }
assemblies:
  module: [stage, K1]
  wheel: coupling
loops:
  squib: { path: [unit, K1, coupling, stage], pins: { K1: [3, A2] } }
  interlock:
    path:
      - unit
      - S1
      - K7
      - K1
      - bulb
    pins: { K1: ["01", 2] }
network:
  - { part: sensor, between: [plus, K2.there.1] }
  - connector: K2
    pin: 1
    between: [feed, ground]
  - { source: five, between: [plus, ground] }
  - { part: pedal, between: [plus, feed, ground] }
routines:
  fit-it:
    needs: { where: side, load: load, thing: part, joint: connector, circuit: loop, meter: instrument, power: source }
    steps:
      - section: In a routine
      - disconnect: power
        id: first
      - fit: load
        at: where
        loop: circuit
      - replace: [thing, joint]
      - clear-codes: meter
waivers:
  - rule: repeats
    reason: For the class.
  - { rule: repeats, step: first, routine: fit-it, reason: "Twice: on purpose." }
steps:
  - section: All verbs
  - run: fit-it
    given: { where: K1.end, load: plug-load, thing: filter, joint: K1, circuit: squib, meter: unit, power: battery }
  - run: look
    given: { what: K9 }
  - ignition: cycle
    see: there
    minutes: 1.5
  - unlock: K1
    notice: o
    caution: c
    danger: d
    warning: |-
      Over
      lines.
    why: >
      Folded
      text.
    note: Loop
      over lines
  - plug: K1
  - unplug: K1
  - disconnect: second
  - reconnect: second
  - wait: 3 min
  - measure: voltage
    across: [plus, ground]
    with: volts
    expect: below 3 V
    windows: { other: 4..5 V }
    outcomes: { within: next, other: last, else: next }
  - measure: resistance
    across: K2.there
    with: ohms
    expect: 1..3 kΩ
    outcomes: { open: next, outside: last }
  - measure: resistance
    across: [K1.end.3, K1.end.A2]
    with: ohms
  - measure: insulation
    across: K2.there
    at-voltage: 50 V
    with: tester
    discharged: true
    expect: above 1 MΩ
    outcomes: { within: next, else: last }
  - measure: current
    around: sensor
    with: tester
    drawing: starter
    expect: below 1 A
    outcomes: { within: next, else: last }
  - measure: current
    in: [K2.here.1, K2.there.1]
    with: tester
    windows: { other: 4..5 A }
    outcomes: { within: next, other: last, else: next }
  - wiggle: [coupling, K1, K2.here]
    watch: squib
    for: 30 s
    expect: 1..3 Ω
    windows: { other: 4..5 Ω }
    outcomes: { leak: next, open: last, other: last, within: next, else: last }
  - wiggle: sensor
    for: 1 min
    quantity: voltage
    across: [plus, ground]
    with: volts
    drawing: starter
    expect: below 3 V
    windows: { other: 4..5 V }
    outcomes: { within: next, other: last, outside: last }
  - prove-dead: traction
    at: K7.end
    with: volts
    known: battery
  - prove-dead: traction
    at: [K7.end.A, S1.monitor.2]
    with: volts
    known: battery
    outcomes: { dead: next, live: last }
  - fit: plug-load
    at: K1.end
    loop: squib
  - move: plug-load
    to: K1.monitor
    loop: interlock
  - remove: plug-load
  - read: [squib, interlock]
    outcomes:
      squib: { leak: next, outside: last }
      within: next
      else: last
  - read: squib
    id: reading
    expect: open
    windows:
      double: 4.4..5.2 Ω
      far: above 8 Ω
    outcomes: { above: next, open: last, double: reading, far: last, below: next, within: next }
  - read-codes: unit
    outcomes: { none: next, stored: last, present: last, else: next }
  - clear-codes: unit
  - inspect: look
    at: K1.end.3
    of: [stage, K1.end]
    outcomes: { ok: next, defect: last, else: next }
  - do: something
    at: [K1, stage, K1.end]
  - do: something else
    at: nothing
    of: stage
  - replace: [module, K1]
  - conclude: none
  - conclude: [stage, K1]
  - go: last
  - stop: done
    leaves: codes
  - stop: over
    id: last
    leaves: [codes, repair, battery, K1, plug-load]
`;
