import { describe, expect, test } from 'vitest';
import { readProcedure } from '../../server/src/text/read-procedure.ts';
import type { Procedure } from '../../server/src/model/procedure.ts';
import { oracle } from './oracle.ts';
import { windowRules, windowsOf } from './windows.ts';

/* What the oracle makes of measurements by hand, worked out by hand. */

/** Two resistors side by side behind a connector each, and a battery over a third one. */
function bench(steps: string, network = ''): Procedure {
  const text = `format: 1
title: Two ways
conditions: { ambient: 20..20 °C }
sources:
  battery: { kind: battery, voltage: 12 V, feeds: [lone] }
instruments:
  meter:
    kind: multimeter
    leads: 0.1..0.3 Ω
    resistance: { range: 0..400 Ω, accuracy: 1 % + 2 digits, resolution: 0.1 Ω }
    voltage: { range: 0..40 V, accuracy: 1 % + 2 digits, resolution: 0.01 V, input: 10 kΩ }
parts:
  one: { kind: resistor, resistance: 99..101 Ω }
  other: { kind: resistor, resistance: 99..101 Ω }
  lone: { kind: resistor, resistance: 10 kΩ }
connectors:
  K1: { contact: 0..0.1 Ω }
  K2: { contact: 0..0.1 Ω }
network:
  - { connector: K1, pin: 1, between: [left, near] }
  - { part: one, between: [near, right] }
  - { connector: K2, pin: 1, between: [left, far] }
  - { part: other, between: [far, right] }
  - { source: battery, between: [plus, ground] }
  - { part: lone, between: [plus, tap] }
${network}
steps:
${steps}
`;
  const { procedure, findings } = readProcedure({ id: 'test.procedure.yaml', text });
  expect(findings).toEqual([]);
  return procedure;
}

const measure = (quantity: string, across: string, rest = '') =>
  `  - measure: ${quantity}\n    across: [${across}]\n    with: meter\n${rest}`;
const near = (value: number): unknown => expect.closeTo(value, 9);
const accepted = (steps: string) => windowsOf(bench(steps)).map((window) => window.accepted);
const rulesAt = (steps: string) => windowRules(bench(steps)).map(({ rule, step }) => `${rule} at ${step}`);
const told = (rule: string, steps: string, network = '') =>
  oracle(bench(steps, network))
    .filter((one) => one.rule === rule)
    .map(({ subject, step }) => `${subject ?? '-'} at ${step ?? '-'}`);

describe('windows', () => {
  test('of ohms, with the leads and after the instrument', () => {
    // 49.5 + 0.1 = 49.6, less 1 % and 0.2: 48.904. 50.55 + 0.3 = 50.85, and 1 % and 0.2: 51.5585.
    expect(accepted(measure('resistance', 'left, right'))).toEqual([{ least: near(48.9), most: near(51.6) }]);
    // 99.1 · 0.99 - 0.2 = 97.909; 101.4 · 1.01 + 0.2 = 102.614.
    expect(accepted(`  - unplug: K2\n${measure('resistance', 'left, right')}`)).toEqual([
      { least: near(97.9), most: near(102.7) },
    ]);
    expect(accepted(measure('resistance', 'left, ground'))).toEqual(['open']);
  });
  test('of volts, with what the meter draws', () => {
    // 10 kΩ over 10 kΩ: 6 V, 1 % and 0.02 V.
    expect(accepted(measure('voltage', 'tap, ground'))).toEqual([{ least: near(5.92), most: near(6.08) }]);
    expect(accepted(measure('voltage', 'ground, tap'))).toEqual([{ least: near(-6.08), most: near(-5.92) }]);
    expect(accepted(measure('voltage', 'left, ground'))).toEqual([{ least: near(-0.02), most: near(0.02) }]);
    expect(accepted(`  - disconnect: battery\n${measure('voltage', 'tap, ground')}`)).toEqual([
      { least: near(-0.02), most: near(0.02) },
    ]);
  });
  test('are held against what is expected', () => {
    const expecting = (window: string) =>
      rulesAt(measure('resistance', 'left, right', `    expect: ${window}\n`));
    expect(expecting('45..60 Ω')).toEqual([]);
    expect(expecting('49..60 Ω')).toEqual(['expect-excludes-good at 1']);
    // One way open is about 100 Ω.
    expect(expecting('45..110 Ω')).toEqual(['expect-admits-fault at 1']);
  });
});

describe('outcomes', () => {
  const uncovered = (outcomes: string, rest = '') =>
    told('uncovered', measure('resistance', 'left, right', `${rest}    outcomes: { ${outcomes} }\n`));
  test('all classes that the meter can show have to be named', () => {
    expect(uncovered('within: next, below: next, above: next, open: next')).toEqual([]);
    expect(uncovered('within: next, below: next, above: next')).toEqual(['- at 1']);
    expect(uncovered('within: next, below: next', '    expect: above 40 Ω\n')).toEqual([]);
  });
  test('a window by its name leaves the rest of its class', () => {
    const named = '    windows: { half: 90..110 Ω }\n';
    expect(uncovered('within: next, below: next, half: next, open: next', named)).toEqual(['- at 1']);
    expect(uncovered('within: next, half: next, else: next', named)).toEqual([]);
  });
});

test('a window that open is within verifies nothing', () => {
  const after = (expected: string) =>
    told(
      'repair-not-verified',
      `  - replace: one\n${measure('resistance', 'left, right', `    expect: ${expected}\n    outcomes: { within: next, else: out }\n`)}  - stop: Done.\n  - stop: Out.\n    id: out\n    leaves: repair\n`,
    );
  expect(after('45..60 Ω')).toEqual([]);
  expect(after('above 45 Ω')).toEqual(['one at 3']);
});

test('a node where one element ends and nothing is measured', () => {
  const idle = '  - ignition: off\n';
  expect(told('dangling-node', idle)).toEqual(['tap at -']);
  expect(told('dangling-node', measure('voltage', 'tap, ground'))).toEqual([]);
  expect(told('dangling-node', idle, '  - { connector: K1, pin: 2, between: [tap, ground] }')).toEqual([]);
});
