import { describe, expect, it } from 'vitest';
import { finish } from '../../server/src/bench/work.ts';
import { template } from '../../server/src/editor/template.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { applyEdits } from '../../server/src/project/edit.ts';
import { fixFor } from '../../server/src/project/mend/fix.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';

/** The template with a slip of the pen, and what its first finding is mended to. */
function mended(right: string, slip: string): string | null {
  const text = template.replace(right, slip);
  expect(text).not.toBe(template);
  const analysis = analyse(snapshotOf([{ id: 'slip', text }]), 'slip');
  const finding = finish(analysis.findings('text')).find(({ suggestion }) => suggestion !== undefined);
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

  it('is left alone where two words are equally near', () => {
    expect(mended('  K30: {', '  K31: { contact: 2..15 mΩ }\n  K32: {')).toBe(null);
  });
});
