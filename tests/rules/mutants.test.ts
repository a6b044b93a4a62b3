import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import type { Finding } from '../../server/src/model/finding.ts';
import type { Procedure } from '../../server/src/model/procedure.ts';
import { difference } from '../oracle/compare.ts';
import { oracle } from '../oracle/oracle.ts';
import { withEach, withEachPairSwapped, withoutEachPathEntry, withoutEachStep } from './mutants.ts';
import type { Mutant } from './mutants.ts';

const procedures = ['../../procedures', '../fixtures'].flatMap((path) => {
  const folder = fileURLToPath(new URL(path, import.meta.url));
  return readdirSync(folder)
    .filter((name) => name.endsWith('.procedure.yaml'))
    .map((name) => ({ name, text: readFileSync(join(folder, name), 'utf8') }));
});

// With routines a line is done several times: their steps are changed where they are written out.
const shipped = procedures.filter(({ text }) => !text.includes('\nroutines:'));

function judged(text: string): { readonly procedure: Procedure; readonly findings: readonly Finding[] } {
  const analysis = analyse(snapshotOf([{ id: 'mutant.procedure.yaml', text }]), 'mutant.procedure.yaml');
  return { procedure: analysis.procedure().value, findings: finish(analysis.findings('order')) };
}

const isError = ({ severity }: Finding): boolean => severity === 'error';

/** What makes a procedure unsafe, as the oracle says: it knows nothing of the engine. */
const unsafeRules = [
  'live-touch',
  'short-wait',
  'not-proven-dead',
  'proof-too-early',
  'proof-elsewhere',
  'unguarded-source',
  'impossible',
  'unfed-circuit',
  'unfed-monitor',
  'not-restored',
];

const mutantsOf: Readonly<Record<string, (text: string) => readonly Mutant[]>> = {
  'a step deleted': withoutEachStep,
  'two steps swapped': withEachPairSwapped,
  'a wait shortened': (text) => withEach(text, /- wait: \d+ min/g, '- wait: 1 min', 'wait shortened'),
  'feeds deleted': (text) => withEach(text, / {4}feeds: .*\n|feeds: \S+, /g, '', 'without feeds'),
  'feeds of something else': (text) => withEach(text, /feeds: \[[^\]]*\]/g, 'feeds: []', 'feeds nothing'),
  'live deleted': (text) => withEach(text, /, live: true/g, '', 'without live'),
  'carries deleted': (text) => withEach(text, /, carries: \S+ \}/g, ' }', 'without carries'),
  'a path entry deleted': withoutEachPathEntry,
};

it('every way of changing is used on some shipped procedure', () => {
  for (const [kind, change] of Object.entries(mutantsOf))
    expect(shipped.filter(({ text }) => change(text).length > 0).length, kind).toBeGreaterThan(0);
});

describe.each(shipped)('$name', ({ text }) => {
  it('is clean as shipped', () => {
    expect(judged(text).findings).toEqual([]);
  });

  const kinds = Object.entries(mutantsOf)
    .map(([kind, change]) => [kind, change(text)] as const)
    .filter(([, mutants]) => mutants.length > 0);

  it.each(kinds)('with %s: every unsafe one is an error, at the right place', (_, mutants) => {
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

  const waits = / {4}wait: 3 min\n {4}reserve: .*\n/;
  if (waits.test(text))
    it('without wait and reserve: nothing would prove the waits, which is an error', () => {
      const { findings } = judged(text.replace(waits, ''));
      expect(findings.filter(isError).map(({ rule, at }) => [rule, at.path])).toEqual([
        ['no-wait', ['sources', 'battery']],
      ]);
    });
});
