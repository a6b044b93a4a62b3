/**
 * A restraint loop with the values that are usual in the trade: common practice, no source. Two connectors with 5 mΩ to
 * 10 mΩ a contact, a rotary coupling of 0.1 Ω a conductor, a harness of 0.5 mm² and 1.2 m, a stage of 2 Ω, a shorting
 * bar of 0.3 Ω, and a monitor that reads to 10 Ω in steps of 0.01 Ω.
 */
export function restraintCircuit(steps: string): string {
  return `format: 1
title: Circuit of a test
sources:
  battery: { kind: battery, voltage: 12.6 V, feeds: [control-unit], wait: 3 min }
instruments:
  control-unit: { kind: monitor, range: 0..10 Ω, accuracy: 2 % + 0.05 Ω, resolution: 0.01 Ω }
loads:
  bench-lamp: { kind: lamp, resistance: 3.0 Ω ± 5 % }
  load-plug: { kind: resistor, resistance: 2.2 Ω ± 1 %, opens-shorting-bar: true }
parts:
  dash-harness: { kind: cable, wire: 0.5 mm², length: 1.2 m }
  coil-coupling: { kind: rotary-coupling, resistance: 0.05..0.15 Ω }
  stage-1: { kind: initiator, resistance: 2.0 Ω ± 0.3 Ω, live: true }
connectors:
  K10: { contact: 5..10 mΩ, shorting-bar: { side: end, closes: unplugged, resistance: 0.2..0.4 Ω } }
  K30: { contact: 5..10 mΩ, shorting-bar: { side: end, closes: unlocked, resistance: 0.2..0.4 Ω } }
loops:
  driver-loop: { path: [control-unit, K10, dash-harness, coil-coupling, K30, stage-1] }
steps:
${steps
  .split('\n')
  .filter((line) => line !== '')
  .map((line) => `  ${line}\n`)
  .join('')}`;
}
