import { describe, expect, test } from 'vitest';
import { CompletionItemKind } from 'vscode-languageserver-types';
import type { TextEdit } from 'vscode-languageserver-types';
import { definitions } from '../../server/src/format/definitions.ts';
import { kindsOf } from '../../server/src/format/words.ts';
import { properties } from '../../server/src/format/walker.ts';
import { definitionSchema, fileSchema } from '../../server/src/text/schema.ts';
import type { DefinitionName } from '../../server/src/format/definitions.ts';
import { formsOf, isQuantity } from '../../server/src/editor/completion-units.ts';
import { choice, literal, place, withoutPlaces } from '../../server/src/editor/completion-places.ts';
import { template } from '../../server/src/editor/template.ts';
import { firstChoices, labels, offered, taken } from './completion-taken.ts';
import { opened } from './opened.ts';

const [circuit = ''] = template.split('steps:\n');
const inSteps = (steps: string): string => `${circuit}steps:\n${steps}`;
const findings = (text: string): string[] =>
  opened(text)
    .analysis.procedure()
    .findings.map(({ message }) => message);

describe('an item fits to what stands there already', () => {
  test('a key that is written is only renamed', () => {
    expect(taken(inSteps('  - un|plug: K30'), 'unlock')).toBe(inSteps('  - unlock: K30'));
    expect(taken(inSteps('  - do: Look.\n    wa|: Hot.'), 'warning')).toBe(
      inSteps('  - do: Look.\n    warning: Hot.'),
    );
    expect(taken('parts:\n  x: { ki|nd: lamp }', 'resistance')).toBe('parts:\n  x: { resistance: lamp }');
    expect(labels('parts:\n  sta|ge-1: { kind: lamp }')).toEqual([]);
  });

  test('the blank comes with it behind a colon and behind a dash', () => {
    expect(taken(inSteps('  - unplug:|'), 'K30')).toBe(inSteps('  - unplug: K30'));
    expect(taken('parts:\n  x: {kind:|}', 'lamp')).toBe('parts:\n  x: {kind: lamp}');
    expect(taken(inSteps('  -|'), 'fit')).toBe(inSteps('  - fit: bench-lamp\n    at: K30.monitor'));
  });

  test('a dash and the indentation come with a step on an empty line', () => {
    const fitted = inSteps('  - ignition: off\n  - fit: bench-lamp\n    at: K30.monitor');
    for (const indent of ['', '   ', '    ', '      '])
      expect([indent, taken(inSteps(`  - ignition: off\n${indent}|`), '- fit')]).toEqual([indent, fitted]);
    for (const indent of [' ', '  '])
      expect([indent, taken(inSteps(`  - ignition: off\n${indent}|`), 'fit')]).toEqual([indent, fitted]);
    expect(taken(inSteps('  - ignition: off\n  fi|'), 'fit')).toBe(fitted);
    expect(taken(inSteps('  - ignition: off\n    fi|'), '- fit')).toBe(fitted);
    expect(taken(`${circuit}steps:\n- ignition: off\n|`, '- unplug')).toBe(
      `${circuit}steps:\n- ignition: off\n- unplug: K30`,
    );
  });

  test('no step starts where it would take the keys of the one around', () => {
    expect(labels(inSteps('  - fit: bench-lamp\n|\n    at: K30.monitor'))).not.toContain('- unplug');
    expect(labels(inSteps('  - fit: bench-lamp\n    |\n    at: K30.monitor'))).toContain('loop');
    expect(labels(inSteps('  - fit: bench-lamp\n    |\n    at: K30.monitor'))).not.toContain('at');
  });

  test('a key on an empty line is put below the other keys', () => {
    for (const indent of ['   ', '    ', '      '])
      expect(taken(inSteps(`  - unplug: K30\n${indent}|`), 'note')).toBe(
        inSteps('  - unplug: K30\n    note: '),
      );
  });

  test('an entry on an empty line is put below the other entries', () => {
    expect(taken('loads:\n    a: { kind: lamp, resistance: 3 Ω }\n|', 'resistor')).toBe(
      'loads:\n    a: { kind: lamp, resistance: 3 Ω }\n    load-plug: { kind: resistor, resistance: 2.2 Ω ± 1 % }',
    );
  });

  test('a verb leaves out the keys that the step has already', () => {
    expect(taken(inSteps('  - fi|\n    at: K30.end'), 'fit')).toBe(
      inSteps('  - fit: bench-lamp\n    at: K30.end'),
    );
    expect(taken(inSteps('  - { | }'), 'fit')).toBe(inSteps('  - { fit: bench-lamp, at: K30.monitor }'));
  });

  test('nothing is offered behind a value that is whole, before one in a block, and beside a heading', () => {
    expect(labels(inSteps('  - unplug: K30 |'))).toEqual([]);
    expect(labels(inSteps('  - read: [stage-1-loop |]'))).toEqual([]);
    expect(labels(inSteps('  - ignition: on |'))).toEqual([]);
    expect(labels('requires: |\n  training: [a]')).toEqual([]);
    expect(labels('parts:\n  x: |\n    kind: lamp')).toEqual([]);
    expect(labels(inSteps('  - section: Now\n    |')).filter((label) => !label.startsWith('- '))).toEqual([]);
    expect(labels(inSteps('  - do: Look: at |'))).toEqual([]);
    expect(labels(inSteps('  - do: Loosen\n    minutes: 3|'))).toEqual([]);
  });
});

describe('brackets', () => {
  test('over several lines, closed or not', () => {
    for (const end of ['', '\n  }', '\n  }\n  other: { kind: lamp }'])
      expect([end, labels(`loads:\n  x: {\n    kind: lamp,\n    |${end}`)]).toEqual([
        end,
        ['resistance', 'hot', 'opens-shorting-bar', 'withstands', 'rated'],
      ]);
    expect(labels('connectors:\n  K1: {\n    contact: 2 mΩ,\n    shorting-bar: {\n      side: |')).toEqual([
      'monitor',
      'end',
    ]);
    expect(labels(inSteps('  - replace: [\n      K30,\n      |\n    ]'))).toEqual([
      'coil-coupling',
      'stage-1',
      'control-unit',
    ]);
  });

  test('what stands behind the cursor counts', () => {
    expect(labels('parts:\n  x: { |, kind: initiator }')).toEqual(['resistance', 'live', 'no-fire']);
    expect(labels('parts:\n  x: { live: |, kind: initiator }')).toEqual(['true', 'false']);
    expect(labels(inSteps('  - replace: [|, K30]'))).not.toContain('K30');
    expect(labels(inSteps('  - read: stage-1-loop\n    outcomes: { |, else: next }'))).not.toContain('else');
  });

  test('that nobody closed end where the indentation goes back', () => {
    expect(labels('loads:\n  x: { kind: lamp, resistance: 3 Ω\nparts:\n  y: { kind: initiator, |')).toContain(
      'live',
    );
    expect(labels(inSteps('  - read: [stage-1-loop\n    outcomes: { |'))).toEqual([
      'within',
      'else',
      'stage-1-loop',
    ]);
    expect(labels(inSteps('  - replace: [K30\n  - |'))).toContain('unplug');
  });

  test('in a sentence are none', () => {
    expect(labels(inSteps('  - do: Look [here\n    |'))).toContain('at');
    expect(labels(inSteps("  - do: The maker's {book\n  - unplug: |"))).toEqual(['K30']);
  });

  test('a list by dashes leaves out what it has', () => {
    expect(labels(inSteps('  - replace:\n      - K30\n      - |\n      - stage-1'))).toEqual([
      'coil-coupling',
      'control-unit',
    ]);
  });
});

describe('ids', () => {
  test('that other steps name are still offered', () => {
    const [item] = offered(inSteps('  - unplug: K30\n  - plug: |\n  - unplug: K30'));
    expect(item).toMatchObject({ label: 'K30', kind: CompletionItemKind.Reference });
    expect(labels(inSteps('  - replace: K30\n  - conclude: |\n'))).toContain('K30');
    expect(labels(inSteps('  - unplug: K30\n  - read: [|\n'))).toEqual(['stage-1-loop']);
  });

  test('also of entries that cannot be read yet', () => {
    expect(labels('connectors:\n  K1:\n  K2: { con\nsteps:\n  - unplug: |')).toEqual(['K1', 'K2']);
    expect(labels('parts:\n  a: { kind: initiator, \n  b:\nsteps:\n  - replace: |')).toEqual(['a', 'b']);
  });

  test('carry what they are', () => {
    const [item] = offered(inSteps('  - replace: coil|'));
    expect(item).toMatchObject({
      label: 'coil-coupling',
      detail: 'rotary-coupling, 0.05..0.15 Ω per conductor',
    });
  });

  test('of new entries are free', () => {
    expect(taken(`${template}parts:\n  |`, 'initiator')).toContain('\n  stage-2: { kind: initiator');
    expect(taken(circuit.replace('\nloops:', '  |\nloops:'), 'connector')).toContain('\n  K31: { contact');
  });

  test('of sides: first where it is plain in which loop a load sits', () => {
    const two = circuit
      .replace('loops:', 'loops:\n  second: { path: [control-unit, K30, K31, end], pins: { K30: [3, 4] } }')
      .replace('connectors:', 'connectors:\n  K31: { contact: 2 mΩ }')
      .replace('parts:', 'parts:\n  end: { kind: resistor, resistance: 2 Ω }')
      .replace('K30, stage-1] }', 'K30, stage-1], pins: { K30: [1, 2] } }');
    expect(labels(`${two}steps:\n  - fit: bench-lamp\n    at: |`)).toEqual([
      'K31.monitor',
      'K31.end',
      'K30.monitor',
      'K30.end',
    ]);
    expect(labels(`${two}steps:\n  - fit: bench-lamp\n    at: K31.end\n    loop: |`)).toEqual(['second']);
    expect(findings(`${taken(`${two}steps:\n  - |`, 'fit')}\n  - stop: Done.\n`)).toEqual([]);
  });

  test('a path and pins start as what they are', () => {
    expect(taken('instruments:\n  unit: {}\nloops:\n  a: { path: |', 'unit')).toContain('{ path: [unit, ');
    const loops = `${circuit.trimEnd().replace(/ \}$/, '')}, pins: `;
    expect(labels(`${loops}{ |`)).toEqual(['K30']);
    expect(findings(`${taken(`${loops}| }`, '{ K30: [1, 2] }')}\nsteps:\n  - stop: Done.\n`)).toEqual([]);
  });
});

describe('new entries and values', () => {
  test('an id with nothing behind it gets what its kind needs', () => {
    const offered = labels('parts:\n  x: |');
    expect(offered).toEqual([...kindsOf('parts')]);
    const spare = circuit
      .replace('connectors:', 'connectors:\n  K31: { contact: 2 mΩ }')
      .replace('parts:', 'parts:\n  end: { kind: resistor, resistance: 2 Ω }');
    for (const section of ['sources', 'instruments', 'loads', 'parts', 'connectors', 'loops']) {
      const marked = spare.replace(`${section}:\n`, `${section}:\n  fresh: |\n`);
      expect(labels(marked).length).toBeGreaterThan(0);
      for (const label of labels(marked))
        expect([label, findings(`${taken(marked, label)}steps:\n  - stop: Done.\n`)]).toEqual([label, []]);
    }
  });

  test('numbers, lists and maps have an example, and it can be read', () => {
    expect(labels('format: |')).toEqual(['1']);
    expect(labels('conditions: |')).toEqual(['{ ambient: 10..35 °C }']);
    expect(labels('conditions:\n  ambient: |')).toEqual(['10..35 °C']);
    expect(labels('conditions: { | }')).toEqual(['ambient']);
    expect(labels(inSteps('  - do: Look.\n    id: |'))).toEqual(['make-safe']);
    expect(labels(inSteps('  - do: Look.\n    id: |\n  - wait: 1 s\n    id: make-safe'))).toEqual([]);
    expect(labels('requires:\n  |')).toEqual(['training', 'protective', 'information']);
    expect(labels('requires: { training: |')).toEqual(['[restraint systems]']);
    for (const key of ['reserve', 'wait', 'voltage'])
      for (const label of labels(`sources:\n  b:\n    kind: battery\n    ${key}: |`)) {
        const written = `sources:\n  b:\n    kind: battery\n    ${key}: ${label}\n`;
        expect(findings(written).filter((message) => message.includes(label))).toEqual([]);
      }
    expect(labels(inSteps('  - read: [stage-1-loop]\n    outcomes: { stage-1-loop: |'))).toEqual([
      '{ within: next, else: step-id }',
    ]);
    const withIds =
      '  - ignition: on\n    id: start\n  - stop: Faulty.\n    id: faulty\n  - inspect: Fine?\n    outcomes: |';
    expect(labels(inSteps(withIds))).toEqual(['{ ok: next, else: faulty }']);
  });

  test('keys open the map or list that they hold, and offer the few words that can follow', () => {
    expect(taken('format: 1\n|', 'conditions')).toBe('format: 1\nconditions:\n  ');
    expect(taken('format: 1\n|', 'steps')).toBe('format: 1\nsteps:\n  - ');
    expect(taken('sources:\n  b:\n    kind: battery\n    |', 'reserve')).toContain('\n    reserve:\n      ');
    expect(taken('sources:\n  b: { |', 'reserve')).toBe('sources:\n  b: { reserve: {  }');
    expect(taken('loops:\n  a: { |', 'path')).toBe('loops:\n  a: { path: []');
    expect(taken('loops:\n  a: { |', 'path', false)).toBe('loops:\n  a: { path: ');
    const live = offered('parts:\n  x: { kind: initiator, |').find(({ label }) => label === 'live');
    expect((live?.textEdit as TextEdit).newText).toBe('live: ${1|true,false|}');
  });

  test('required keys come first', () => {
    const inOrder = offered('sources:\n  b:\n    kind: battery\n    |')
      .toSorted((a, b) => ((a.sortText ?? '') < (b.sortText ?? '') ? -1 : 1))
      .map(({ label }) => label);
    expect(inOrder.slice(0, 2)).toEqual(['voltage', 'feeds']);
  });
});

describe('quantities', () => {
  const resistance = (typed: string): string => `loads:\n  x: { kind: lamp, resistance: ${typed} }`;

  test('of every key have units, and the one of its example is among them', () => {
    const unknown: string[] = [];
    let count = 0;
    for (const name of Object.keys(definitions) as DefinitionName[])
      for (const [key, schema] of properties(definitionSchema(name), fileSchema)) {
        const expected = String(schema['x-expected']);
        const [example] = Array.isArray(schema.examples) ? (schema.examples as unknown[]) : [];
        const [, number = '', unit = ''] =
          /(?:^|\.\.|[a-z] )(\d[\d.]*) (%|[^\s\d]+)/u.exec(typeof example === 'string' ? example : '') ?? [];
        if (unit === '' || !isQuantity(expected)) {
          if (/\d (?:m?Ω|V|m?A|min|°C)/.test(String(example)) && schema.type === 'string')
            unknown.push(`${name} ${key}`);
          continue;
        }
        count++;
        if (!formsOf(`${number} `, expected).some(({ label }) => label.startsWith(unit)))
          unknown.push(`${name} ${key}`);
      }
    expect(unknown).toEqual([]);
    expect(count).toBeGreaterThan(15);
  });

  test('units replace what is typed of them', () => {
    expect(taken(resistance('3.0 m|'), 'mΩ')).toBe(resistance('3.0 mΩ'));
    expect(taken(resistance('3.0m|Ω'), 'kΩ')).toBe(resistance('3.0 kΩ'));
    expect(taken(resistance('1.7..2.3|'), 'Ω')).toBe(resistance('1.7..2.3 Ω'));
    expect(taken(resistance('3 Ω ± 5|'), '%')).toBe(resistance('3 Ω ± 5 %'));
    expect(labels(resistance('3.0| Ω'))).toEqual([]);
    expect(labels(resistance('3|.0 Ω'))).toEqual([]);
  });

  test('spreads and ranges follow where the key takes them, and each form can be read', () => {
    expect(taken(resistance('3.0 Ω |'), 'Ω ± 5 %')).toBe(resistance('3.0 Ω ± 5 %'));
    expect(taken(resistance('3.0|'), '.. Ω')).toBe(resistance('3.0..3.0 Ω'));
    for (const typed of ['3.0|', '3.0 |', '3.0 Ω|', '3.0 Ω |', '1.7..2.3 |', '3.0 Ω ± 0.5 |']) {
      const found = labels(resistance(typed));
      expect([typed, found.length > 0]).toEqual([typed, true]);
      for (const label of found) {
        const { findings: all } = opened(taken(resistance(typed), label)).analysis.procedure();
        expect([typed, label, all.filter(({ rule }) => rule === 'quantity')]).toEqual([typed, label, []]);
      }
    }
    expect(labels(inSteps('  - wait: 3 |'))).toEqual(['min', 's']);
    expect(labels('conditions: { ambient: 20 |')).toEqual(['°C', '°C ± 5 °C', '.. °C']);
    expect(labels('parts:\n  x: { kind: cable, wire: AWG 20|')).toEqual([]);
  });

  test('an accuracy goes on from percent to ohms', () => {
    const accuracy = (typed: string): string => `instruments:\n  m: { kind: monitor, accuracy: ${typed}`;
    expect(taken(accuracy('3|'), '% +')).toBe(accuracy('3 % + 0.1 Ω'));
    expect(taken(accuracy('3 %|'), '+ 0.1 Ω')).toBe(accuracy('3 % + 0.1 Ω'));
    expect(labels(accuracy('3 % + 0.1|'))).toEqual(['Ω', 'mΩ', 'digits']);
  });
});

describe('snippets', () => {
  test('escape what would end a place, and come back as they were', () => {
    const odd = String.raw`a,b|c}d$e\f`;
    for (const written of [choice(1, [odd, 'other'], ''), place(1, odd), literal(odd)])
      expect([firstChoices(written), withoutPlaces(written)]).toEqual([odd, odd]);
  });

  test('tell editors to indent their further lines', () => {
    for (const item of offered(inSteps('  - |')))
      expect(item.insertTextMode).toBe((item.textEdit as TextEdit).newText.includes('\n') ? 2 : undefined);
  });

  test('as plain text are the same text', () => {
    for (const { label } of offered(inSteps('  - |')))
      expect(taken(inSteps('  - |'), label, false)).toBe(taken(inSteps('  - |'), label));
  });
});
