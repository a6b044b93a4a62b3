import { expect, test } from 'vitest';
import { analysed } from '../readings/analysed.ts';

/*
 * High voltage that a connector leads past the pins of its loop: once the connector is open, nothing shows that its two
 * halves are joined, so a proof at one says nothing of the other.
 */

const proof = (at: string): string =>
  `  - { prove-dead: traction, at: ${at}, with: hand-meter, known: battery }\n`;
const away = '  - { disconnect: traction, danger: Gloves. }\n  - wait: 5 min\n';

/** What is found of K7 and K8, both of which carry the source. */
function found(steps: string): readonly string[] {
  const text = `format: 1
title: Halves
conditions: { ambient: 20..20 °C }
sources:
  battery: { kind: battery, voltage: 12.6 V, feeds: [unit], wait: 30 s }
  traction: { kind: high-voltage, voltage: 320..410 V, isolated-by: S1, wait: 5 min }
instruments:
  unit: { kind: monitor, range: 0..400 Ω, accuracy: 2 % + 1 Ω, resolution: 1 Ω }
  hand-meter: { kind: multimeter, voltage: { range: 0..600 V, accuracy: 0.5 % + 2 digits, resolution: 0.1 V, input: 10 MΩ } }
parts:
  end-resistor: { kind: resistor, resistance: 120 Ω ± 5 % }
connectors:
  S1: { contact: 2..15 mΩ }
  K7: { contact: 2..15 mΩ, carries: traction }
  K8: { contact: 2..15 mΩ, carries: traction }
loops:
  interlock: { path: [unit, S1, K7, K8, end-resistor] }
steps:
${away}${steps}  - { stop: Here., leaves: [traction, K7, K8, codes, repair] }
`;
  return analysed(text).findings.flatMap(({ rule, severity, message }) =>
    severity === 'error' ? [`${rule}: ${/at: [^\`]*/.exec(message)?.[0] ?? 'anywhere'}`] : [],
  );
}

test('while all are mated one proof shows them all, and opening one keeps it', () => {
  expect(found(`${proof('K7.end')}  - unplug: K8\n  - unplug: K7\n  - plug: K7\n  - plug: K8\n`)).toEqual([]);
});

const open = `${proof('K7.end')}  - unplug: K7\n`;

test('with one open a proof at one half leaves the other to be proven', () => {
  // The ignition on and off ends the first proof.
  const again = `${open}  - ignition: on\n  - ignition: off\n  - wait: 5 min\n`;
  const plugged = '  - plug: K7\n';
  expect(found(`${again}${plugged}`)).toContain('not-proven-dead: at: K7.monitor');
  expect(found(`${again}${proof('K7.end')}${plugged}`)).toContain('not-proven-dead: at: K7.monitor');
  expect(found(`${again}${proof('K7.monitor')}${plugged}`)).toContain('not-proven-dead: at: K7.end');
  const both = `${proof('K7.end')}${proof('K7.monitor')}`;
  expect(found(`${again}${both}${plugged}`).filter((one) => one.startsWith('not-proven'))).toEqual([]);
});

test('another connector that carries the source needs its own proof then', () => {
  const again = `${open}  - ignition: on\n  - ignition: off\n  - wait: 5 min\n`;
  const other = '  - unplug: K8\n';
  expect(found(`${again}${proof('K7.end')}${other}`)).toContain('not-proven-dead: at: K8.end');
  // A mated one has both halves in one.
  expect(
    found(`${again}${proof('K8.monitor')}${other}`).filter((one) => one.startsWith('not-proven')),
  ).toEqual([]);
});
