import { describe, expect, test } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { writtenTemplate as template } from '../editor/written-template.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { applyEdits } from '../../server/src/project/edit.ts';
import { fixFor } from '../../server/src/fixes/fix.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';

const head = `${template.split('steps:\n')[0] ?? ''}steps:\n`;

/** What the first unsafe touch of a draft is mended to. */
function mended(steps: string, lineBreak = '\n'): string {
  const text = (head + steps).replaceAll('\n', lineBreak);
  const analysis = analyse(snapshotOf([{ id: 'draft', text }]), 'draft');
  const finding = finish(analysis.findings('order')).find(
    ({ rule }) => rule === 'live-touch' || rule === 'short-wait',
  );
  if (finding === undefined) throw new Error('the draft must have an unsafe touch');
  const fix = finish(fixFor(analysis, finding));
  return fix === null ? 'no fix' : (applyEdits(text, fix.edits).split(`steps:${lineBreak}`)[1] ?? '');
}

describe('a draft', () => {
  test('that ends with a touch gets what is missing before it, and nothing behind', () => {
    expect(mended('  - ignition: on\n  - read-codes: control-unit\n  - unplug: K30\n')).toBe(`  - ignition: on
  - read-codes: control-unit
  - ignition: off
  - disconnect: battery
  - wait: 3 min
  - unplug: K30
`);
  });

  test('that goes on after the touch gets its power back, with a warning; later touches are mended too', () => {
    const steps = `  - ignition: on
  - read-codes: control-unit
  - unplug: K30
  - fit: bench-lamp
    at: K30.monitor
  - read: stage-1-loop
  - remove: bench-lamp
  - plug: K30
  - clear-codes: control-unit
  - read: stage-1-loop
    outcomes: { within: next, else: next }
`;
    expect(mended(steps)).toBe(`  - ignition: on
  - read-codes: control-unit
  - ignition: off
  - disconnect: battery
  - wait: 3 min
  - unplug: K30
  - fit: bench-lamp
    at: K30.monitor
  - reconnect: battery
    warning: An airbag or belt tensioner that fires can kill. Keep all persons clear of them while power comes back.
  - ignition: on
  - read: stage-1-loop
  - ignition: off
  - disconnect: battery
  - wait: 3 min
  - remove: bench-lamp
  - plug: K30
  - reconnect: battery
    warning: An airbag or belt tensioner that fires can kill. Keep all persons clear of them while power comes back.
  - ignition: on
  - clear-codes: control-unit
  - read: stage-1-loop
    outcomes: { within: next, else: next }
`);
  });

  test('gets its codes written down before they are lost', () => {
    expect(mended('  - unplug: K30\n')).toBe(`  - ignition: on
  - read-codes: control-unit
  - ignition: off
  - disconnect: battery
  - wait: 3 min
  - unplug: K30
`);
  });

  test('with a step that jumps lead to: they pass what is inserted, the id moves', () => {
    const steps = `  - ignition: on
  - read-codes: control-unit
  - read: stage-1-loop
    outcomes: { within: fine, else: hands }
  - stop: Nothing to find now.
    id: fine
    leaves: [codes]
  - unplug: K30
    id: hands
`;
    expect(mended(steps)).toBe(
      steps.replace(
        '  - unplug: K30\n    id: hands\n',
        `  - ignition: off
    id: hands
  - disconnect: battery
  - wait: 3 min
  - unplug: K30
`,
      ),
    );
  });

  test('keeps its comments and its line breaks', () => {
    const steps =
      '  - ignition: on\n  - read-codes: control-unit\n  # the stage itself\n  - unplug: K30 # gently\n';
    expect(mended(steps, '\r\n')).toBe(
      '  - ignition: on\n  - read-codes: control-unit\n  # the stage itself\n  - ignition: off\n  - disconnect: battery\n  - wait: 3 min\n  - unplug: K30 # gently\n'.replaceAll(
        '\n',
        '\r\n',
      ),
    );
  });

  test('whose steps stand in one line is left alone', () => {
    const flow = `${head.replace('steps:\n', '')}steps: [{ ignition: on }, { read-codes: control-unit }, { unplug: K30 }]\n`;
    const analysis = analyse(snapshotOf([{ id: 'draft', text: flow }]), 'draft');
    const finding = finish(analysis.findings('order')).find(({ rule }) => rule === 'live-touch');
    expect(finding).toBeDefined();
    if (finding !== undefined) expect(finish(fixFor(analysis, finding))).toBeNull();
  });
});
