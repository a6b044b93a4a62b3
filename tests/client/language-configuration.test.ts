import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import manifest from '../../package.json' with { type: 'json' };

interface Configuration {
  readonly wordPattern: { readonly pattern: string; readonly flags: string };
  readonly onEnterRules: readonly {
    readonly beforeText: string;
    readonly afterText: string;
    readonly action: { readonly indent: 'none'; readonly appendText: string };
  }[];
  readonly indentationRules: { readonly increaseIndentPattern: string };
}

const [language] = manifest.contributes.languages;
const configuration = JSON.parse(
  readFileSync(new URL(`../../${language?.configuration ?? ''}`, import.meta.url), 'utf8'),
) as Configuration;

/** What the first rule that fits puts behind the indentation of the line, as the editor does; null where none fits. */
function entered(before: string, after = ''): string | null {
  const rule = configuration.onEnterRules.find(
    ({ beforeText, afterText }) => new RegExp(beforeText).test(before) && new RegExp(afterText).test(after),
  );
  return rule?.action.appendText ?? null;
}

describe('Enter', () => {
  test('goes on with the next step', () => {
    expect(entered('steps:')).toBe('  - ');
    for (const line of [
      '  - ignition: on',
      '  - section: Make safe',
      '  - wait: 3 min',
      '    - eye protection',
    ])
      expect([line, entered(line)]).toEqual([line, '- ']);
  });

  test('goes on within a step whose verb wants more', () => {
    for (const line of [
      '  - fit: bench-lamp',
      '  - read: [a, b]',
      '  - do: Lift it off.',
      '  - inspect: Dry?',
    ])
      expect([line, entered(line)]).toEqual([line, '  ']);
  });

  test('goes deeper into a text of several lines', () => {
    expect(entered('  - do: |')).toBe('    ');
    expect(entered('  - stop: >-')).toBe('    ');
  });

  test('leaves alone what is empty, unfinished, cut through or no item', () => {
    for (const line of [
      '  -',
      '  - ',
      '  - read:',
      '  - read: [a,',
      '  - replace: [',
      '    at: K30',
      'sources:',
      '',
    ])
      expect([line, entered(line)]).toEqual([line, null]);
    expect(entered('  - replace: [a', ']')).toBeNull();
    expect(entered('  - wait: 3', ' min')).toBeNull();
  });

  test('goes deeper behind a key without a value', () => {
    const deeper = new RegExp(configuration.indentationRules.increaseIndentPattern);
    expect(deeper.test('  battery:')).toBe(true);
    expect(deeper.test('    path: # from the instrument outward')).toBe(true);
    expect(deeper.test('    at: K30')).toBe(false);
  });
});

test('an id is one word, a place is two, a number keeps its point', () => {
  const { pattern, flags } = configuration.wordPattern;
  const words = (text: string): readonly string[] => text.match(new RegExp(pattern, `${flags}g`)) ?? [];
  expect(words('path: [control-unit, K10, coil-coupling]')).toEqual([
    'path',
    'control-unit',
    'K10',
    'coil-coupling',
  ]);
  expect(words('at: K30.monitor')).toEqual(['at', 'K30', 'monitor']);
  expect(words('1.7..2.3 kΩ')).toEqual(['1.7', '2.3', 'kΩ']);
});
