import { describe, expect, test } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import type { Analysis } from '../../server/src/project/analysis.ts';
import { applyEdits } from '../../server/src/project/edit.ts';
import { fixAll } from '../../server/src/fixes/fix-all.ts';
import { fixFor } from '../../server/src/fixes/fix.ts';
import { endRules } from '../../server/src/fixes/trial.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { bench, proof, routines, takenAway, ways } from '../rules/drafts/drafts.ts';
import { hidden } from '../rules/drafts/hidden.ts';
import { voltage } from '../rules/drafts/voltage.ts';

function analysed(text: string, parts?: string): Analysis {
  const files = [{ id: 'draft.procedure.yaml', text }];
  if (parts !== undefined) files.push({ id: 'workshop.parts.yaml', text: parts });
  return analyse(snapshotOf(files), 'draft.procedure.yaml');
}

/** Findings by rule and severity, those that a draft leaves open where it ends left out: fixes of its last touch let them pass. */
function counted(analysis: Analysis): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const { rule, severity } of finish(analysis.findings('order')))
    if (!endRules.has(rule)) counts.set(`${severity} ${rule}`, (counts.get(`${severity} ${rule}`) ?? 0) + 1);
  return counts;
}

const drafts = [takenAway, routines, voltage, bench, proof, ways, hidden].flat();

describe('fix all', () => {
  test.each(drafts)('leaves nothing with a sure way, and brings nothing: $story', ({ text, parts }) => {
    const before = analysed(text, parts);
    const fixes = finish(fixAll(before));
    const after = fixes === null ? before : analysed(applyEdits(text, fixes.edits), parts);
    for (const finding of finish(after.findings('order')))
      expect([finding.message, finish(fixFor(after, finding))?.isPreferred ?? false]).toEqual([
        finding.message,
        false,
      ]);
    const old = counted(before);
    for (const [name, count] of counted(after))
      expect([name, count <= (old.get(name) ?? 0)]).toEqual([name, true]);
  });

  test('mends something in many of the drafts', () => {
    const mended = drafts.filter(({ text, parts }) => finish(fixAll(analysed(text, parts))) !== null);
    expect(mended.length).toBeGreaterThan(drafts.length / 3);
  });

  test('never makes a choice for the author', () => {
    const choice = drafts.find(({ must }) => must.some((one) => one.includes('half-open')));
    if (choice === undefined) throw new Error('a draft that is half open is needed');
    const fixes = finish(fixAll(analysed(choice.text, choice.parts)));
    const text = fixes === null ? choice.text : applyEdits(choice.text, fixes.edits);
    expect(
      finish(analysed(text, choice.parts).findings('order')).some(({ rule }) => rule === 'half-open'),
    ).toBe(true);
  });
});
