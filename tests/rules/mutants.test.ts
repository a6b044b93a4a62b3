import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { finish } from '../../server/src/bench/work.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import type { Finding } from '../../server/src/text/finding.ts';
import type { Procedure } from '../../server/src/text/procedure.ts';
import { difference } from '../oracle/compare.ts';
import { oracle } from '../oracle/oracle.ts';
import { withEach, withEachPairSwapped, withoutEachPathEntry, withoutEachStep } from './mutants.ts';
import type { Mutant } from './mutants.ts';

const folder = fileURLToPath(new URL('../../procedures', import.meta.url));
const shipped = readdirSync(folder)
  .filter((name) => name.endsWith('.procedure.yaml'))
  .map((name) => ({ name, text: readFileSync(join(folder, name), 'utf8') }));

function judged(text: string): { readonly procedure: Procedure; readonly findings: readonly Finding[] } {
  const analysis = analyse(snapshotOf([{ id: 'mutant.procedure.yaml', text }]), 'mutant.procedure.yaml');
  return { procedure: analysis.procedure().value, findings: finish(analysis.findings('order')) };
}

const isError = ({ severity }: Finding): boolean => severity === 'error';

/** What makes a procedure unsafe, as the oracle says: it knows nothing of the engine. */
const unsafeRules = [
  'live-touch',
  'short-wait',
  'impossible',
  'unfed-circuit',
  'unfed-monitor',
  'not-restored',
];

describe.each(shipped)('$name', ({ text }) => {
  it('is clean as shipped', () => {
    expect(judged(text).findings).toEqual([]);
  });

  const kinds: readonly [string, readonly Mutant[]][] = [
    ['a step deleted', withoutEachStep(text)],
    ['two steps swapped', withEachPairSwapped(text)],
    ['a wait shortened', withEach(text, /- wait: 3 min/g, '- wait: 1 min', 'wait shortened')],
    ['feeds deleted', withEach(text, / {4}feeds: .*\n/g, '', 'without feeds')],
    ['feeds of something else', withEach(text, /feeds: \[control-unit\]/g, 'feeds: []', 'feeds nothing')],
    ['live deleted', withEach(text, /, live: true/g, '', 'without live')],
    ['a path entry deleted', withoutEachPathEntry(text)],
  ];

  it.each(kinds)('with %s: every unsafe one is an error, at the right place', (_, mutants) => {
    expect(mutants.length).toBeGreaterThan(0);
    const wrong: string[] = [];
    let unsafe = 0;
    for (const mutant of mutants) {
      expect(mutant.text).not.toBe(text);
      const { procedure, findings } = judged(mutant.text);
      const inText = findings.some((finding) => finding.stage === 'text' && isError(finding));
      const told = oracle(procedure).filter(
        ({ rule, isError: grave }) => unsafeRules.includes(rule) && grave !== false,
      );
      if (inText || told.length > 0) unsafe += 1;
      for (const { rule, step, subject } of told) {
        const found = findings.find(
          (finding) =>
            finding.rule === rule &&
            (finding.step?.number ?? null) === step &&
            (finding.subject ?? null) === subject,
        );
        if (found === undefined || !isError(found))
          wrong.push(`${mutant.name}: ${rule} at ${step ?? '-'} about ${subject ?? '-'} is no error`);
      }
      wrong.push(...difference(findings, procedure).map((line) => `${mutant.name}: ${line}`));
    }
    expect(wrong).toEqual([]);
    expect(unsafe).toBeGreaterThan(0);
    console.log(`${unsafe} of ${mutants.length} mutants unsafe, all reported`);
  });

  it('without the stated wait and the reserve: nothing would prove the waits, which is an error at the source', () => {
    const { findings } = judged(text.replace(/ {4}wait: 3 min\n {4}reserve: .*\n/, ''));
    expect(findings.filter(isError).map(({ rule, at }) => [rule, at.path])).toEqual([
      ['no-wait', ['sources', 'battery']],
    ]);
  });
});
