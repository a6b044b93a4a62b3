/** A new procedure: complete, and without a finding, so that a writer starts from something that holds. */
export const template = `title: New procedure
format: 1
applies-to: which vehicle or rig
revision: A
purpose: What is found out, or done.
requires:
  training: [restraint systems]
  protective: [eye protection]
  information: [maker's service information]

conditions: { ambient: 10..35 °C }

sources:
  battery: { kind: battery, voltage: 12.6 V, feeds: [control-unit], wait: 3 min } # the wait as the maker states it

instruments:
  control-unit: { kind: monitor, range: 0..10 Ω, accuracy: 3 % + 0.1 Ω, resolution: 0.01 Ω, test-current: 10 mA }

loads:
  bench-lamp: { kind: lamp, resistance: 3.0 Ω ± 5 % } # measured cold

parts:
  coil-coupling: { kind: rotary-coupling, resistance: 0.05..0.15 Ω }
  stage-1: { kind: initiator, resistance: 1.7..2.3 Ω, no-fire: 400 mA, live: true }

connectors:
  K30: { contact: 2..15 mΩ, shorting-bar: { side: end, closes: unlocked, resistance: 0.2..0.4 Ω } }

loops:
  stage-1-loop: { path: [control-unit, coil-coupling, K30, stage-1] }

steps:
  - section: Confirm
  - ignition: on
  - read-codes: control-unit
  - section: Make safe
  - ignition: off
  - disconnect: battery
  - wait: 3 min
  - section: Work
  - unplug: K30
    warning: Touch bare metal first, and stay clear of the front of the airbag.
  - plug: K30
  - section: As it was
  - reconnect: battery
  - ignition: on
  - clear-codes: control-unit
  - read: stage-1-loop
    outcomes: { within: sound, else: faulty }
  - stop: The loop is sound.
    id: sound
  - stop: The loop is not sound. Ask the workshop lead.
    id: faulty
    leaves: [repair]
`;
