import { expect, test } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { example, readOnly } from '../../server/src/rules/examples.ts';

/* A routine of the file that no step calls, whose steps nobody checks on a path. */

const routines = (inner: string): string => `routines:
  look:
    steps:
      - inspect: Is the housing of the connector whole?
        outcomes: { ok: next, defect: next }
  outer:
    steps:
      - ${inner}
`;

/** `SEVERITY RULE SUBJECT` of each finding about what nothing uses, with the place that it stands at. */
function unusedIn(text: string, parts: string | null = null): readonly string[] {
  const files = [{ id: 'a.procedure.yaml', text }];
  const more = parts === null ? [] : [{ id: 'b.parts.yaml', text: parts }];
  const analysis = analyse(snapshotOf([...files, ...more]), 'a.procedure.yaml');
  return finish(analysis.findings('order'))
    .filter(({ rule }) => rule === 'unused')
    .map(
      ({ severity, subject, at }) => `${severity} ${subject ?? ''} ${'path' in at ? at.path.join('/') : ''}`,
    );
}

const sections = (text: string, more: string): string => text.replace('\nsteps:', `\n${more}steps:`);
const { text: sound } = example('', readOnly);

test('is a warning at its name, and so is one that it alone calls', () => {
  expect(unusedIn(sound)).toEqual([]);
  expect(unusedIn(sections(sound, routines('run: look')))).toEqual([
    'warning look routines/look',
    'warning outer routines/outer',
  ]);
});

test('is none where a step calls it, or a routine that is called', () => {
  const calls = (name: string): string =>
    `${sections(sound, routines('run: look')).trimEnd()}\n  - run: ${name}\n`;
  expect(unusedIn(calls('outer'))).toEqual([]);
  expect(unusedIn(calls('look'))).toEqual(['warning outer routines/outer']);
});

test('may stand in a parts file', () => {
  const parts = `format: 1\n${routines('run: look')}`;
  expect(unusedIn(`uses: [b.parts.yaml]\n${sound}`, parts)).toEqual([]);
});

test('is not told while the text has an error: what cannot be read may call it', () => {
  const text = sections(sound, routines('run: look'));
  expect(unusedIn(`${text.trimEnd()}\n  - rnu: outer\n`)).toEqual([]);
});
