import { describe, expect, test } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { card } from '../../server/src/project/card.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { unusedWaiver } from '../../server/src/rules/waivers/unused-waiver.ts';
import { waiverRefused } from '../../server/src/rules/waivers/waiver-refused.ts';

const options = { date: '2026-01-31', version: '0.0.0', draft: false };

function analysisOf(text: string) {
  return analyse(snapshotOf([{ id: 'x.procedure.yaml', text }]), 'x.procedure.yaml');
}

describe('a waiver', () => {
  const analysis = analysisOf(unusedWaiver.examples.passes.text);

  test('marks the error that it names, which then stands in no way', () => {
    expect(finish(analysis.findings('order'))).toMatchObject([
      { rule: 'uncovered', severity: 'error', waived: { reason: 'The rig shows nothing else.' } },
    ]);
  });

  test('is printed on the card with its reason', () => {
    const made = finish(card(analysis, options));
    if ('refused' in made) throw new Error('the card is refused');
    expect(made.card.remarks.items.map(({ message }) => message)).toEqual([
      expect.stringMatching(/^Waived: The rig shows nothing else\. No outcome covers/),
    ]);
  });

  test('of a rule that guards live stages holds against nothing', () => {
    const made = finish(card(analysisOf(waiverRefused.examples.triggers.text), options));
    expect('refused' in made && made.refused.map(({ rule }) => rule)).toEqual(['waiver-refused']);
  });
});
