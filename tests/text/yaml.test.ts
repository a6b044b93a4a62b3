import { describe, expect, test } from 'vitest';
import { readProcedure } from '../../server/src/text/read-procedure.ts';
import { good } from './good.ts';
import { expectMarked, instead } from './marked.ts';

const said = (text: string) =>
  readProcedure({ id: 'file', text }).findings.map(({ rule, message }) => `${rule}: ${message}`);

describe('broken text gives one finding, where it breaks', () => {
  test('a quote that is not closed', () => {
    const read = expectMarked(
      instead(
        'revision: B\n',
        'revision: "B\n          ^^ yaml: The quote `"` that opens here is not closed.\n',
      ),
    );
    expect(read.whole).toBe(false);
  });

  test('a bracket that is not closed', () => {
    expectMarked(
      instead(
        'feeds: [control-unit]\n',
        'feeds: [control-unit\n           ^ yaml: The bracket `[` that opens here is not closed.\n',
      ),
    );
    expectMarked(
      instead(
        '    pins: { K10: [3, 4], K21: ["01", 2] }\n',
        '    pins: { K10: [3, 4, K21: ["01", 2] }\n                 ^ yaml: `[`\n',
      ),
    );
  });

  test('a bracket too many', () => {
    expectMarked(
      instead(
        'feeds: [control-unit]\n',
        'feeds: [control-unit]]\n                         ^ yaml: This bracket closes nothing.\n',
      ),
    );
  });

  test('a tab in the indentation', () => {
    expectMarked(
      instead(
        '    feeds: [control-unit]\n',
        '\tfeeds: [control-unit]\n^ yaml: A tab stands in the indentation. Use spaces.\n',
      ),
    );
  });

  test('indented too far, and not far enough', () => {
    expectMarked(
      instead(
        '    feeds: [control-unit]\n',
        '     feeds: [control-unit]\n     ^^^^^ yaml: indented further than the one above\n',
      ),
    );
    expectMarked(
      instead('    id: make-safe\n', '   id: make-safe\n   ^^^ yaml: This line belongs to no list item.\n'),
    );
  });

  test('a line without a colon', () => {
    expectMarked(
      instead('revision: B\n', 'revision B\n^^^^^^^^^^ yaml: This line has no `:` after its key.\n'),
    );
  });

  test('a colon inside a text', () => {
    expectMarked(
      instead(
        '    warning: Nobody in front of the airbag while power comes back.\n',
        '    warning: Nobody: in front of the airbag.\n             ^^^^^^^ yaml: A second `: ` on one line starts another key.\n',
      ),
    );
  });

  test('a colon far inside a text', () => {
    expectMarked(
      instead(
        'loop resistance too high\n',
        'loop: resistance\n                                      ^^^^^ yaml: if the colon belongs to it\n',
      ),
    );
  });

  test('the rest of the file is still checked', () => {
    expectMarked(
      instead('revision: B\n', 'revision: *b\n          ^^ yaml: alias\n')
        .replace('12.6 V\n', '12.6 A\n                  ^ quantity: expected a voltage\n')
        .replace('  - unplug: K30\n', '  - unplg: K30\n    ^^^^^ unknown-key: `unplug`\n'),
    );
  });

  test('what a break may have swallowed is not reported as missing', () => {
    expectMarked(
      instead('connectors:\n', 'parts: { }\n^^^^^ yaml: stands here a second time\nconnectors:\n').replace(
        '  - unplug: K30\n',
        '  - unplug: K31\n',
      ),
    );
  });

  test('a list on the line of its key', () => {
    expectMarked(instead('revision: B\n', 'revision: - B\n          ^ yaml: On one line write `[a, b]`.\n'));
  });

  test('a text that starts with a sign', () => {
    expectMarked(instead('revision: B\n', 'revision: @B\n          ^^ yaml: Put it in quotes.\n'));
  });

  test('a key that is written twice', () => {
    const read = expectMarked(
      instead('revision: B\n', 'revision: B\nrevision: C\n^^^^^^^^ yaml: stands here a second time\n'),
    );
    expect(read.procedure.revision).toBe('B');
    expect(read.findings[0]?.related).toHaveLength(1);
  });
});

describe('what procedures do without', () => {
  test.each([
    ['&b B', '&b', 'anchor'],
    ['*b', '*b', 'alias'],
    ['!!str B', '!!str', 'tag'],
    ['!mine B', '!mine', 'tag'],
  ])('`revision: %s`', (value, marked, word) => {
    expectMarked(
      instead('revision: B\n', `revision: ${value}\n          ${'^'.repeat(marked.length)} yaml: ${word}\n`),
    );
  });

  test('a tag makes nothing else of a list or map', () => {
    for (const tag of ['!!omap', '!!set', '!!pairs', '!!seq', '!!map', '!!str', '!!binary', '!!merge', '!'])
      for (const value of ['[control-unit]', '[control-unit: 1]', '{ control-unit }', 'control-unit'])
        expect(said(instead('feeds: [control-unit]', `feeds: ${tag} ${value}`)).join(' ')).toContain(
          `yaml: \`${tag}\` is a tag`,
        );
  });

  test('merge keys', () => {
    expectMarked(instead('revision: B\n', '<<: { revision: B }\n^^ unknown-key: `<<`\n'));
  });

  test('a directive', () => {
    expectMarked(`%YAML 1.1\n^^^^^^^^^ yaml: Remove it.\n---\n${good}`);
  });

  test('a second document', () => {
    expectMarked(`${good}---\n^^^ yaml: A file holds one procedure.\nformat: 1\n`);
  });

  test('a document may be opened and closed', () => {
    expect(said(`---\n${good}...\n`)).toEqual([]);
  });
});

describe('text behind ` #` is a comment', () => {
  test('where it swallows what was meant as text there is a warning', () => {
    const read = expectMarked(
      instead(
        'loop resistance too high\n',
        'loop #2 resistance\n                                           ^^^^^^^^^^^^^ comment-swallows: Text after ` #` is a comment.\n',
      ),
    );
    expect(read.findings[0]?.severity).toBe('warning');
    expect(read.whole).toBe(true);
  });

  test('behind a comma too', () => {
    expectMarked(
      instead(
        'feeds: [control-unit]\n',
        'feeds: [control-unit, #2\n                          ^^ comment-swallows: Text after ` #` is a comment.\n      ]\n',
      ),
    );
  });

  test.each([
    'revision: B # second\n',
    'revision: B\n#note\n',
    'revision: "B #2"\n',
    'revision: B#2\n',
    'revision: B  ## second\n',
  ])('an ordinary comment is silent: %j', (line) => {
    expectMarked(instead('revision: B\n', line));
  });
});

describe('files that are none', () => {
  test('empty', () => {
    for (const text of ['', '\n\n', '  ', '\uFEFF'])
      expect(said(text)).toEqual([expect.stringMatching(/^file: The file is empty/)]);
  });

  test('only a comment, a list, a text', () => {
    for (const text of ['# nothing\n', '- a\n- b\n', 'hello\n', '{}\n', '"x"', 'hello #2\n', '- a #2\n'])
      expect(readProcedure({ id: 'file', text }).findings[0]?.severity, text).toBe('error');
    expect(said('- a\n')).toEqual([expect.stringMatching(/^file: A procedure starts with `format: 1`/)]);
  });

  test('binary: one error, at the first character that is not text', () => {
    const read = readProcedure({ id: 'file', text: good.replace('revision: B', 'revision: B\u0000\u0001') });
    expect(read.findings).toHaveLength(1);
    expect(read.findings[0]?.message).toContain('U+0000');
    expect(read.range(read.findings[0]?.at ?? { file: '', path: [], part: 'key' }).from).toBe(
      good.indexOf('revision: B') + 11,
    );
    expect(said('\u007fELF\u0002')).toHaveLength(1);
    expect(said(good.replace('Halden', 'H\uFFFDlden'))).toEqual([expect.stringMatching(/UTF-8/)]);
    expect(said(good.replaceAll('\n', '\r'))).toEqual([expect.stringMatching(/carriage return/)]);
  });

  test('larger than a procedure can be: nothing is parsed', () => {
    expect(said(good + '#'.repeat(1024 * 1024))).toEqual([
      expect.stringMatching(/^file: This file is larger than 1 MiB/),
    ]);
  });

  test('nested without end', () => {
    for (const text of [
      '['.repeat(40_000),
      'a: {'.repeat(10_000),
      '- '.repeat(40_000),
      '? '.repeat(10_000),
    ]) {
      expect(said(text)).toEqual(['yaml: Lists and maps are nested too deeply.']);
    }
  });
});

describe('line ends and marks', () => {
  test('CRLF is read, and positions are right', () => {
    const text = good.replace('- unplug: K30', '- unplug: K31').replaceAll('\n', '\r\n');
    const read = readProcedure({ id: 'file', text });
    expect(read.findings).toHaveLength(1);
    const at = read.findings[0]?.at;
    const range = at === undefined ? { from: 0, to: 0 } : read.range(at);
    expect(text.slice(range.from, range.to)).toBe('K31');
    expect(readProcedure({ id: 'file', text: good.replaceAll('\n', '\r\n') }).procedure).toEqual(
      readProcedure({ id: 'file', text: good }).procedure,
    );
  });

  test('a byte order mark is read, and positions are right', () => {
    const text = `\uFEFF${good.replace('format: 1', 'format: one')}`;
    const read = readProcedure({ id: 'file', text });
    expect(read.findings).toHaveLength(1);
    const at = read.findings[0]?.at;
    const range = at === undefined ? { from: 0, to: 0 } : read.range(at);
    expect(text.slice(range.from, range.to)).toBe('one');
  });
});
