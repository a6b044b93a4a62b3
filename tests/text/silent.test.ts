import { readFileSync, readdirSync } from 'node:fs';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readProcedure } from '../../server/src/text/read-procedure.ts';

/*
 * A step that cannot be read has no effect, and what lies behind it is held back: without a finding of its own an unsafe
 * procedure would pass. So wherever one word stands for another, no step is broken in silence.
 */

const routine = `format: 1
title: Interlock
sources:
  battery: { kind: battery, voltage: 12.6 V, feeds: [vehicle-unit], wait: 1 min }
  traction: { kind: high-voltage, voltage: 400 V, isolated-by: S1, wait: 5 min }
instruments:
  vehicle-unit: { kind: monitor, range: 0..400 Ω, accuracy: 2 % + 1 Ω, resolution: 1 Ω }
  hand-meter: { kind: multimeter, voltage: { range: 0..600 V, accuracy: 1 %, resolution: 1 V, input: 10 MΩ } }
loads:
  load-plug: { kind: resistor, resistance: 120 Ω }
parts:
  end-resistor: { kind: resistor, resistance: 120 Ω ± 1 % }
connectors:
  S1: { contact: 2..15 mΩ }
  K7: { contact: 2..15 mΩ, carries: traction }
assemblies: { box: [end-resistor, K7] }
loops:
  interlock: { path: [vehicle-unit, S1, K7, end-resistor] }
routines:
  make-dead:
    needs: { where: side, source: source, meter: instrument, thing: part, joint: connector, load: load, circuit: loop }
    steps:
      - disconnect: source
      - wait: 5 min
      - prove-dead: source
        at: where
        with: meter
        known: battery
      - replace: thing
      - unplug: joint
      - fit: load
        at: where
      - read: circuit
steps:
  - run: make-dead
    given: { where: K7.end, source: traction, meter: hand-meter, thing: end-resistor, joint: K7, load: load-plug, circuit: interlock }
  - clear-codes: vehicle-unit
  - stop: Hand over.
    leaves: [traction, K7, codes]
`;

const folder = new URL('../../procedures/', import.meta.url);
const texts = [
  routine,
  ...readdirSync(folder)
    .filter((name) => name.endsWith('.procedure.yaml'))
    .map((name) => readFileSync(new URL(name, folder), 'utf8')),
];

test('with one word in the place of another no step is broken without a finding', () => {
  let broken = 0;
  const change = fc.constantFrom(...texts).chain((text) => {
    const words = [...new Set(text.match(/[A-Za-z][A-Za-z0-9-]*(?:\.(?:monitor|end))?/g) ?? [])];
    const places = [...text.matchAll(/(?<=: |\[|, )[A-Za-z][A-Za-z0-9.-]*(?=[,\]\s}])/g)];
    return fc.tuple(fc.constantFrom(...places), fc.constantFrom(...words)).map(([place, word]) => {
      return text.slice(0, place.index) + word + text.slice(place.index + place[0].length);
    });
  });
  fc.assert(
    fc.property(change, (text) => {
      const { procedure, findings } = readProcedure({ id: 'changed', text });
      if (!procedure.steps.some(({ verb }) => verb === 'broken')) return;
      broken += 1;
      expect(findings.length, text).toBeGreaterThan(0);
    }),
    { numRuns: 600, seed: 71_200 },
  );
  expect(broken).toBeGreaterThan(50);
});
