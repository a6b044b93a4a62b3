/** Two coils of one temperature pull the voltage between them either way: the search over it stops at an outer bound. */
export const coils = `format: 1
title: Two coils in series
conditions: { ambient: -20..60 °C }
sources:
  battery: { kind: battery, voltage: 12 V, resistance: 0 Ω, feeds: [upper] }
instruments:
  hand-meter:
    kind: multimeter
    voltage: { range: 0..40 V, accuracy: 0.5 % + 2 digits, resolution: 0.01 V, input: 10 MΩ }
parts:
  upper: { kind: coil, resistance: 12 Ω ± 5 % }
  lower: { kind: coil, resistance: 12 Ω ± 5 % }
network:
  - { source: battery, between: [plus, ground] }
  - { part: upper, between: [plus, middle] }
  - { part: lower, between: [middle, ground] }
steps:
  - ignition: on
  - measure: voltage
    across: [middle, ground]
    with: hand-meter
  - measure: voltage
    across: [plus, ground]
    with: hand-meter
`;

/**
 * A coil and a thermistor of one temperature pull the resistance between them either way, with the least inside the range.
 * Of how the thermistor bends nothing is known, since C is large beside B: the search stops before it meets the least.
 */
export const bent = `format: 1
title: Coil and sensor in series
conditions: { ambient: 10..40 °C }
sources:
  battery: { kind: battery, voltage: 12 V, feeds: [coil] }
instruments:
  hand-meter:
    kind: multimeter
    zeroed: true
    resistance: { range: 0..4 kΩ, accuracy: 0.5 % + 2 digits, resolution: 1 Ω }
parts:
  coil: { kind: coil, resistance: 900 Ω }
  sensor: { kind: thermistor, coefficients: [2.861e-3, 1e-6, 5e-6], tolerance: 1 °C }
network:
  - { source: battery, between: [plus, ground] }
  - { part: coil, between: [plus, middle] }
  - { part: sensor, between: [middle, end] }
steps:
  - disconnect: battery
  - measure: resistance
    across: [plus, end]
    with: hand-meter
  - measure: resistance
    across: [plus, middle]
    with: hand-meter
  - reconnect: battery
`;
