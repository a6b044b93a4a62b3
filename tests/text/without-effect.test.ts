import { describe, expect, test } from 'vitest';
import { readProcedure } from '../../server/src/text/read-procedure.ts';
import { good } from './good.ts';
import { expectMarked, instead } from './marked.ts';

/* What is written and would have no effect says so: most likely something else was meant. */

/** Each passage with something empty in its place, and the rule of the one finding at the key. */
const emptied: readonly (readonly [passage: string, key: string])[] = [
  ['requires: { training: [restraint systems], protective: [eye protection] }', 'requires'],
  ['conditions: { ambient: 10..35 °C }', 'conditions'],
  ['codes: { too-low: below 1.0 Ω, too-high: above 4.5 Ω }', 'codes'],
  ['pins: { K10: [3, 4], K21: ["01", 2] }', 'pins'],
  ['outcomes: { within: finish, below: stop-low, else: make-safe }', 'outcomes'],
  ['outcomes: { stage-1-loop: { open: next }, within: blame-stage, else: blame-coupling }', 'outcomes'],
  ['stage-1-loop: { open: next }', 'stage-1-loop'],
  ['outcomes: { ok: next, defect: stop-low }', 'outcomes'],
];

const addedToFile = ['entries', 'assemblies', 'routines'];

describe('a map without a key', () => {
  const said = (text: string) =>
    readProcedure({ id: 'file', text }).findings.map(({ rule, subject }) => `${rule} ${subject ?? ''}`);

  test.each(emptied)('`%s`', (passage, key) => {
    expect(said(instead(passage, `${key}: {}`))).toEqual([`missing-key ${key}`]);
  });

  test.each(addedToFile)('`%s`', (key) => {
    expect(said(instead('sources:\n', `${key}: { }\nsources:\n`))).toEqual([`missing-key ${key}`]);
  });

  test('is told at its key, with what it takes', () => {
    expectMarked(
      instead(
        'conditions: { ambient: 10..35 °C }\n',
        'conditions: {}\n^^^^^^^^^^ missing-key: Nothing is written in `conditions`; expected `ambient`.\n',
      ),
    );
    expectMarked(
      instead(
        '    expect: 1.9..4.0 Ω\n',
        '    expect: 1.9..4.0 Ω\n    windows: {}\n    ^^^^^^^ missing-key: Nothing is written in `windows`\n',
      ),
    );
  });

  test('that lost its only entry with its key is no finding of its own', () => {
    const text = good.replace('outcomes: { ok: next, defect: stop-low }', 'outcomes:\n      : next');
    expect(said(text)).toEqual(['yaml ']);
  });
});

test('a list without an item', () => {
  expectMarked(
    instead('training: [restraint systems]', 'training: []').replace(
      /(requires:.*\n)/,
      '$1                      ^^ wrong-value: not an empty list\n',
    ),
  );
  expectMarked(instead('sources:\n', 'uses: []\n      ^^ wrong-value: not an empty list\nsources:\n'));
});

describe('the same twice in a list', () => {
  test.each([
    ['    feeds: [control-unit]\n', 'control-unit'],
    ['    at: [K30.monitor, stage-1]\n', 'stage-1'],
    ['    leaves: [codes, repair]\n', 'repair'],
    ['  - read: [stage-1-loop]\n', 'stage-1-loop'],
  ])('%s', (line, word) => {
    const twice = line.replace(`${word}]`, `${word}, ${word}]`);
    const caret = ' '.repeat(twice.lastIndexOf(word)) + '^'.repeat(word.length);
    const read = expectMarked(
      instead(line, `${twice}${caret} wrong-value: \`${word}\` stands in this list already.\n`),
    );
    expect(read.findings[0]?.related).toHaveLength(1);
  });

  test('of an assembly', () => {
    expectMarked(
      instead(
        'loops:\n',
        'assemblies: { box: [K30, K21, K30] }\n                              ^^^ wrong-value: `K30` stands in this list already.\nloops:\n',
      ),
    );
  });
});

describe('a heading', () => {
  test('has steps below it', () => {
    expectMarked(
      instead(
        '  - section: Make safe\n',
        '  - section: Confirm again\n             ^^^^^^^^^^^^^ missing-key: No step follows this heading.\n  - section: Make safe\n',
      ),
    );
    expectMarked(
      `${good}  - section: The end\n             ^^^^^^^ missing-key: No step follows this heading.\n`,
    );
  });
});

test('pins of the monitor', () => {
  expectMarked(
    instead(
      '    pins: { K10: [3, 4], K21: ["01", 2] }\n',
      '    pins: { control-unit: [1, 2], K10: [3, 4], K21: ["01", 2] }\n            ^^^^^^^^^^^^ wrong-id: `control-unit` is an instrument; expected a connector.\n',
    ),
  );
});
