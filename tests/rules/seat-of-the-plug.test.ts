import { expect, test } from 'vitest';
import { readFileSync } from 'node:fs';
import { analysed } from '../readings/analysed.ts';

/*
 * The plug that isolates a high-voltage source leaves contacts in its seat that stay with the source (common practice, no
 * source): a proof elsewhere says nothing of them, and no wait discharges them.
 */

const shipped = readFileSync(
  new URL('../../procedures/interlock-open.procedure.yaml', import.meta.url),
  'utf8',
);
const [before = '', behind = ''] = shipped.split('  - section: Resistor in the place of the service plug\n');

/** What is found at the seat where these steps stand behind the proof, with the plug out. */
function foundAtSeat(steps: string): readonly string[] {
  const text = `${before}${steps}  - section: Resistor in the place of the service plug\n${behind}`;
  return analysed(text).findings.flatMap(({ rule, subject }) => (subject === 'S1' ? [rule] : []));
}

test.each([
  ['a deed', '  - do: Clean the contacts with a brush.\n    at: S1\n'],
  [
    'an inspection',
    '  - inspect: Are the contacts clean?\n    at: S1\n    outcomes: { ok: next, defect: next }\n',
  ],
  ['its replacement', '  - replace: S1\n'],
  ['moving it', '  - wiggle: S1.monitor\n    watch: interlock\n    for: 30 s\n'],
  ['probes', '  - measure: voltage\n    across: [S1.end.1, S1.end.2]\n    with: hand-meter\n'],
])('%s at the seat of the service plug is never safe', (_, steps) => {
  expect(foundAtSeat(steps)).toContain('live-touch');
});

test('looking at it is no touch, nor is a load that is fitted there with its danger', () => {
  expect(
    foundAtSeat(
      '  - inspect: Is the cover of the seat closed?\n    at: nothing\n    of: S1\n    outcomes: { ok: next, defect: next }\n',
    ),
  ).not.toContain('live-touch');
  expect(analysed(shipped).findings).toEqual([]);
});
