import type { Example } from './rule.ts';

/* The examples of the rules share one small circuit, so that a reader has to look at the steps only. */

/** A stated wait of three minutes, a stage behind two connectors, and loads to put in its place. */
export const circuit = {
  sources: `sources:
  battery: { kind: battery, voltage: 12.6 V, feeds: [control-unit], wait: 3 min }
`,
  instruments: `instruments:
  control-unit: { kind: monitor, range: 0..10 Ω, accuracy: 3 % + 0.1 Ω, resolution: 0.01 Ω, test-current: 10 mA }
`,
  loads: `loads:
  bench-lamp: { kind: lamp, resistance: 3.0 Ω ± 5 % }
  load-plug: { kind: resistor, resistance: 2.2 Ω ± 1 %, opens-shorting-bar: true }
`,
  parts: `parts:
  coil-coupling: { kind: rotary-coupling, resistance: 0.05..0.15 Ω }
  stage-1: { kind: initiator, resistance: 1.7..2.3 Ω, no-fire: 400 mA, live: true }
`,
  connectors: `connectors:
  K10: { contact: 2..15 mΩ }
  K30: { contact: 2..15 mΩ, shorting-bar: { side: end, closes: unlocked, resistance: 0.2..0.4 Ω } }
`,
  loops: `loops:
  driver-loop: { path: [control-unit, K10, coil-coupling, K30, stage-1] }
`,
} as const;

/** An example on the shared circuit; `changed` takes the place of the section of the same name, or adds one. */
export function example(
  shows: string,
  steps: string,
  changed: Partial<
    Record<keyof typeof circuit | 'network' | 'assemblies' | 'routines' | 'waivers', string>
  > = {},
): Example {
  const sections = { ...circuit, ...changed };
  const text = ['format: 1\ntitle: Example\n', ...Object.values(sections), 'steps:\n', indented(steps)].join(
    '',
  );
  return { shows, text };
}

function indented(steps: string): string {
  return steps
    .split('\n')
    .filter((line) => line.trim() !== '')
    .map((line) => `  ${line}\n`)
    .join('');
}

/** The shared circuit with a multimeter beside the control unit. */
export const withHandMeter = {
  instruments: `${circuit.instruments}  hand-meter:
    kind: multimeter
    resistance: { range: 0..40 Ω, accuracy: 0.5 % + 2 digits, resolution: 0.01 Ω, test-current: 1 mA }
    zeroed: true
`,
};

/** Nothing but a reading. */
export const readOnly = `
- ignition: on
- read-codes: control-unit
- clear-codes: control-unit
- read: driver-loop
`;

/** Codes written down, power taken away, the wait kept. */
export const makeSafe = `
- ignition: on
- read-codes: control-unit
- ignition: off
- disconnect: battery
- wait: 3 min
`;

/** Power given back, codes cleared, and the loop shown to be sound; ends either way. */
export const giveBack = `
- reconnect: battery
- ignition: on
- clear-codes: control-unit
- read: driver-loop
  outcomes: { within: sound, else: faulty }
- stop: The loop is sound.
  id: sound
- stop: The loop is not sound. Ask the workshop lead.
  id: faulty
`;

/** The same after a connector has been opened: where the loop is not sound, that stays on the card. */
export const giveBackOpened = giveBack.replace(
  '  id: faulty\n',
  `  id: faulty
  leaves: [repair]
`,
);

/** K30 is unplugged: power comes back, the loop is read with these loads, and the bench stays as it is. */
export function readAndHandOver(...loads: readonly string[]): string {
  return `
- reconnect: battery
  id: power
  warning: Nobody in front of the airbag while power comes back.
- ignition: on
- read: driver-loop
- ignition: off
- disconnect: battery
- stop: Hand over to the workshop lead.
  leaves: [battery, K30, ${loads.join(', ')}, repair, codes]
`;
}
