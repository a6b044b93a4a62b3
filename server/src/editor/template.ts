/**
 * A new procedure: complete and in a safe order, but with invented values. It says so (`example: true`, TODO), and stays
 * a draft until its writer has put the manufacturer's values in their places.
 */
export const template = `title: TODO what is wrong, and in which circuit
format: 1
example: true # INVENTED VALUES. Replace every value, text and step, then delete this line.
applies-to: TODO vehicle, model year, system
revision: A
purpose: TODO what this procedure finds or does
requires:
  training: [restraint systems]
  protective: [eye protection]
  information: [maker's service information]

conditions: { ambient: 10..35 °C }

sources:
  battery: { kind: battery, voltage: 12.6 V, feeds: [control-unit], wait: 3 min } # EXAMPLE VALUE

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
    warning: If the cable touches the terminal again, power is back and the airbags can fire.
  - wait: 3 min
  - section: Work
  - unplug: K30
    warning: An airbag that deploys can cause death or serious injury. Touch bare metal first, and stay clear of the front of the airbag.
  - plug: K30
  - section: Restore the vehicle
  - reconnect: battery
    warning: An airbag that deploys can cause death or serious injury. Keep all persons clear of the airbags while power comes back.
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
