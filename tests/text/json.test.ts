import { parse } from 'yaml';
import { describe, expect, test } from 'vitest';
import { complete } from '../../server/src/editor/completion.ts';
import { readProcedure } from '../../server/src/text/read-procedure.ts';
import { opened } from '../editor/opened.ts';
import { good } from './good.ts';

/* JSON is YAML and is read by the same reader; a file that is named as JSON has to be JSON. */

const tree = parse(good) as Readonly<Record<string, unknown>>;
const pretty = JSON.stringify(tree, null, 2);
const escaped = pretty.replace(
  /[^\x20-\x7E\n]/g,
  (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`,
);

const lines = Object.entries(tree)
  .map(([key, value]) => `${JSON.stringify(key)}: ${JSON.stringify(value)}`)
  .join('\n');

function read(text: string) {
  const { findings, range, procedure } = readProcedure({ id: 'a.procedure.json', text });
  const said = findings.map(({ rule, message, at }) => {
    const { from, to } = range(at);
    return `${rule} at ${text.slice(from, to)}: ${message}`;
  });
  return { said, procedure };
}

describe('a procedure in JSON', () => {
  test.each([
    ['indented with blanks', pretty],
    ['indented with tabs', JSON.stringify(tree, null, '\t')],
    ['on one line', JSON.stringify(tree)],
    ['with escapes', escaped],
    ['with a byte order mark', `\uFEFF${pretty}`],
    ['with other line ends', pretty.replaceAll('\n', '\r\n')],
  ])('%s is what it is in YAML', (_, text) => {
    const { said, procedure } = read(text);
    expect(said).toEqual([]);
    const { steps, parts, connectors, loops, sources } = readProcedure({
      id: 'a.procedure.yaml',
      text: good,
    }).procedure;
    expect(procedure.steps.map(({ verb, path }) => [verb, path])).toEqual(
      steps.map(({ verb, path }) => [verb, path]),
    );
    expect(procedure).toMatchObject({ parts, connectors, loops, sources });
  });

  test.each([
    [
      'a comma behind the last',
      pretty.replace(/\n}$/, ',\n}'),
      'file at ,: This file is named as JSON. Remove the comma',
    ],
    [
      'a comment',
      pretty.replace('{', '{ # of the van'),
      'file at #: This file is named as JSON. Remove the comment',
    ],
    [
      'text without quotes',
      pretty.replace('"B"', 'B'),
      'file at B: This file is named as JSON. Put text in double quotes.',
    ],
    [
      'text in single quotes',
      pretty.replace('"B"', "'B'"),
      "file at 'B': This file is named as JSON. Put text in",
    ],
    ['YAML', good, 'file at format: This file is named as JSON. Put text in double quotes.'],
    ['lines in place of braces', lines, 'file at ": This file is named as JSON. Put all of it in braces'],
  ])('with %s is an error at the first of it', (_, text, says) => {
    const [first = '', ...others] = read(text).said.filter((one) => one.startsWith('file'));
    expect(first).toContain(says);
    expect(others).toEqual([]);
  });

  test('a key that is written twice is an error', () => {
    expect(read(pretty.replace('"title":', '"title": "Another",\n  "title":')).said).toEqual([
      expect.stringContaining('`title` stands here a second time'),
    ]);
  });

  test('has no completion: what would be put in is YAML', () => {
    const { text } = opened(pretty);
    const json = { ...opened(pretty), analysis: { ...opened(pretty).analysis, file: 'a.procedure.json' } };
    const position = text.positionAt(pretty.indexOf('"unplug"') + 1);
    expect(complete(opened(pretty), position, { snippets: false }).length).toBeGreaterThan(0);
    expect(complete(json, position, { snippets: false })).toEqual([]);
  });
});
