import { describe, expect, test } from 'vitest';
import { isScalar, parseDocument, visit } from 'yaml';
import { readProcedure } from '../../server/src/text/read-procedure.ts';
import { findShared } from './corpus.ts';
import { everyKey } from './every-key.ts';
import { good } from './good.ts';
import { expectMarked, instead } from './marked.ts';

const noKey = 'No key stands before this `:`, so what follows it is not read.';

/** Where each key of a text stands. */
function keysIn(text: string): readonly (readonly [from: number, to: number])[] {
  const found: (readonly [number, number])[] = [];
  visit(parseDocument(text, { schema: 'failsafe' }), {
    Pair: (_, { key }) => {
      if (isScalar(key) && key.range != null) found.push([key.range[0], key.range[1]]);
    },
  });
  return found;
}

describe('an entry without its key is an error at its colon', () => {
  test('in every map of the format', () => {
    const keys = keysIn(everyKey);
    expect(keys.length).toBeGreaterThan(300);
    for (const [from, to] of keys) {
      const text = everyKey.slice(0, from) + everyKey.slice(to);
      const { findings, range, whole } = readProcedure({ id: 'file', text }, findShared);
      const told = findings.filter(({ rule }) => rule === 'yaml').map(({ at }) => range(at));
      expect(told, everyKey.slice(from, to)).toEqual([{ from, to: from + 1 }]);
      expect(whole).toBe(false);
    }
  });

  test('and the only one: what seems to be missing is most likely there', () => {
    expectMarked(instead('    voltage: 12.6 V\n', `    : 12.6 V\n    ^ yaml: ${noKey}\n`));
  });

  test('in brackets, with nothing behind it, and with the value in the lines below', () => {
    const pins = '    pins: { K10: [3, 4], K21: ["01", 2] }\n';
    expectMarked(instead(pins, `${pins.replace('K10', '')}            ^ yaml: ${noKey}\n`));
    expectMarked(instead('revision: B\n', `revision: B\n:\n^ yaml: ${noKey}\n`));
    expectMarked(instead('  battery:\n', `  :\n  ^ yaml: ${noKey}\n`));
    expectMarked(instead('  - unplug: K30\n', `  - : K30\n    ^ yaml: ${noKey}\n`));
  });

  test('a wait that would be shorter without it', () => {
    // 6.8 mF and 4.7 kΩ take longer from 24 V to 2 V than the 20 s that are stated.
    const text = good.replace('    wait: 3 min\n    reserve:', '    wait: 20 s\n    :');
    expect(
      readProcedure({ id: 'file', text }).findings.map(({ rule, severity }) => `${severity} ${rule}`),
    ).toEqual(['error yaml']);
  });
});

describe('a key that is written with `?`', () => {
  test('is read like any other', () => {
    const { procedure, findings } = readProcedure({
      id: 'file',
      text: good.replace('revision: B', '? revision\n: B'),
    });
    expect(findings).toEqual([]);
    expect(procedure.revision).toBe('B');
  });

  test.each(['?\n', '? \n', '?\n: B\n'])('has to be there: %j', (line) => {
    const [first = '', ...rest] = line.split('\n');
    expectMarked(
      instead('revision: B\n', `${first}\n^ yaml: No key stands behind this \`?\`.\n${rest.join('\n')}`),
    );
  });

  test('is a word', () => {
    expectMarked(instead('revision: B\n', '? [revision]\n  ^^^^^^^^^^ yaml: A key is a word\n: B\n'));
  });

  test('stands on one line', () => {
    expectMarked(
      instead(
        'revision: B\n',
        '? other\n  ^^^^^ yaml: This key goes on in the next line.\n  revision\n: B\n',
      ),
    );
  });
});

test('a line in brackets that runs together with the key below it is an error', () => {
  const read = expectMarked(
    instead(
      'reserve: { capacitance',
      'reserve: { wait\n               ^^^^ yaml: A comma or a `:` is missing between them.\n      capacitance',
    ),
  );
  // What stands below it is still read.
  expect(read.procedure.sources.get('battery')?.reserve).toMatchObject({ chargedTo: { nominal: 24 } });
});

test('a key with nothing behind it in brackets is marked where it stands', () => {
  expectMarked(
    instead(
      '    pins: { K10: [3, 4], K21: ["01", 2] }\n',
      '    pins: { K10, K21: ["01", 2] }\n            ^^^ missing-key: Nothing is written after `K10`\n',
    ),
  );
});

test('a key in quotes is the same key, and empty quotes are none', () => {
  expectMarked(
    instead('revision: B\n', 'revision: B\n"revision": C\n^^^^^^^^^^ yaml: stands here a second time\n'),
  );
  expectMarked(
    instead('revision: B\n', '"": B\n^^ unknown-key: An empty text is not a key that is known here.\n'),
  );
});

test.each(['constructor', 'toString', 'valueOf', 'hasOwnProperty'])('`%s` is an id like any other', (id) => {
  const text = good.replaceAll('make-safe', id).replaceAll('K10', id);
  const { procedure, findings } = readProcedure({ id: 'file', text });
  expect(findings).toEqual([]);
  expect(procedure.connectors.has(id)).toBe(true);
  expect(procedure.loops.get('stage-1-loop')?.pins.get(id)).toEqual(['3', '4']);
  expect(procedure.steps.some((step) => step.id === id)).toBe(true);
});
