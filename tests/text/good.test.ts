import { expect, test } from 'vitest';
import { readProcedure } from '../../server/src/text/read-procedure.ts';
import { good } from './good.ts';

test('a sound procedure gives no findings and is whole', () => {
  const read = readProcedure({ id: 'good', text: good });
  expect(read.findings).toEqual([]);
  expect(read.whole).toBe(true);
});
