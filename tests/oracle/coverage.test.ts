import { expect, test } from 'vitest';
import { rules } from '../../server/src/rules/rules.ts';
import { EXCUSED, ORACLE_RULES, WAIVER_RULES, WINDOW_RULES } from './coverage.ts';

test('each rule is found by the oracle, or it is said why it cannot be', () => {
  const covered = [...ORACLE_RULES, ...WINDOW_RULES, ...WAIVER_RULES];
  const names = rules.map(({ name }) => name);
  expect([...covered, ...Object.keys(EXCUSED)].sort()).toEqual(names.toSorted());
});
