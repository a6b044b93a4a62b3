import { describe, expect, test } from 'vitest';
import { readProcedure } from '../../server/src/text/read-procedure.ts';
import { good } from './good.ts';

/* A section that is written and empty is an error, whether or not a parts file holds what would stand in it. */

const sectionOf = (section: string): RegExp => new RegExp(`^${section}:\\n(?: .*\\n|\\n)*`, 'm');

describe('an empty section that a parts file fills', () => {
  test.each(
    ['sources', 'instruments', 'parts', 'connectors', 'loads', 'loops', 'routines', 'assemblies'].flatMap(
      (section) => ['', ' {}', ' null'].map((nothing) => [section, nothing] as const),
    ),
  )('is told at its key, and nothing else is: %s:%s', (section, nothing) => {
    const written = sectionOf(section).exec(good)?.[0] ?? '';
    const partsText = `format: 1\ntitle: Parts\n${written}`;
    const find = () => ({ id: 'b.parts.yaml', text: partsText });
    const rest = `uses: [b.parts.yaml]\n${good.replace(sectionOf(section), '')}`;
    const found = (text: string): readonly string[] => {
      const read = readProcedure({ id: 'a.procedure.yaml', text }, find);
      expect(read.thrown).toBeNull();
      return read.findings.map(({ rule, subject }) => `${rule} ${subject ?? ''}`);
    };
    expect(found(rest)).toEqual([]);
    expect(found(`${rest}${section}:${nothing}\n`)).toEqual([`missing-key ${section}`]);
  });
});
