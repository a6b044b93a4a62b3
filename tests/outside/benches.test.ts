import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { analysed } from '../readings/analysed.ts';
import { restraintCircuit } from './restraint-circuit.ts';
import type { Corner } from './netlist.ts';
import { netlist } from './netlist.ts';
import { describeWith } from '../needs.ts';
import { lacksNgspice, solveWithNgspice } from './ngspice.ts';

const folder = fileURLToPath(new URL('../../procedures', import.meta.url));
const shipped = readdirSync(folder)
  .filter((name) => name.endsWith('.procedure.yaml'))
  .map((name): [string, string] => [name, readFileSync(join(folder, name), 'utf8')])
  .filter(([, text]) => text.includes('\nloops:'));

/** Every state of the last connector, with and without a load, on either side. */
const benches = `
- ignition: on
- read: driver-loop
- unlock: K30
- read: driver-loop
- unplug: K30
- read: driver-loop
- fit: bench-lamp
  at: K30.monitor
- read: driver-loop
- move: bench-lamp
  to: K30.end
- read: driver-loop
- remove: bench-lamp
- fit: load-plug
  at: K30.monitor
- read: driver-loop
- remove: load-plug
- plug: K30
- unplug: K10
- fit: load-plug
  at: K10.end
- read: driver-loop
- remove: load-plug
- plug: K10
- fit: bench-lamp
  at: K30.monitor
- read: driver-loop
- unlock: K30
- read: driver-loop
- move: bench-lamp
  to: K30.end
- read: driver-loop
`;

describeWith(
  lacksNgspice,
  'what the monitor sees on the benches of a procedure is what ngspice finds',
  () => {
    test.each([...shipped, ['every bench of one connector', restraintCircuit(benches)]])('%s', (_, text) => {
      const { procedure, readings } = analysed(text);
      const corners: readonly Corner[] = ['least', 'nominal', 'most'];
      const asked = readings.readings.flatMap(({ loop, good }) => {
        if (loop === null) return [];
        return good.flatMap(({ arrival, circuit }) =>
          corners.map((corner) => ({
            network: netlist(procedure, loop, arrival.state.hardware, corner),
            ours: circuit === 'open' ? Infinity : circuit === 'unknown' ? NaN : circuit[corner],
          })),
        );
      });
      const expected = solveWithNgspice(asked.map(({ network }) => network));
      expect(asked.length).toBeGreaterThanOrEqual(3 * 4);
      for (const [index, { ours }] of asked.entries()) {
        const ohms = expected[index] ?? NaN;
        if (ohms === Infinity) expect(ours).toBe(Infinity);
        else expect(Math.abs(ours / ohms - 1)).toBeLessThanOrEqual(1e-9);
      }
    });
  },
);
