/** Two coils of one temperature pull the voltage between them either way: the search over it stops at an outer bound. */
export const coils = `format: 1
title: Two coils in series
conditions: { ambient: -20..60 °C }
sources:
  battery: { kind: battery, voltage: 12 V, feeds: [upper] }
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
