import { describe, expect, test } from 'vitest';
import type { TextEdit } from 'vscode-languageserver-types';
import { complete } from '../../server/src/editor/completion.ts';
import { template } from '../../server/src/editor/template.ts';
import { labels, offered, taken, withHighVoltage } from './completion-taken.ts';
import { atCursor, opened } from './opened.ts';

const [circuit = ''] = template.split('steps:\n');

describe('keys', () => {
  test('of the file that are not there yet', () => {
    const found = labels('format: 1\ntitle: x\n|');
    expect(found).toEqual(expect.arrayContaining(['sources', 'instruments', 'parts', 'loops', 'steps']));
    expect(found).not.toContain('title');
    expect(labels('format: 1\nti|')).toContain('title');
  });

  test('of an entry, by its kind, also inside braces and half typed', () => {
    expect(labels('loads:\n  lamp: { kind: lamp, |')).toEqual([
      'resistance',
      'hot',
      'opens-shorting-bar',
      'withstands',
      'rated',
    ]);
    expect(labels('connectors:\n  K30: { contact: 2..15 mΩ, shorting-bar: { side: end, | } }')).toEqual(
      expect.arrayContaining(['closes', 'resistance']),
    );
    expect(labels('sources:\n  battery:\n    kind: battery\n    |')).toEqual(
      expect.arrayContaining(['voltage', 'feeds', 'wait', 'reserve']),
    );
    expect(taken('loads:\n  lamp: { kind: lamp, res|', 'resistance')).toBe(
      'loads:\n  lamp: { kind: lamp, resistance: ',
    );
  });

  test('of a step have all signal words', () => {
    expect(labels(`${circuit}steps:\n  - ignition: on\n    |`)).toEqual(
      expect.arrayContaining(['danger', 'warning', 'caution', 'notice', 'note']),
    );
  });

  test('carry their description', () => {
    const [item] = offered('loads:\n  lamp: { kind: lamp, |');
    expect(item?.documentation).toMatchObject({ kind: 'markdown' });
  });

  test('new entries of a section, complete', () => {
    expect(taken('parts:\n  |', 'initiator')).toBe(
      'parts:\n  stage-1: { kind: initiator, resistance: 1.7..2.3 Ω, live: true }',
    );
    expect(labels('connectors:\n  |')).toEqual(['connector', 'connector with shorting bar']);
  });
});

describe('steps', () => {
  test('verbs with their usual keys, behind a dash and on an empty line', () => {
    expect(taken(`${circuit}steps:\n  - fi|`, 'fit')).toBe(
      `${circuit}steps:\n  - fit: bench-lamp\n    at: K30.monitor`,
    );
    expect(taken(`${circuit}steps:\n  |`, 'unplug')).toBe(`${circuit}steps:\n  - unplug: K30`);
    expect(taken(`${circuit}steps:\n  - |`, 'reconnect')).toContain('\n    warning: Who must stay clear');
  });

  test('every verb, taken with its first choices, is read without an error', () => {
    const before = `${withHighVoltage(circuit)}steps:\n  - |`;
    const verbs = labels(before).filter((label) => label !== 'section' && label !== 'go');
    expect(verbs.length).toBeGreaterThan(15);
    for (const verb of verbs) {
      const text = `${taken(before, verb)}\n  - stop: Done.\n`;
      expect([
        verb,
        opened(text)
          .analysis.procedure()
          .findings.map(({ message }) => message),
      ]).toEqual([verb, []]);
    }
  });

  test('a reading leads what is wrong to a step with an id, and without one it decides nothing', () => {
    const bare = `${withHighVoltage(circuit)}steps:\n  - |`;
    for (const verb of ['read', 'measure']) {
      expect(taken(bare, verb)).not.toContain('outcomes');
      expect(taken(bare.replace('  - |', '  - stop: Faulty.\n    id: faulty\n  - |'), verb)).toContain(
        'outcomes: { within: next, else: faulty }',
      );
    }
    // Where a good reading of the template leads, no wrong one is led.
    expect(taken(`${template}  - |`, 'read')).toContain('outcomes: { within: next, else: faulty }');
  });

  test('also behind steps that stand there already, wherever the list is indented', () => {
    const before = '- ignition: on\n- fit: bench-lamp\n  at: K30.monitor\n';
    const indented = before.replace(/^/gm, '  ').trimEnd();
    expect(labels(`${circuit}steps:\n${indented}\n  - |`)).toContain('unplug');
    expect(labels(`${circuit}steps:\n${indented}\n  - fit: x\n    |`)).toContain('at');
    expect(labels(`${circuit}steps:\n${indented}\n  - wait: 3 |`)).toEqual(['min', 's']);
    expect(labels(`${circuit}steps:\n${before}- |`)).toContain('unplug');
    expect(labels(`${circuit}steps:\n${before}- read: stage-1-loop\n  |`)).toContain('outcomes');
  });

  test('the other keys of the verb', () => {
    const found = labels(`${circuit}steps:\n  - fit: bench-lamp\n    |`);
    expect(found).toEqual(expect.arrayContaining(['at', 'loop', 'note', 'warning']));
    expect(found).not.toContain('unplug');
    expect(labels(`${circuit}steps:\n  - read: stage-1-loop\n    out|`)).toContain('outcomes');
  });

  test('what is moved, and what is watched meanwhile, in one of two ways', () => {
    const step = `${circuit}steps:\n  - wiggle: coil-coupling\n`;
    expect(labels(`${circuit}steps:\n  - wiggle: |`)).toEqual(
      expect.arrayContaining(['coil-coupling', 'K30', 'K30.monitor', 'K30.end']),
    );
    expect(labels(`${step}    |`)).toEqual(expect.arrayContaining(['watch', 'for', 'quantity', 'across']));
    expect(labels(`${step}    watch: |`)).toEqual(['stage-1-loop']);
    const watching = labels(`${step}    watch: stage-1-loop\n    |`);
    expect(watching).toContain('for');
    expect(watching).not.toContain('across');
    const measuring = labels(`${step}    quantity: resistance\n    |`);
    expect(measuring).toEqual(expect.arrayContaining(['across', 'with', 'drawing', 'for']));
    expect(measuring).not.toContain('watch');
    expect(labels(`${step}    quantity: |`)).toEqual(['resistance', 'voltage']);
  });

  test('without snippets where the client has none', () => {
    const { document, position } = atCursor(`${circuit}steps:\n  - |`);
    const items = complete(document, position, { snippets: false });
    for (const { textEdit } of items) expect((textEdit as TextEdit).newText).not.toMatch(/\$\{|\$\d/);
  });
});

describe('values', () => {
  const at = (steps: string): string[] => labels(`${circuit}steps:\n${steps}`);

  test('ids that fit the place', () => {
    expect(at('  - unplug: |')).toEqual(['K30']);
    expect(at('  - fit: |')).toEqual(['bench-lamp']);
    expect(at('  - fit: bench-lamp\n    at: K30|')).toEqual(['K30.monitor', 'K30.end']);
    expect(at('  - read: |')).toEqual(['stage-1-loop']);
    expect(at('  - read: [|')).toEqual(['stage-1-loop']);
    expect(at('  - disconnect: |')).toEqual(['battery']);
    expect(at('  - clear-codes: |')).toEqual(['control-unit']);
    expect(at('  - replace: |')).toEqual(['coil-coupling', 'stage-1', 'K30', 'control-unit']);
    expect(at('  - conclude: |')).toContain('none');
    expect(at('  - do: Look.\n    at: |')).toContain('stage-1');
    expect(at('  - stop: Done.\n    leaves: [K30, |')).toEqual(
      expect.arrayContaining(['battery', 'codes', 'repair']),
    );
    expect(
      labels(
        'instruments:\n  unit: { kind: monitor, range: 0..10 Ω, accuracy: 1 %, resolution: 0.01 Ω }\nsources:\n  battery: { kind: battery, feeds: [|',
      ),
    ).toEqual(['unit']);
  });

  test('what can follow on the path of a loop', () => {
    const loops = `${circuit.split('loops:')[0] ?? ''}loops:\n  other: { path: [`;
    expect(labels(`${loops}|`)).toEqual(['control-unit']);
    expect(labels(`${loops}control-unit, |`)).toEqual(['K30', 'coil-coupling', 'stage-1']);
    expect(labels(`${loops}control-unit, K30, |`)).not.toContain('K30');
  });

  test('outcomes, and the steps that they can lead to', () => {
    const read = '  - read: stage-1-loop\n    id: here\n    outcomes: { ';
    expect(at(`${read}|`)).toEqual(expect.arrayContaining(['within', 'below', 'above', 'open', 'else']));
    expect(at(`${read}within: next, |`)).not.toContain('within');
    expect(at(`${read}within: |`)).toEqual(['next', 'here']);
    expect(at('  - inspect: Fine?\n    outcomes:\n      |')).toEqual(['ok', 'defect', 'else']);
    expect(at('  - ignition: on\n    id: start\n  - go: |')).toEqual(['start']);
  });

  test('words and kinds', () => {
    expect(at('  - ignition: |')).toEqual(['on', 'off', 'cycle']);
    expect(labels('parts:\n  x: { kind: |')).toEqual(expect.arrayContaining(['cable', 'initiator']));
    expect(labels('parts:\n  x: { kind: initiator, live: |')).toEqual(['true', 'false']);
    expect(labels('connectors:\n  K1: { contact: 1 mΩ, shorting-bar: { side: |')).toEqual(['monitor', 'end']);
  });

  test('units behind a number, and an example where nothing is typed', () => {
    expect(labels('loads:\n  lamp: { kind: lamp, resistance: 3.0 |').slice(0, 3)).toEqual(['Ω', 'mΩ', 'kΩ']);
    expect(taken('loads:\n  lamp: { kind: lamp, resistance: 3.0|', 'Ω')).toBe(
      'loads:\n  lamp: { kind: lamp, resistance: 3.0 Ω',
    );
    expect(at('  - wait: 3 |')).toEqual(['min', 's']);
    expect(labels('loads:\n  lamp: { kind: lamp, resistance: |')[0]).toMatch(/Ω/);
  });

  test('nothing in a comment', () => {
    expect(at('  - unplug: K30 # |')).toEqual([]);
  });
});
