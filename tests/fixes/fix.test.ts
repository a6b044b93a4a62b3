import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { fixFor } from '../../server/src/fixes/fix.ts';
import { touchRules } from '../../server/src/fixes/menders.ts';
import { tryEdits } from '../../server/src/fixes/trial.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { withEach, withEachPairSwapped, withoutEachStep } from '../rules/mutants.ts';
import type { Mutant } from '../rules/mutants.ts';

const shipped = ['../../procedures', '../fixtures']
  .flatMap((path) => {
    const folder = fileURLToPath(new URL(path, import.meta.url));
    return readdirSync(folder)
      .filter((name) => name.endsWith('.procedure.yaml'))
      .map((name) => ({ name, text: readFileSync(join(folder, name), 'utf8') }));
  })
  // Where nothing is live no touch is unsafe; with routines a step is changed where it is written out.
  .filter(({ text }) => /live: true|kind: high-voltage/.test(text) && !text.includes('\nroutines:'));

describe.each(shipped)('mending $name', ({ text }) => {
  const kinds: readonly [string, readonly Mutant[]][] = [
    ['a step deleted', withoutEachStep(text)],
    ['two steps swapped', withEachPairSwapped(text)],
    ['a wait shortened', withEach(text, /- wait: \d+ min/g, '- wait: 1 min', 'wait shortened')],
  ];

  it.each(kinds)(
    'with %s: each unsafe touch has a fix, after which it is gone and nothing new has come',
    (_, mutants) => {
      const wrong: string[] = [];
      let mended = 0;
      for (const { name, text: broken } of mutants) {
        const analysis = analyse(snapshotOf([{ id: 'mutant', text: broken }]), 'mutant');
        for (const finding of finish(analysis.findings('order'))) {
          if (!touchRules.has(finding.rule)) continue;
          const fix = finish(fixFor(analysis, finding));
          if (fix === null) {
            wrong.push(`${name}: no fix for ${finding.message}`);
            continue;
          }
          const { gone, fresh } = finish(tryEdits(analysis, finding, fix.edits));
          if (!gone || fresh.length > 0) wrong.push(`${name}: ${fix.title} does not hold`);
          else mended += 1;
        }
      }
      console.log(`${mended} unsafe touches mended`);
      expect(wrong).toEqual([]);
      expect(mended).toBeGreaterThan(0);
    },
  );
});
