import { expect, test } from 'vitest';
import { procedureName } from '../../client/src/card-words.ts';
import {
  endings,
  fileKindOf,
  isInAnotherCase,
  isJson,
  isPartsFile,
} from '../../server/src/format/file-kinds.ts';

test('a name says what a file is by its ending, in small letters', () => {
  for (const [kind, all] of Object.entries(endings))
    for (const ending of all) {
      expect(fileKindOf(`van/brake${ending}`)).toBe(kind);
      expect(fileKindOf(`van/brake${ending.toUpperCase()}`)).toBeNull();
      expect(isInAnotherCase(`van/brake${ending.toUpperCase()}`)).toBe(true);
      expect(isInAnotherCase(`van/brake${ending}`)).toBe(false);
      expect(procedureName(`/van/brake${ending}`)).toBe('brake');
      expect(procedureName(`/van/Brake${ending.toUpperCase()}`)).toBe('Brake');
    }
  for (const name of [
    'brake.yaml',
    'brake.procedure.yaml.bak',
    'brake.procedure',
    'parts.yaml',
    'brake.procedure.toml',
  ])
    expect([fileKindOf(name), isInAnotherCase(name)]).toEqual([null, false]);
});

test('what is opened or named is checked as a parts file in whatever case it is named so', () => {
  expect(['K.Parts.YML', 'k.parts.json', 'k.procedure.yaml', 'k.yaml'].map(isPartsFile)).toEqual([
    true,
    true,
    false,
    false,
  ]);
  expect(['a.procedure.JSON', 'a.procedure.yml'].map(isJson)).toEqual([true, false]);
});
