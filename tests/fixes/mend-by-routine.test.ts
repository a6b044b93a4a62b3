import { describe, expect, test } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { writtenTemplate as template } from '../editor/written-template.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { applyEdits } from '../../server/src/project/edit.ts';
import { fixFor } from '../../server/src/fixes/fix.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';

const head = template.split('steps:\n')[0] ?? '';

function mended(
  routines: string,
  steps: string,
  parts?: string,
): { readonly title: string; readonly steps: string } {
  const uses = parts === undefined ? '' : 'uses: [shop.parts.yaml]\n';
  const text = `${head}${uses}${routines}steps:\n${steps}`;
  const files = [{ id: 'draft.procedure.yaml', text }];
  if (parts !== undefined) files.push({ id: 'shop.parts.yaml', text: parts });
  const analysis = analyse(snapshotOf(files), 'draft.procedure.yaml');
  const findings = finish(analysis.findings('order'));
  const finding = findings.find(({ rule }) => rule === 'live-touch' || rule === 'short-wait');
  if (finding === undefined) throw new Error(findings.map(({ message }) => message).join('\n'));
  const fix = finish(fixFor(analysis, finding));
  return {
    title: fix?.title ?? 'no fix',
    steps: fix === null ? '' : (applyEdits(text, fix.edits).split('\nsteps:\n')[1] ?? ''),
  };
}

const makeSafe = `routines:
  make-safe:
    steps:
      - ignition: off
      - disconnect: battery
      - wait: 3 min
`;

const power = `  power-up:
    steps:
      - reconnect: battery
        warning: Keep everybody clear.
      - ignition: on
`;

const touch = '  - ignition: on\n  - read-codes: control-unit\n  - unplug: K30\n';

describe('a routine of the file that makes safe', () => {
  test('is called, where the draft ends with the touch', () => {
    expect(mended(makeSafe, touch)).toEqual({
      title: 'Insert run: make-safe before step 3',
      steps: '  - ignition: on\n  - read-codes: control-unit\n  - run: make-safe\n  - unplug: K30\n',
    });
  });

  test('is called from a parts file, although nothing calls it yet', () => {
    expect(mended('', touch, `format: 1\n${makeSafe}`).title).toBe('Insert run: make-safe before step 3');
  });

  test('is given the source that it needs', () => {
    const needing = makeSafe
      .replace('  make-safe:\n', '  make-safe:\n    needs: { what: source }\n')
      .replace('disconnect: battery', 'disconnect: what');
    expect(mended(needing, touch).steps).toContain('  - run: make-safe\n    given: { what: battery }\n');
  });

  test('has one beside it that gives power back', () => {
    const steps = `${touch}  - plug: K30
  - clear-codes: control-unit
  - read: stage-1-loop
    outcomes: { within: next, else: next }
`;
    expect(mended(makeSafe + power, steps).steps).toContain(
      '  - run: make-safe\n  - unplug: K30\n  - plug: K30\n  - run: power-up\n  - clear-codes: control-unit\n',
    );
  });

  test('is passed over where it waits too short, or does more than that', () => {
    const written = '  - ignition: off\n  - disconnect: battery\n  - wait: 3 min\n  - unplug: K30\n';
    expect(mended(makeSafe.replace('3 min', '1 min'), touch).steps).toContain(written);
    expect(mended(`${makeSafe}      - unplug: K10\n`, touch).steps).toContain(written);
  });

  test('is read out of codes first where they are not written down yet', () => {
    const { steps } = mended(makeSafe, '  - ignition: on\n  - unplug: K30\n');
    expect(steps).toContain('  - read-codes: control-unit\n  - run: make-safe\n  - unplug: K30\n');
  });
});
