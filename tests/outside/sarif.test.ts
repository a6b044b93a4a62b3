import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { Ajv } from 'ajv';
import type { ErrorObject } from 'ajv';
import { describe, expect, test } from 'vitest';
import { defaultBounds } from '../../server/src/paths/explore.ts';
import { checkSarif } from '../../server/src/cli/check-sarif.ts';
import { checkFile } from '../../server/src/cli/checked.ts';
import type { CheckedFile } from '../../server/src/cli/checked.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { rules } from '../../server/src/rules/rules.ts';
import { checkedTexts, folder, logOf, parsed } from '../cli/sarif-log.ts';

const written = readFileSync(new URL('sarif-schema-2.1.0.json', import.meta.url));

/** RFC 3986, 2 (from memory): the characters that a URI may hold. */
const uriCharacters = /^(?:[A-Za-z0-9\-._~:/?#[\]@!$&'()*+,;=]|%[0-9A-Fa-f]{2})*$/;

const ajv = new Ajv({
  allErrors: true,
  strict: true,
  // The schema describes and defaults beside `$ref`, and bounds without a type, and requires what it defines elsewhere, as its dialect lets it.
  strictTypes: false,
  strictRequired: false,
  // One of its patterns, that of languages, is none in the mode for all of Unicode.
  unicodeRegExp: false,
  formats: {
    'uri-reference': uriCharacters,
    uri: { validate: (text: string) => uriCharacters.test(text) && /^[A-Za-z][A-Za-z0-9+.-]*:/.test(text) },
    'date-time': /^\d{4}-\d\d-\d\dT\d\d:\d\d(?::\d\d(?:\.\d+)?)?Z$/,
  },
});
const validate = ajv.compile(JSON.parse(written.toString('utf8')) as object);

function problems(log: unknown): readonly string[] {
  return validate(log) ? [] : (validate.errors ?? []).map(said);
}

const said = ({ instancePath, message }: ErrorObject): string => `${instancePath} ${message ?? ''}`;

const example = (name: string): string =>
  rules.find((rule) => rule.name === name)?.examples.triggers.text ?? '';

function waived(checked: CheckedFile): CheckedFile {
  const { file } = checked.analysis;
  const at = { file, path: ['title'], part: 'value' } as const;
  const reason = 'So it is on the {trainer} in "Tolvik".';
  return {
    ...checked,
    findings: checked.findings.map((finding) => ({ ...finding, waived: { reason, at } })),
  };
}

describe('the schema of SARIF 2.1.0, as published by OASIS', () => {
  test('is kept as it was taken', () => {
    const notice = readFileSync(new URL('sarif-schema-2.1.0.notice.md', import.meta.url), 'utf8');
    expect(notice).toContain(createHash('sha256').update(written).digest('hex'));
  });

  test('refuses what is wrong in a log', () => {
    const log = structuredClone(
      logOf(checkedTexts({ 'a.procedure.yaml': example('live-touch') })),
    ) as never as {
      runs: [
        {
          results: [
            {
              level: string;
              locations: [
                { physicalLocation: { artifactLocation: { uri: string }; region: { startLine: number } } },
              ];
            },
          ];
        },
      ];
    };
    const [result] = log.runs[0].results;
    result.level = 'information';
    result.locations[0].physicalLocation.artifactLocation.uri = 'ä b.procedure.yaml';
    result.locations[0].physicalLocation.region.startLine = 0;
    expect(problems(log)).toHaveLength(3);
  });

  test.each(rules.map(({ name }) => name))('holds for the log of an example of %s', (name) => {
    const log = logOf(checkedTexts({ 'a.procedure.yaml': example(name) }));
    expect(log.runs[0].results.length).toBeGreaterThan(0);
    expect(problems(log)).toEqual([]);
  });

  test.each([
    ['a quote that is not closed', 'format: 1\ntitle: "broken\nsteps: []\n'],
    ['nothing in it', ''],
    ['a byte order mark', `\uFEFF${example('live-touch')}`],
    ['no mistake', rules[0]?.examples.passes.text ?? ''],
  ])('holds for the log of a file with %s', (_name, text) => {
    expect(problems(logOf(checkedTexts({ 'a.procedure.yaml': text })))).toEqual([]);
  });

  test('holds for names that are no ASCII, and for files elsewhere', () => {
    const names = [
      'Lüfter 100 %.procedure.yaml',
      '日本/#1?.procedure.yaml',
      '../a:b {c}.procedure.yaml',
      '/ü',
    ];
    const log = logOf(checkedTexts(Object.fromEntries(names.map((name) => [name, example('live-touch')]))));
    expect(log.runs[0].results).toHaveLength(names.length);
    expect(problems(log)).toEqual([]);
  });

  test('holds where findings are waived, with others that are not', () => {
    const [first, second] = checkedTexts({ 'a.yaml': example('live-touch'), 'b.yaml': example('repeats') });
    if (first === undefined || second === undefined) throw new Error('two files were checked');
    const log = logOf([waived(first), second]);
    expect(log.runs[0].results.map(({ suppressions }) => suppressions.length)).toEqual([1, 0]);
    expect(problems(log)).toEqual([]);
  });

  test('holds where files could not be read or were passed over, and where a bound was met', () => {
    const text = example('live-touch');
    const snapshot = snapshotOf([{ id: 'a.procedure.yaml', text }]);
    const bounded = checkFile(analyse(snapshot, 'a.procedure.yaml', { ...defaultBounds, configurations: 1 }));
    const passedOver = [
      { path: 'Ä b/{x}.Procedure.YAML', why: 'other-case' },
      { path: 'Ä b/round', why: 'link' },
      { path: '../c', why: 'unreadable', problem: 'it may not be read' },
    ] as const;
    const run = { checked: [bounded], problems: ['cannot read {0}'], passedOver, exit: 2, folder } as const;
    const log = parsed([...checkSarif(run)].join(''));
    const { toolExecutionNotifications = [] } = log.runs[0].invocations[0];
    expect(toolExecutionNotifications.map(({ level }) => level)).toEqual(['error', 'error', 'note', 'note']);
    expect(problems(log)).toEqual([]);
  });
});
