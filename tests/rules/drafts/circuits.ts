import { circuit } from '../../../server/src/rules/examples.ts';

/* The circuits of the broken drafts, and the passages that most of them share. */

const title = 'format: 1\ntitle: A draft\n';

export type Changes = Readonly<
  Partial<Record<keyof typeof circuit | 'network' | 'uses' | 'assemblies' | 'routines' | 'waivers', string>>
>;

/** The text of a draft; `changed` takes the place of the section of the same name, or adds one. */
export function draftText(steps: string, changed: Changes = {}): string {
  return [title, ...Object.values({ ...circuit, ...changed }), 'steps:\n', steps].join('');
}

/** No wait is stated. R C ln(V0/Vsafe) at the limits: 4935 Ω · 8.16 mF · ln 12 = 100.1 s. */
export const reserveOnly: Changes = {
  sources: `sources:
  battery:
    kind: battery
    voltage: 12.6 V
    feeds: [control-unit]
    reserve: { capacitance: 6.8 mF ± 20 %, charged-to: 24 V, bleed: 4.7 kΩ ± 5 %, safe-below: 2 V }
`,
};

/** The bar shorts the side of the harness, where the lamp comes. */
export const barOnHarness: Changes = {
  connectors: circuit.connectors.replace('side: end', 'side: monitor'),
};

/** A second battery that feeds a unit without anything live. */
export const twoBatteries: Changes = {
  sources: `${circuit.sources}  cabin: { kind: battery, voltage: 12.6 V, feeds: [body-unit] }\n`,
  instruments: `${circuit.instruments}  body-unit: { kind: monitor, range: 0..100 Ω, accuracy: 3 % + 1 Ω, resolution: 1 Ω }\n`,
  parts: `${circuit.parts}  seat-heater: { kind: resistor, resistance: 40..50 Ω }\n`,
  connectors: `${circuit.connectors}  K50: { contact: 2..15 mΩ }\n`,
  loops: `${circuit.loops}  seat-loop: { path: [body-unit, K50, seat-heater] }\n`,
};

/** An interlock whose connector K7 carries the traction voltage. */
export const highVoltage: Changes = {
  sources: `sources:
  battery: { kind: battery, voltage: 12.6 V, feeds: [vehicle-unit] }
  traction: { kind: high-voltage, voltage: 320..410 V, isolated-by: S1, wait: 5 min }
`,
  instruments: `instruments:
  vehicle-unit: { kind: monitor, range: 0..400 Ω, accuracy: 2 % + 1 Ω, resolution: 1 Ω }
  hand-meter: { kind: multimeter, voltage: { range: 0..600 V, accuracy: 0.5 % + 2 digits, resolution: 0.1 V, input: 10 MΩ } }
`,
  loads: '',
  parts: 'parts:\n  end-resistor: { kind: resistor, resistance: 120 Ω ± 5 % }\n',
  connectors: `connectors:
  S1: { contact: 2..15 mΩ }
  K7: { contact: 2..15 mΩ, carries: traction }
`,
  loops: 'loops:\n  interlock: { path: [vehicle-unit, S1, K7, end-resistor] }\n',
};

/** Two steps. */
export const readCodes = `  - ignition: on
  - read-codes: control-unit
`;

/** Three steps. */
export const powerOff = `  - ignition: off
  - disconnect: battery
  - wait: 3 min
`;

/** Five steps: codes written down, power taken away, the wait kept. */
export const makeSafe = readCodes + powerOff;

/** Four steps: codes cleared, the loop read, an end for either result. */
export const showSound = `  - clear-codes: control-unit
  - read: driver-loop
    outcomes: { within: sound, else: faulty }
  - stop: The loop is sound.
    id: sound
  - stop: The loop is not sound. Ask the workshop lead.
    id: faulty
    leaves: [repair]
`;

/** Six steps. */
export const giveBack = `  - reconnect: battery
  - ignition: on
${showSound}`;

/** Four steps: nothing but a reading. */
export const readOnly = `${readCodes}  - clear-codes: control-unit
  - read: driver-loop
`;

/** A routine of three steps, as it is called in place of `powerOff`. */
export const makeSafeRoutine = (minutes: number): string => `routines:
  make-safe:
    steps:
      - ignition: off
      - disconnect: battery
      - wait: ${minutes} min
`;
