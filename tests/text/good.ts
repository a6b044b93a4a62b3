/** A sound procedure in the invented scenario of the tests. It gives no findings. */
export const good = `format: 1
title: Driver front airbag, stage 1 - loop resistance too high
applies-to: Halden V4 parcel van, restraint training rig
revision: B
requires: { training: [restraint systems], protective: [eye protection] }
conditions: { ambient: 10..35 °C }
sources:
  battery:
    kind: battery
    voltage: 12.6 V
    feeds: [control-unit]
    wait: 3 min
    reserve: { capacitance: 6.8 mF ± 20 %, charged-to: 24 V, bleed: 4.7 kΩ ± 5 %, safe-below: 2 V }
instruments:
  control-unit:
    kind: monitor
    range: 0..10 Ω
    accuracy: 3 % + 0.1 Ω
    resolution: 0.01 Ω
    test-current: 40 mA
    codes: { too-low: below 1.0 Ω, too-high: above 4.5 Ω }
    leak: below 5 kΩ
loads:
  bench-lamp: { kind: lamp, resistance: 3.0 Ω ± 5 % }
parts:
  dash-harness: { kind: cable, wire: 0.5 mm², length: 1.2 m }
  coil-coupling: { kind: rotary-coupling, resistance: 0.05..0.15 Ω }
  stage-1: { kind: initiator, resistance: 1.7..2.3 Ω, no-fire: 400 mA, live: true }
connectors:
  K10: { contact: 2..15 mΩ }
  K21: { contact: 2..15 mΩ }
  K30: { contact: 2..15 mΩ, shorting-bar: { side: end, closes: unlocked, resistance: 0.2..0.4 Ω } }
loops:
  stage-1-loop:
    path: [control-unit, K10, dash-harness, K21, coil-coupling, K30, stage-1]
    pins: { K10: [3, 4], K21: ["01", 2] }
steps:
  - section: Confirm
  - ignition: on
  - read-codes: control-unit
  - read: stage-1-loop
    id: complaint
    outcomes: { within: finish, below: stop-low, else: make-safe }
  - section: Make safe
  - ignition: off
    id: make-safe
  - disconnect: battery
  - wait: 3 min
  - unplug: K30
  - fit: bench-lamp
    at: K30.monitor
  - reconnect: battery
    warning: Nobody in front of the airbag while power comes back.
  - ignition: on
  - read: [stage-1-loop]
    id: lamp-at-stage
    outcomes: { stage-1-loop: { open: next }, within: blame-stage, else: blame-coupling }
  - conclude: coil-coupling
    id: blame-coupling
  - go: put-back
  - conclude: stage-1
    id: blame-stage
  - ignition: off
    id: put-back
  - disconnect: battery
  - wait: 3 min
  - remove: bench-lamp
  - plug: K30
  - inspect: Look at the pins of K30.
    at: [K30.monitor, stage-1]
    outcomes: { ok: next, defect: stop-low }
  - reconnect: battery
  - ignition: on
  - read: stage-1-loop
    expect: 1.9..4.0 Ω
  - clear-codes: control-unit
    id: finish
    minutes: 1.5
  - ignition: off
  - stop: The work is done.
  - stop: The loop reads too low. Look for a bridged pair.
    id: stop-low
    leaves: [codes, repair]
`;
