import { describe, expect, test } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { applyEdits } from '../../server/src/project/edit.ts';
import { fixesFor } from '../../server/src/fixes/fix.ts';
import type { Fix } from '../../server/src/fixes/fix.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { draftText, readCodes } from '../rules/drafts/circuits.ts';

/* Where an outcome that is missing may lead. */

const stops = `  - stop: The loop is sound.
    id: sound
  - conclude: coil-coupling
    id: coupling
  - stop: The loop is not sound.
    id: faulty
  - stop: Ask the workshop lead.
    id: ask
`;

function offered(outcomes: string, rest = stops): { readonly text: string; readonly fixes: readonly Fix[] } {
  const steps = `${readCodes}  - clear-codes: control-unit\n  - read: driver-loop\n    id: reading\n    outcomes: { ${outcomes} }\n`;
  const text = draftText(steps + rest);
  const analysis = analyse(snapshotOf([{ id: 'draft', text }]), 'draft');
  const finding = finish(analysis.findings('order')).find(({ rule }) => rule === 'uncovered');
  if (finding === undefined) throw new Error('an outcome must be missing');
  return { text, fixes: finish(fixesFor(analysis, finding)) };
}

const targets = (outcomes: string, rest = stops): readonly string[] =>
  offered(outcomes, rest).fixes.map(({ title }) => /`(.*)`/.exec(title)?.[1] ?? title);

describe('a missing outcome', () => {
  test('may lead to any step with an id behind it that nothing good leads to: stops first', () => {
    expect(targets('within: next')).toEqual(['faulty', 'ask', 'coupling']);
    expect(targets('within: sound')).toEqual(['faulty', 'ask', 'coupling']);
  });

  test('may lead where the step sends something else that is wrong, before all others', () => {
    expect(targets('within: next, below: coupling')).toEqual(['coupling', 'faulty', 'ask']);
  });

  test('never leads where the good reading goes, and never just on', () => {
    for (const good of ['within: next, below: next', 'within: faulty', 'within: sound', 'below: ask'])
      expect([good, targets(good).includes('next')]).toEqual([good, false]);
    expect(targets('within: next')).not.toContain('sound');
    expect(targets('within: sound')).not.toContain('sound');
    expect(targets('within: faulty')).not.toContain('faulty');
  });

  test('is a choice for the author, whichever it is', () => {
    const { text, fixes } = offered('within: next, below: faulty, above: faulty');
    expect(fixes.length).toBeGreaterThan(1);
    for (const { isPreferred, edits } of fixes) {
      expect(isPreferred).toBe(false);
      const after = applyEdits(text, edits);
      const findings = finish(analyse(snapshotOf([{ id: 'draft', text: after }]), 'draft').findings('order'));
      expect(findings.filter(({ rule }) => rule === 'uncovered' || rule === 'no-difference')).toEqual([]);
    }
  });

  test('has no fix where no step has an id that it may lead to', () => {
    expect(targets('within: next', '  - stop: The loop was read.\n')).toEqual([]);
  });

  test('what another step leads to by `else` because all else is named is a good place too', () => {
    const rest = stops.replace(
      '  - stop: The loop is sound.',
      '  - read: driver-loop\n    outcomes: { outside: faulty, else: ask }\n  - stop: The loop is sound.',
    );
    expect(targets('within: next', rest)).toEqual(['sound', 'faulty', 'coupling']);
  });
});
