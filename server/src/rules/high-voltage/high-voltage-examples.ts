import { example } from '../examples.ts';
import type { Example } from '../rule.ts';

/* The examples about high voltage share one interlock loop: its monitor runs on the battery, its connectors lead the traction voltage too. */

const circuit = {
  sources: `sources:
  battery: { kind: battery, voltage: 12.6 V, feeds: [control-unit], wait: 0.5 min }
  traction: { kind: high-voltage, voltage: 320..410 V, isolated-by: S1, wait: 5 min }
`,
  instruments: `instruments:
  control-unit: { kind: monitor, range: 0..400 Ω, accuracy: 2 % + 1 Ω, resolution: 1 Ω }
  hand-meter: { kind: multimeter, voltage: { range: 0..600 V, accuracy: 0.5 % + 2 digits, resolution: 0.1 V, input: 10 MΩ } }
`,
  parts: `parts:
  end-resistor: { kind: resistor, resistance: 120 Ω ± 5 % }
`,
  connectors: `connectors:
  S1: { contact: 2..15 mΩ }
  K7: { contact: 2..15 mΩ, carries: traction }
  K8: { contact: 2..15 mΩ }
`,
  loops: `loops:
  interlock: { path: [control-unit, S1, K7, K8, end-resistor] }
`,
  loads: '',
} as const;

export function highVoltageExample(
  shows: string,
  steps: string,
  changed: Partial<Record<keyof typeof circuit, string>> = {},
): Example {
  return example(shows, steps, { ...circuit, ...changed });
}

export const takeAway = `
- ignition: on
- read-codes: control-unit
- ignition: off
- disconnect: traction
  danger: Wear the insulating gloves from here on.
`;

export const proveDead = `
- prove-dead: traction
  at: K7.end
  with: hand-meter
  known: battery
`;

export const handsAndBack = `
- unplug: K7
- plug: K7
- reconnect: traction
  danger: High voltage comes back.
- ignition: on
- clear-codes: control-unit
- read: interlock
  outcomes: { within: sound, else: faulty }
- stop: The interlock is sound.
  id: sound
- stop: The interlock is not sound. Ask the workshop lead.
  id: faulty
  leaves: [repair]
`;
