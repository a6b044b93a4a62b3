import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { example } from '../../server/src/rules/examples.ts';
import { ran } from './fake-terminal.ts';

/* Parts files on the command line: read where they lie, and findings in them shown where they are used. */

const { text } = example(
  '',
  `
- run: take-apart
- stop: Hand over to the workshop lead.
  leaves: [battery, K30, codes, repair]
`,
);
const section = /connectors:\n(?: .*\n)+/.exec(text)?.[0] ?? '';
const routine = `routines:
  take-apart:
    steps:
      - unplug: K30
`;

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'parts-'));
  mkdirSync(join(folder, 'shared'));
  writeFileSync(join(folder, 'shared', 'k.parts.yaml'), `format: 1\n${section}${routine}`);
  writeFileSync(join(folder, 'a.procedure.yaml'), text.replace(section, 'uses: [shared/k.parts.yaml]\n'));
});
afterAll(() => {
  rmSync(folder, { recursive: true });
});

test('a finding in a routine of a parts file is told at the call, and names both places', () => {
  const { exit, out } = ran(['check', '--format', 'json', folder]);
  expect(exit).toBe(1);
  const document = JSON.parse(out) as {
    files: { file: string; findings: Record<string, unknown>[] }[];
  };
  expect(document.files.map(({ file }) => file.slice(folder.length + 1))).toEqual([
    'a.procedure.yaml',
    'shared/k.parts.yaml',
  ]);
  const found = document.files[0]?.findings.find(({ rule }) => rule === 'live-touch');
  expect(found).toMatchObject({
    subject: 'K30',
    step: { number: 1, routine: 'take-apart', calls: [{ number: 1 }] },
    related: [
      { message: 'Here in the parts file.', file: join(folder, 'shared', 'k.parts.yaml') },
      { message: 'The call in step 1.', file: join(folder, 'a.procedure.yaml') },
    ],
  });
  const line = text
    .replace(section, 'uses: [shared/k.parts.yaml]\n')
    .split('\n')
    .indexOf('  - run: take-apart');
  expect(found?.range).toMatchObject({ start: { line } });
});
