import { describe, expect, test } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import type { Analysis } from '../../server/src/project/analysis.ts';
import { applyEdits } from '../../server/src/project/edit.ts';
import { fixesFor } from '../../server/src/fixes/fix.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { circuit } from '../../server/src/rules/examples.ts';
import type { Finding } from '../../server/src/model/finding.ts';

/* Where hands are has to be said while something can still fire, is charged or is not proven dead. */

const head = ['format: 1\ntitle: Hands\n', ...Object.values(circuit)].join('');

/** The interlock of the shipped procedure in short: nothing can fire, and a source kills. */
const highVoltage = `format: 1
title: Hands
sources:
  battery: { kind: battery, voltage: 12.6 V, feeds: [vehicle-unit], wait: 30 s }
  traction: { kind: high-voltage, voltage: 400 V, isolated-by: S1, wait: 5 min }
instruments:
  vehicle-unit: { kind: monitor, range: 0..400 Ω, accuracy: 2 % + 1 Ω, resolution: 1 Ω }
  hand-meter:
    kind: multimeter
    voltage: { range: 0..600 V, accuracy: 0.5 % + 2 digits, resolution: 0.1 V, input: 10 MΩ }
parts:
  end-resistor: { kind: resistor, resistance: 120 Ω ± 5 % }
connectors:
  K7: { contact: 2..15 mΩ, carries: traction }
  S1: { contact: 2..15 mΩ }
loops:
  interlock: { path: [vehicle-unit, K7, S1, end-resistor], pins: { K7: [A, B], S1: [1, 2] } }
`;

const analysed = (text: string): Analysis =>
  analyse(snapshotOf([{ id: 'x.procedure.yaml', text }]), 'x.procedure.yaml');

const findingsOf = (text: string): readonly Finding[] => finish(analysed(text).findings('order'));

function told(steps: string, before = head): readonly string[] {
  return findingsOf(`${before}steps:\n${steps}`)
    .filter(({ rule }) => rule === 'touch-not-said')
    .map(({ at, trace }) => `${at.path.join('/')} in ${trace?.hops.length ?? '-'}`);
}

const off = '  - ignition: off\n  - disconnect: battery\n';

describe('hands that are not said', () => {
  test.each([
    ['with the battery connected', '  - do: Look.\n', ['steps/0/do in 1']],
    ['with the ignition on', '  - ignition: on\n  - inspect: Look.\n', ['steps/1/inspect in 2']],
    ['while a wait is owed', `${off}  - wait: 1 min\n  - do: Look.\n`, ['steps/3/do in 4']],
    ['when all is over', `${off}  - wait: 3 min\n  - do: Look.\n`, []],
    ['where hands are said', '  - do: Look.\n    at: K10\n', []],
    ['where they are nowhere', '  - do: Look.\n    at: nothing\n', []],
    ['where it is only said what is looked at', '  - do: Look.\n    of: K10\n', ['steps/0/do in 1']],
  ])('%s', (_, steps, expected) => {
    expect(told(steps)).toEqual(expected);
  });

  test('on some path are told with the shortest', () => {
    const steps = `${off}  - inspect: Is there time?
    at: nothing
    outcomes: { ok: wait, defect: look }
  - wait: 3 min
    id: wait
  - do: Look.
    id: look
`;
    expect(told(steps)).toEqual(['steps/4/do in 4']);
  });

  test('are no matter where nothing can fire or kill', () => {
    const inert = head.replace('live: true', 'live: false');
    expect(inert).not.toBe(head);
    expect(told('  - do: Look.\n', inert)).toEqual([]);
  });

  test('matter until high voltage is proven dead', () => {
    const away =
      '  - ignition: off\n  - disconnect: battery\n  - disconnect: traction\n    danger: It kills.\n';
    const proof = `  - prove-dead: traction
    at: K7.end
    with: hand-meter
    known: battery
`;
    const look = '  - do: Look.\n';
    expect(told(`${away}  - wait: 5 min\n${look}`, highVoltage)).toEqual(['steps/4/do in 5']);
    expect(told(`${away}  - wait: 5 min\n${proof}${look}`, highVoltage)).toEqual([]);
  });
});

const waiver = (rule: string): string =>
  `waivers:\n  - { rule: ${rule}, step: here, reason: The rig has no stage. }\n`;

describe('a waiver', () => {
  const found = (step: string, rule: string): readonly string[] =>
    findingsOf(`${head}${waiver(rule)}steps:\n  - ignition: on\n${step}    id: here\n`)
      .filter((one) => ['touch-not-said', 'hands-in-text', 'waiver-refused'].includes(one.rule))
      .map((one) => `${one.rule}${one.waived === undefined ? '' : ' waived'}`);

  test('holds against a command in a note', () => {
    const step = '  - read: driver-loop\n    note: Wiggle the harness at K30.\n';
    expect(found(step, 'hands-in-text')).toEqual(['hands-in-text waived']);
  });
  test.each([
    ['a word of doing where hands touch nothing', '  - do: Wiggle the harness.\n    at: nothing\n'],
    ['an order to switch', '  - read: driver-loop\n    note: Turn the ignition off.\n'],
    ['a source that is to be connected', '  - read: driver-loop\n    why: Now connect the battery.\n'],
  ])('is refused for %s', (_, step) => {
    expect(found(step, 'hands-in-text').toSorted()).toEqual(['hands-in-text', 'waiver-refused']);
  });
  test('is refused for hands that are not said', () => {
    expect(found('  - do: Look.\n', 'touch-not-said').toSorted()).toEqual([
      'touch-not-said',
      'waiver-refused',
    ]);
  });
});

describe('orders to switch', () => {
  const orders = (steps: string): readonly string[] =>
    findingsOf(`${head}steps:\n${steps}`)
      .filter(({ rule, immune }) => rule === 'hands-in-text' && immune === true)
      .map(({ subject, at, severity }) => `${severity} ${subject ?? '-'} at ${at.path.join('/')}`);

  test('are what the step itself does, or the steps below a heading', () => {
    expect(
      orders(
        '  - section: Switch the ignition on\n  - ignition: on\n    note: Turn the ignition on slowly.\n',
      ),
    ).toEqual([]);
    expect(orders(`${off}    note: Disconnect the battery at its minus pole.\n`)).toEqual([]);
  });
  test('or errors, in whatever text', () => {
    expect(orders('  - section: Switch the ignition on\n  - read-codes: control-unit\n')).toEqual([
      'error ignition at steps/0/section',
    ]);
    expect(orders('  - ignition: on\n    note: Then disconnect the battery.\n')).toEqual([
      'error battery at steps/0/note',
    ]);
    expect(orders('  - stop: Reconnect the battery and hand over.\n')).toEqual([
      'error battery at steps/0/stop',
    ]);
    expect(orders('  - do: Switch the ignition on.\n    at: nothing\n')).toContain(
      'error ignition at steps/0/do',
    );
  });
  test('of a source by its service plug too', () => {
    const found = findingsOf(`${highVoltage}steps:\n  - ignition: on\n    note: Unplug s1.\n`);
    expect(found.filter(({ immune }) => immune === true).map(({ subject }) => subject)).toEqual(['S1']);
  });
});

describe('the fix', () => {
  const fixes = (step: string): readonly string[] => {
    const text = `${head}steps:\n  - ignition: on\n${step}`;
    const analysis = analysed(text);
    const found = finish(analysis.findings('order')).find(({ rule }) => rule === 'touch-not-said');
    if (found === undefined) throw new Error('nothing is found');
    return finish(fixesFor(analysis, found)).map(({ title, edits, isPreferred }) => {
      expect(isPreferred).toBe(false);
      expect(findingsOf(applyEdits(text, edits)).map(({ rule }) => rule)).not.toContain('touch-not-said');
      return title;
    });
  };
  test('offers that hands touch nothing', () => {
    expect(fixes('  - do: Let it wake.\n')).toEqual(['Add `at: nothing` to step 2']);
  });
  test('keeps what the text names as what is looked at', () => {
    expect(fixes('  - inspect: Is k30 green?\n')).toEqual(['Add `at: nothing` and `of: K30` to step 2']);
  });
});

test('a routine is given what hands touch and what is looked at', () => {
  const routines = `routines:
  look:
    needs: { what: connector }
    steps:
      - inspect: Is it green?
        at: nothing
        of: what
`;
  const { value } = analysed(
    `${head}${routines}steps:\n  - run: look\n    given: { what: K10 }\n`,
  ).procedure();
  expect(value.steps[1]).toMatchObject({ at: 'nothing', of: [{ id: 'K10' }] });
});
