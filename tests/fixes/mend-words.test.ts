import { describe, expect, it } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { writtenTemplate as template } from '../editor/written-template.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { applyEdits } from '../../server/src/project/edit.ts';
import { fixFor } from '../../server/src/fixes/fix.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';

const head = template.split('steps:\n')[0] ?? '';

/** The template with a slip of the pen, and what its first finding is mended to. */
function mended(right: string, slip: string, whole = template): string | null {
  const text = whole.replace(right, slip);
  expect(text).not.toBe(whole);
  const analysis = analyse(snapshotOf([{ id: 'slip', text }]), 'slip');
  const finding = finish(analysis.findings('order')).find(({ suggestion }) => suggestion !== undefined);
  const fix = finding === undefined ? null : finish(fixFor(analysis, finding));
  return fix === null ? null : applyEdits(text, fix.edits);
}

describe('a word that is not known but near to one', () => {
  it.each([
    ['a verb', '- ignition:', '- igniton:'],
    ['a key', 'title:', 'titel:'],
    ['a kind', 'kind: battery', 'kind: batery'],
    ['what a verb takes', '- ignition: on', '- ignition: onn'],
    ['an id', '- read-codes: control-unit', '- read-codes: control-unti'],
  ])('%s is put right, and nothing else', (_, right, slip) => {
    expect(mended(right, slip)).toBe(template);
  });

  it.each([
    ['a side', '    at: K30.monitor', '    at: K30.monitr'],
    ['a routine', '  - run: make-safe', '  - run: make-saef'],
    ['what a routine needs', 'given: { where: K30.monitor }', 'given: { wher: K30.monitor }'],
    ['the step of a waiver', 'step: final', 'step: finla'],
    ['the rule of a waiver', 'rule: wait-without-effect', 'rule: wait-without-efect'],
    ['an outcome', 'outcomes: { within: next, else: final }', 'outcomes: { witin: next, else: final }'],
  ])('%s is put right too', (_, right, slip) => {
    const text = `${head}waivers:
  - { rule: wait-without-effect, step: final, reason: The unit needs a minute. }
routines:
  make-safe:
    needs: { where: side }
    steps:
      - ignition: off
      - disconnect: battery
      - wait: 3 min
      - unplug: K30
        warning: Stay clear.
      - fit: bench-lamp
        at: where
      - remove: bench-lamp
      - plug: K30
steps:
  - ignition: on
  - read-codes: control-unit
  - run: make-safe
    given: { where: K30.monitor }
  - section: More of it
  - ignition: off
  - fit: bench-lamp
    at: K30.monitor
  - remove: bench-lamp
  - reconnect: battery
  - ignition: on
  - clear-codes: control-unit
  - read: stage-1-loop
    outcomes: { within: next, else: final }
  - wait: 1 min
    id: final
`;
    expect(mended(right, slip, text)).toBe(text);
  });

  it('is left alone where two words are equally near', () => {
    expect(mended('  K30: {', '  K31: { contact: 2..15 mΩ }\n  K32: {')).toBe(null);
  });
});
