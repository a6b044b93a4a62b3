import { describe, expect, test } from 'vitest';
import { readProcedure } from '../../server/src/text/read-procedure.ts';
import type { Procedure } from '../../server/src/model/procedure.ts';
import { oracle } from './oracle.ts';
import { circuit, said } from './sample.ts';
import { windowRules } from './windows.ts';

/* What a window has to leave out, worked out by hand. */

/** A lamp of 4 Ω on a battery of 12 V, behind a wire of 50 mΩ and a contact of 10 mΩ: 10a is 4 Ω. */
function bench(steps: string): Procedure {
  const text = `format: 1
title: A lamp
conditions: { ambient: 20..20 °C }
sources:
  battery: { kind: battery, voltage: 12 V, resistance: 0 Ω, feeds: [lamp] }
instruments:
  meter:
    kind: multimeter
    zeroed: true
    resistance: { range: 0..400 Ω, accuracy: 1 % + 2 digits, resolution: 0.1 Ω }
    voltage: { range: 0..40 V, accuracy: 1 % + 2 digits, resolution: 0.01 V, input: 10 MΩ }
parts:
  wire: { kind: cable, resistance: 50 mΩ }
  lamp: { kind: resistor, resistance: 4 Ω }
connectors:
  K1: { contact: 10 mΩ }
network:
  - { source: battery, between: [plus, ground] }
  - { part: wire, between: [plus, feed] }
  - { connector: K1, pin: 1, between: [feed, lamp-plus] }
  - { part: lamp, between: [lamp-plus, ground] }
steps:
${steps}
`;
  const { procedure, findings } = readProcedure({ id: 'test.procedure.yaml', text });
  expect(findings).toEqual([]);
  return procedure;
}

const measure = (quantity: string, across: string, expected: string | null, rest = '') =>
  `  - measure: ${quantity}\n    across: [${across}]\n    with: meter\n` +
  (expected === null ? '' : `    expect: ${expected}\n`) +
  rest;
const byHand = (...steps: string[]) =>
  windowRules(bench(steps.join('\n'))).map(({ rule, step }) => `${rule} at ${step}`);

describe('a repair, by a voltage', () => {
  const unverified = (thing: string, expected: string | null, ...before: string[]) =>
    oracle(
      bench(
        [
          `  - replace: ${thing}`,
          ...before,
          measure('voltage', 'lamp-plus, ground', expected, '    outcomes: { within: next, else: out }'),
          '  - stop: Done.\n  - stop: Here.\n    id: out\n    leaves: [repair, battery, K1]',
        ].join('\n'),
      ),
    ).flatMap(({ rule, subject }) => (rule === 'repair-not-verified' ? [subject] : []));
  test('sound 12 · 4 / 4.06 = 11.82 V; with 4 Ω more 12 · 4 / 8.06 = 5.96 V; open 0 V', () => {
    for (const thing of ['wire', 'K1']) {
      expect(unverified(thing, '11..12.5 V')).toEqual([]);
      expect(unverified(thing, null)).toEqual([]);
      expect(unverified(thing, '5..12.5 V')).toEqual([thing]);
      expect(unverified(thing, 'below 12.5 V')).toEqual([thing]);
    }
  });
  test('not of what reads the same when it is open: without the lamp there are 12 V', () => {
    expect(unverified('lamp', '11..12.5 V')).toEqual(['lamp']);
  });
  test('not by what shows that there is none, nor with a connector open', () => {
    expect(unverified('wire', null, '  - disconnect: battery')).toEqual(['wire']);
    expect(unverified('wire', '11..12.5 V', '  - unplug: K1')).toEqual(['wire']);
  });
});

test('a repair in a loop: 10 Ω more is 11.808 · 0.97 - 0.1 = 11.35 Ω and up; a monitor needs the open circuit alone', () => {
  const unit = { ...circuit.instruments.unit, range: '0..40 Ω' };
  const unverified = (thing: string, expected: string) =>
    said(
      'repair-not-verified',
      [
        { replace: thing },
        { read: 'live', expect: expected, outcomes: { within: 'next', else: 'out' } },
        { stop: 'Done.', leaves: ['codes'] },
        { stop: 'Here.', id: 'out', leaves: ['codes', 'repair'] },
      ],
      { instruments: { unit } },
    ).length;
  for (const thing of ['cable', 'K1', 'stage']) {
    expect(unverified(thing, '1..11 Ω')).toBe(0);
    expect(unverified(thing, '1..12 Ω')).toBe(1);
  }
  expect(unverified('unit', '1..12 Ω')).toBe(0);
  expect(unverified('unit', 'above 1 Ω')).toBe(1);
});

describe('of voltages', () => {
  test('a window that accepts none admits the open wire', () => {
    const admits = (expected: string) =>
      byHand(measure('voltage', 'lamp-plus, ground', expected)).includes('expect-admits-fault at 1');
    expect(admits('below 12.5 V')).toBe(true);
    expect(admits('11..12.5 V')).toBe(false);
  });
  test('a drop where nothing flows, but not a dead wire, nor one that floats', () => {
    const at = (across: string, ...before: string[]) =>
      byHand(...before, measure('voltage', across, null)).filter((one) => one.startsWith('nothing-flows'));
    expect(at('plus, feed')).toEqual([]);
    expect(at('plus, feed', '  - unplug: K1')).toEqual(['nothing-flows at 2']);
    expect(at('lamp-plus, ground', '  - unplug: K1')).toEqual([]);
    expect(at('plus, lamp-plus', '  - unplug: K1', '  - disconnect: battery')).toEqual([]);
    expect(at('plus, feed', '  - unplug: K1', '  - disconnect: battery')).toEqual([]);
  });
});

test('a window that is open has to be stated', () => {
  const open = (expected: string | null) =>
    byHand('  - disconnect: battery', '  - unplug: K1', measure('resistance', 'feed, lamp-plus', expected));
  expect(open(null)).toEqual(['window-undefined at 3']);
  expect(open('open')).toEqual([]);
});
