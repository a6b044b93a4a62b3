import { describe, expect, it } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { rules } from '../../server/src/rules/rules.ts';

function found(text: string): readonly string[] {
  const snapshot = snapshotOf([{ id: 'example.procedure.yaml', text }]);
  const findings = finish(analyse(snapshot, 'example.procedure.yaml').findings('order'));
  // What the author has taken upon himself counts no longer.
  const standing = findings.filter(({ waived }) => waived === undefined);
  return standing.map(({ rule, severity, message }) => `${rule} (${severity}): ${message}`);
}

describe.each(rules.map((rule) => ({ name: rule.name, rule })))('the examples of $name', ({ name, rule }) => {
  it('triggers it and nothing else', () => {
    const findings = found(rule.examples.triggers.text);
    expect(findings.length).toBeGreaterThan(0);
    expect(findings.filter((finding) => !finding.startsWith(`${name} (${rule.severity})`))).toEqual([]);
  });

  it('passes without a finding', () => {
    expect(found(rule.examples.passes.text)).toEqual([]);
  });
});

describe('the list of rules', () => {
  it('names each rule once', () => {
    const names = rules.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
  });
});
