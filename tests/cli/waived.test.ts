import { describe, expect, test } from 'vitest';
import { checkJson } from '../../server/src/cli/check-json.ts';
import { checkText } from '../../server/src/cli/check-text.ts';
import { checkFile, exitOf } from '../../server/src/cli/checked.ts';
import type { CheckedFile } from '../../server/src/cli/checked.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { rules } from '../../server/src/rules/rules.ts';
import { fakeTerminal } from './fake-terminal.ts';

const file = 'a.procedure.yaml';
const reason = 'The trainer stays as it is.';

/** The example of a rule, checked; with `waived` each finding is taken upon himself by its author, in the title's line. */
function checked(rule: string, waived: boolean): CheckedFile {
  const text = rules.find(({ name }) => name === rule)?.examples.triggers.text ?? '';
  const found = checkFile(analyse(snapshotOf([{ id: file, text }]), file));
  expect(found.findings.map((finding) => finding.rule)).toEqual([rule]);
  if (!waived) return found;
  const at = { file, path: ['title'], part: 'value' } as const;
  return { ...found, findings: found.findings.map((finding) => ({ ...finding, waived: { reason, at } })) };
}

describe.each(['repeats', 'not-restored'])('a finding of %s that is waived', (rule) => {
  const [open, waived] = [checked(rule, false), checked(rule, true)];

  test('never counts in the exit status, under --strict either', () => {
    expect(exitOf([open], true)).toBe(1);
    expect([exitOf([waived], false), exitOf([waived], true)]).toEqual([0, 0]);
    expect(exitOf([waived, open], true)).toBe(1);
    expect(exitOf([{ ...waived, complete: false }], false)).toBe(1);
  });

  test('is shown with its reason, and counted as waived only', () => {
    const text = [...checkText(fakeTerminal().terminal, [waived])].join('');
    expect(text).toContain(`\n  waived: ${reason}\n`);
    expect(text).toContain('1 file checked: 0 errors, 0 warnings, 1 waived.');
    expect([...checkText(fakeTerminal().terminal, [open])].join('')).not.toContain('waived');
  });

  test('is told with its reason and place in the machine format', () => {
    const of = (one: CheckedFile): unknown => JSON.parse([...checkJson([one])].join(''));
    expect(of(waived)).toMatchObject({
      summary: { errors: 0, warnings: 0, waived: 1 },
      files: [
        {
          findings: [
            {
              rule,
              waived: {
                reason,
                file,
                range: { start: { line: 1, character: 7 }, end: { line: 1, character: 14 } },
              },
            },
          ],
        },
      ],
    });
    expect(of(open)).toMatchObject({ summary: { waived: 0 }, files: [{ findings: [{ waived: null }] }] });
  });
});
