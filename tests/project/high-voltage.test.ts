import { describe, expect, test } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { applyEdits } from '../../server/src/project/edit.ts';
import { fixFor } from '../../server/src/fixes/fix.ts';
import { touchRules } from '../../server/src/fixes/menders.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';

/* What unsafe work on high voltage is mended to: taken away, waited for, proven dead, in this order. */

const head = `format: 1
title: Interlock
sources:
  battery: { kind: battery, voltage: 12.6 V, feeds: [vehicle-unit], wait: 1 min }
  traction: { kind: high-voltage, voltage: 400 V, isolated-by: S1, wait: 5 min }
instruments:
  vehicle-unit: { kind: monitor, range: 0..400 Ω, accuracy: 2 % + 1 Ω, resolution: 1 Ω }
  small-meter: { kind: multimeter, voltage: { range: 0..60 V, accuracy: 0.5 % + 2 digits, resolution: 0.1 V, input: 10 MΩ } }
  hand-meter: { kind: multimeter, voltage: { range: 0..600 V, accuracy: 0.5 % + 2 digits, resolution: 0.1 V, input: 10 MΩ } }
parts:
  end-resistor: { kind: resistor, resistance: 120 Ω ± 1 % }
connectors:
  S1: { contact: 2..15 mΩ }
  K7: { contact: 2..15 mΩ, carries: traction }
loops:
  interlock: { path: [vehicle-unit, S1, K7, end-resistor] }
steps:
`;

function mended(steps: string, text = head + steps): string {
  const analysis = analyse(snapshotOf([{ id: 'draft', text }]), 'draft');
  const finding = finish(analysis.findings('order')).find(({ rule }) => touchRules.has(rule));
  if (finding === undefined) throw new Error('the draft must have something to mend');
  const fix = finish(fixFor(analysis, finding));
  return fix === null ? 'no fix' : (applyEdits(text, fix.edits).split('steps:\n')[1] ?? '');
}

const proof = `  - prove-dead: traction
    at: K7.end
    with: hand-meter
    known: battery
`;

describe('hands on a connector that carries a high-voltage source', () => {
  test('get everything before them, with the first meter that reaches the voltage', () => {
    expect(mended('  - ignition: on\n  - read-codes: vehicle-unit\n  - unplug: K7\n')).toBe(
      `  - ignition: on
  - read-codes: vehicle-unit
  - ignition: off
  - disconnect: traction
    danger: High voltage causes death on contact. Wear the protective equipment that the maker's service information asks for until the circuit is verified to be without voltage.
  - wait: 5 min
${proof}  - unplug: K7
`,
    );
  });

  test('get the proof alone where nothing else is missing', () => {
    expect(mended('  - disconnect: traction\n  - wait: 5 min\n  - unplug: K7\n')).toBe(
      `  - disconnect: traction\n  - wait: 5 min\n${proof}  - unplug: K7\n`,
    );
  });

  test('get it as another step of the procedure takes it', () => {
    const other = proof.replace('K7.end', '[S1.end.8, S1.end.9]');
    const again = '  - ignition: on\n  - ignition: off\n  - wait: 5 min\n  - unplug: K7\n';
    expect(mended(`  - disconnect: traction\n  - wait: 5 min\n${other}${again}`)).toBe(
      `  - disconnect: traction\n  - wait: 5 min\n${other}${again.replace('  - unplug', `${other}  - unplug`)}`,
    );
  });

  test('get power back with a warning where it was there', () => {
    const steps = `  - ignition: on
  - read-codes: vehicle-unit
  - ignition: off
  - disconnect: traction
  - wait: 5 min
${proof}  - unplug: K7
  - ignition: on
    warning: Nobody at the open connector.
  - plug: K7
  - read: interlock
  - ignition: off
  - reconnect: traction
  - ignition: on
  - clear-codes: vehicle-unit
  - read: interlock
    outcomes: { within: next, else: next }
`;
    expect(mended(steps)).toBe(
      steps.replace(
        '  - plug: K7\n',
        `  - ignition: off
  - wait: 5 min
${proof.replace('K7.end', 'K7.monitor')}${proof}  - plug: K7
  - ignition: on
    warning: An airbag or belt tensioner that fires can kill. Keep all persons clear of them while power comes back.
`,
      ),
    );
  });

  test('have no fix in a file without an instrument that could prove it', () => {
    const text = head.replace(/ {2}hand-meter: .*\n/, '');
    expect(mended('', `${text}  - disconnect: traction\n  - wait: 5 min\n  - unplug: K7\n`)).toBe('no fix');
  });
});

const danger =
  "    danger: High voltage causes death on contact. Wear the protective equipment that the maker's service information asks for until the circuit is verified to be without voltage.\n";

describe('a proof that comes too early', () => {
  test('gets the longer wait', () => {
    expect(mended(`  - disconnect: traction\n  - wait: 2 min\n${proof}`)).toBe(
      `  - disconnect: traction\n  - wait: 5 min\n${proof}`,
    );
  });

  test('gets what takes the source away before it', () => {
    expect(mended(proof)).toBe(`  - disconnect: traction\n${danger}  - wait: 5 min\n${proof}`);
  });
});

describe('rules that guard high voltage', () => {
  const found = (text: string): readonly string[] => {
    const analysis = analyse(snapshotOf([{ id: 'draft', text }]), 'draft');
    return finish(analysis.findings('order')).map(
      ({ rule, waived }) => `${rule}${waived === undefined ? '' : ' waived'}`,
    );
  };
  const waiving = (rule: string): string =>
    head.replace('steps:\n', `waivers: [{ rule: ${rule}, step: here, reason: In a hurry }]\nsteps:\n`);

  test('cannot be waived', () => {
    const bare = '  - disconnect: traction\n  - wait: 5 min\n  - unplug: K7\n    id: here\n';
    expect(found(waiving('not-proven-dead') + bare)).toEqual(
      expect.arrayContaining(['not-proven-dead', 'waiver-refused']),
    );
    const early = `  - disconnect: traction\n${proof.replace('    at', '    id: here\n    at')}`;
    expect(found(waiving('proof-too-early') + early)).toEqual(
      expect.arrayContaining(['proof-too-early', 'waiver-refused']),
    );
  });

  test('follow a proof into the routine that it is written in, and out of it', () => {
    const routine = (wait: string): string =>
      head.replace(
        'steps:\n',
        `routines:
  make-dead:
    needs: { where: side, source: source, meter: instrument }
    steps:
      - disconnect: source
        danger: High voltage kills.
      - wait: ${wait}
      - prove-dead: source
        at: where
        with: meter
        known: battery
steps:
  - run: make-dead
    given: { where: K7.end, source: traction, meter: hand-meter }
  - unplug: K7
  - stop: Hand over.
    leaves: [traction, K7, codes]
`,
      );
    expect(found(routine('5 min'))).toEqual([]);
    expect(found(routine('4 min'))).toEqual(['proof-too-early']);
  });
});
