import { describe, expect, test } from 'vitest';
import { handbook } from '../../server/src/rules/handbook.ts';
import { rules } from '../../server/src/rules/rules.ts';
import { textRules } from '../../server/src/text/rules.ts';

describe('the page of rules', () => {
  const { text, lineOf } = handbook();
  const lines = text.split('\n');

  test.each([...rules, ...textRules].map(({ name }) => name))(
    'has %s at the line that findings link to',
    (name) => {
      const line = lineOf.get(name);
      expect(line).toBeDefined();
      expect(lines[line ?? -1]).toMatch(new RegExp(`^## ${name} \\(`));
    },
  );

  // What nobody has looked up is no source for somebody whose safety rests on it.
  test('names no source that is only remembered', () => {
    expect(text).not.toMatch(/from memory/i);
  });

  test('gives an example of each kind for every rule of order and windows', () => {
    expect(lines.filter((line) => line.startsWith('Found here'))).toHaveLength(rules.length);
    expect(lines.filter((line) => line.startsWith('Not here'))).toHaveLength(rules.length);
  });
});
