import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';

const bus = readFileSync(new URL('../../procedures/two-wire-bus.procedure.yaml', import.meta.url), 'utf8');

function told(expected: string): readonly string[] {
  const text = bus.replace(/ {4}windows: \{ one-end: .*\n/, `    expect: ${expected}\n`);
  const changed = text.replace(
    'one-end: front-unit, open: both-ends, above: added',
    'above: front-unit, open: both-ends',
  );
  const analysis = analyse(snapshotOf([{ id: 'bus.procedure.yaml', text: changed }]), 'bus.procedure.yaml');
  return finish(analysis.findings('order'))
    .filter(({ rule }) => rule === 'expect-admits-fault')
    .map(({ message }) => message);
}

// One termination of 118 to 130 Ω alone, with the wires to it, is what a field engineer knows as "one end missing".
test('a window that also accepts a bus with one end missing is told, with both ends named', () => {
  const [message, ...others] = told('50..140 Ω');
  expect(others).toEqual([]);
  expect(message).toContain('front-termination open');
  expect(message).toContain('rear-termination open');
  expect(message).not.toContain('door-input');
});

test('a window about the sound bus is not', () => {
  expect(told('57..68 Ω')).toEqual([]);
});
