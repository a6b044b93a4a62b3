import { describe, expect, test } from 'vitest';
import { readProcedure } from '../../server/src/text/read-procedure.ts';
import { good } from './good.ts';
import { expectMarked, instead } from './marked.ts';

/* YAML 1.2.2, 10.3.2, and JSON: what stands for nothing. It is never the text `null`. */

const words = ['null', 'Null', 'NULL', '~'];

const found = (text: string): readonly string[] =>
  readProcedure({ id: 'file', text }).findings.map(({ rule, subject }) => `${rule} ${subject ?? ''}`);

/** Keys with one value each, as they stand in the good text. */
const values: readonly (readonly [passage: string, key: string])[] = [
  ['title: Driver front airbag, stage 1 - loop resistance too high', 'title'],
  ['revision: B', 'revision'],
  ['applies-to: Halden V4 parcel van, restraint training rig', 'applies-to'],
  ['requires: { training: [restraint systems], protective: [eye protection] }', 'requires'],
  ['outcomes: { ok: next, defect: stop-low }', 'outcomes'],
];

describe('a word for nothing', () => {
  test.each(values.flatMap(([passage, key]) => words.map((word) => [passage, key, word] as const)))(
    'in place of the value of `%s`: %s: %s',
    (passage, key, word) => {
      expect(good).toContain(passage);
      const before = found(good);
      expect(found(instead(passage, `${key}: ${word}`)).filter((one) => !before.includes(one))).toEqual([
        `missing-key ${key}`,
      ]);
    },
  );

  test('is told at the word, with what the key takes', () => {
    expectMarked(
      instead(
        'title: Driver front airbag, stage 1 - loop resistance too high\n',
        'title: null\n       ^^^^ missing-key: `title` is empty: `null` stands for nothing unless it is in quotes. Expected is text, such as `Driver front airbag, stage 1 - loop resistance too high`.\n',
      ),
    );
  });

  test('in a list is told at its item', () => {
    expectMarked(
      instead('training: [restraint systems]', 'training: [~]').replace(
        /(requires:.*\n)/,
        '$1                       ^ missing-key: This item is empty: `~` stands for nothing unless it is in quotes.\n',
      ),
    );
  });

  test.each(words)('in quotes is a text: %s', (word) => {
    const read = readProcedure({
      id: 'file',
      text: instead('revision: B\n', `revision: "${word}"\n`),
    });
    expect(read.findings).toEqual([]);
    expect(read.procedure.revision).toBe(word);
  });

  test.each(['3', '0x10', 'true', 'yes', 'on', '2026-01-31', '1e3', '.inf', 'nullable'])(
    'is no number and no other word: %s stays as it is written',
    (word) => {
      const read = readProcedure({ id: 'file', text: instead('revision: B\n', `revision: ${word}\n`) });
      expect(read.findings).toEqual([]);
      expect(read.procedure.revision).toBe(word);
    },
  );

  test('is no name: of a parts file, of a step or of a target', () => {
    expect(found(`uses: [null]\n${good}`)).toEqual(['missing-key ']);
    expect(found(instead('    id: make-safe', '    id: ~'))).toContain('missing-key id');
    expect(found(instead('defect: stop-low', 'defect: ~'))).toEqual(['missing-key defect']);
  });

  test('is nothing in a file that is named as JSON too', () => {
    const text = '{ "format": 1, "title": null }';
    const findings = readProcedure({ id: 'a.procedure.json', text }).findings;
    expect(findings.map(({ rule, subject }) => `${rule} ${subject ?? ''}`)).toContain('missing-key title');
  });
});
