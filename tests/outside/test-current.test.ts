import { describe, expect, test } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { testCurrent } from '../../server/src/rules/attributes/test-current.ts';

/** What the rule says of an instrument that sends so much through a stage of so much. */
function said(sends: string, noFire: string): readonly string[] {
  const text = testCurrent.examples.triggers.text.replace('50 mA', sends).replace('400 mA', noFire);
  const findings = finish(analyse(snapshotOf([{ id: 'example', text }]), 'example').findings('order'));
  return findings.map(({ rule }) => rule).filter((rule) => rule !== 'unlikely-value');
}

describe('data sheets of squib drivers, against a no-fire current of 0.4 A (from memory)', () => {
  test.each([
    ['30..34 mA', 'four channels, least to typical', []],
    ['30..40.5 mA', 'four channels, least to most', ['test-current']],
    ['38..42 mA', 'four squibs, doc. 024714', ['test-current']],
  ])('%s (%s)', (sends, _source, rules) => {
    expect(said(sends, '400 mA')).toEqual(rules);
  });

  test('a stage of the insensitive class, 1 A no-fire (GJB 344-1987), bears them', () => {
    expect(said('38..42 mA', '1 A')).toEqual([]);
  });
});

describe('14 CFR 417 Appendix D: a monitoring current of no more than a tenth of the no-fire current', () => {
  test.each([
    ['40 mA', '400 mA'],
    ['0.04 A', '400 mA'],
    ['40 mA', '0.4 A'],
    ['100 mA', '1 A'],
    // In binary fractions ten times 0.07 is more than 0.7.
    ['0.07 A', '700 mA'],
    ['30..40 mA', '400..500 mA'],
  ])('%s through a stage of %s', (sends, noFire) => {
    expect(said(sends, noFire)).toEqual([]);
  });

  test.each([
    ['42 mA', '400 mA'],
    ['40.000001 mA', '400 mA'],
    ['101 mA', '1 A'],
    // Either end of what is stated may be the true one.
    ['40 mA ± 1 %', '400 mA'],
    ['40 mA', '400 mA ± 1 %'],
  ])('not %s through a stage of %s', (sends, noFire) => {
    expect(said(sends, noFire)).toEqual(['test-current']);
  });
});
