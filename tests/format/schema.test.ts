import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { expect, test } from 'vitest';
import { laterEntryKeys, laterKeys, laterStepKeys } from '../../server/src/format/later.ts';
import { definitions } from '../../server/src/format/definitions.ts';
import {
  formsOf,
  isKindSection,
  kindsOf,
  partsFileKeys,
  sections,
  verbs,
} from '../../server/src/format/words.ts';
import { procedureSchema } from '../../server/src/format/json-schema.ts';
import { isReserved } from '../../server/src/format/ids.ts';
import { properties } from '../../server/src/format/walker.ts';
import type { Schema } from '../../server/src/format/walker.ts';

const root = new URL('../..', import.meta.url);

test('what is generated from the format is up to date (node server/build/generate.mjs)', () => {
  const folder = mkdtempSync(join(tmpdir(), 'generated-'));
  try {
    execFileSync(process.execPath, ['server/build/generate.mjs', '--to', folder], { cwd: root });
    for (const file of ['schemas/procedure.schema.json', 'server/src/text/generated/validators.js']) {
      const same = readFileSync(join(folder, file), 'utf8') === readFileSync(new URL(file, root), 'utf8');
      expect(same, file).toBe(true);
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});

test('the schema is valid against the draft 2020-12 meta-schema', () => {
  const ajv = new Ajv2020({ strict: false });
  expect(ajv.validateSchema(procedureSchema()), JSON.stringify(ajv.errors)).toBe(true);
});

test('the compiled validators need nothing at run time', () => {
  const code = readFileSync(new URL('server/src/text/generated/validators.js', root), 'utf8');
  expect(code).not.toMatch(/\brequire\(|\bimport\b|new Function|\beval\(/);
});

interface Described {
  readonly key: string;
  readonly schema: Schema;
}

function keysOf(schema: unknown, key = ''): readonly Described[] {
  if (typeof schema !== 'object' || schema === null) return [];
  if (Array.isArray(schema)) return schema.flatMap((one) => keysOf(one, key));
  return Object.entries(schema as Schema).flatMap(([word, value]): readonly Described[] => {
    if (word === 'examples') return [];
    if (word !== 'properties' && word !== '$defs') return keysOf(value, key);
    return Object.entries(value as Record<string, Schema>).flatMap(([name, below]) => {
      const at = `${key}/${name}`;
      return [...(word === 'properties' ? [{ key: at, schema: below }] : []), ...keysOf(below, at)];
    });
  });
}

test('every key has a description and an example that it takes itself', () => {
  const ajv = new Ajv2020({ strict: false });
  const schema = procedureSchema();
  const described = keysOf(schema);
  expect(described.length).toBeGreaterThan(150);
  for (const { key, schema: own } of described) {
    expect(typeof own.description === 'string' && own.description.length > 3, `description of ${key}`).toBe(
      true,
    );
    const examples = Array.isArray(own.examples) ? (own.examples as unknown[]) : [];
    expect(examples.length, `examples of ${key}`).toBeGreaterThan(0);
    expect(typeof own['x-expected'], `words for ${key}`).toBe('string');
    const validate = ajv.compile({ ...own, $defs: schema.$defs });
    for (const example of examples)
      expect(validate(example), `${key}: ${JSON.stringify(example)}`).toBe(true);
  }
});

test('what comes later is not what is known now', () => {
  const schema: Schema = procedureSchema();
  for (const key of laterKeys) expect(properties(schema, schema).has(key), key).toBe(false);
  for (const verb of verbs) expect(laterStepKeys.has(verb), verb).toBe(false);
  expect(laterEntryKeys.parts.has('resistance')).toBe(false);
});

test('the words of the format are those of its definitions', () => {
  const names = Object.keys(definitions);
  // Verbs with keys of their own for what they read or measure.
  const variants = [
    'step-read-several',
    'step-measure-current',
    'step-measure-insulation',
    'step-wiggle-measured',
  ];
  expect(names.filter((name) => name.startsWith('step-') && !variants.includes(name)).sort()).toEqual(
    verbs.map((verb) => `step-${verb}`).sort(),
  );
  expect([...partsFileKeys].sort()).toEqual(Object.keys(definitions['parts-shell'].shape).sort());
  expect(Object.keys(definitions.shell.shape)).toEqual(expect.arrayContaining([...sections]));
  const forms = sections
    .filter(isKindSection)
    .flatMap((section) => kindsOf(section).map((kind) => formsOf(section, kind)));
  expect(forms.length).toBeGreaterThan(15);
  expect(forms.filter((one) => one.length === 0)).toEqual([]);
  expect(forms.flat().filter(({ definition }) => !names.includes(definition))).toEqual([]);
});

test('no verb, side or key that ids are mistaken for is refused as an id without need', () => {
  expect(isReserved('open')).toBe(true);
  expect(isReserved('battery')).toBe(false);
});
