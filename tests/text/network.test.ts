import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readProcedure } from '../../server/src/text/read-procedure.ts';
import { expectMarked } from './marked.ts';

const base = `format: 1
title: A pump with its feed
sources:
  battery: { kind: battery, voltage: 12.6 V, feeds: [pump] }
  five-volt: { kind: regulated, voltage: 5.0 V ± 2 %, from: battery, needs: ignition-on }
instruments:
  hand-meter:
    kind: multimeter
    zeroed: true
    resistance: { range: 0..400 Ω, accuracy: 0.8 % + 3 digits, resolution: 0.1 Ω }
  unit: { kind: monitor, range: 0..10 Ω, accuracy: 1 %, resolution: 0.01 Ω }
parts:
  wire: { kind: cable, resistance: 20..30 mΩ }
  pump: { kind: heater, resistance: 2..3 Ω }
  lamp: { kind: lamp, resistance: 3 Ω }
connectors:
  K4: { contact: 2..15 mΩ, sides: [loom, body] }
  K5: { contact: 2..15 mΩ }
loops:
  lit: { path: [unit, K5, lamp] }
network:
  - { source: battery, between: [plus, ground] }
  - { connector: K4, pin: 1, between: [plus, feed] }
  - { part: wire, between: [feed, far] }
  - { part: pump, between: [far, ground] }
steps:
  - disconnect: battery
  - measure: resistance
    across: [plus, ground]
    with: hand-meter
    outcomes: { within: next, else: last }
  - reconnect: battery
    id: last
`;

function instead(passage: string, other: string): string {
  if (base.split(passage).length !== 2) throw new Error(`stands not once: ${passage}`);
  return base.replace(passage, () => other);
}

test('a sound one is read', () => {
  const { procedure } = expectMarked(base);
  expect(procedure.network).toMatchObject({ complete: true });
  expect(procedure.network.elements.map(({ kind, id }) => `${kind} ${id}`)).toEqual([
    'source battery',
    'connector K4',
    'part wire',
    'part pump',
  ]);
  expect(procedure.regulated.get('five-volt')).toMatchObject({ from: 'battery', needsIgnition: true });
  expect(procedure.connectors.get('K4')?.sides).toEqual(['loom', 'body']);
  expect(procedure.steps[1]).toMatchObject({ verb: 'measure', of: 'plus..ground', quantity: 'resistance' });
});

describe('an element', () => {
  const pump = '  - { part: pump, between: [far, ground] }\n';
  test.each([
    [
      'is one of three',
      '  - { between: [far, ground] }\n      ^^^^^^^ missing-key: one of `part`, `connector` or `source`\n',
    ],
    [
      'is not two of them',
      '  - { part: pump, source: five-volt, between: [far, ground] }\n                  ^^^^^^ wrong-value: one of `part`, `connector` or `source`\n',
    ],
    [
      'names a part',
      '  - { part: pmp, between: [far, ground] }\n            ^^^ unknown-id: Did you mean `pump`?\n',
    ],
    [
      'names one of its kind',
      '  - { part: K4, between: [far, ground] }\n            ^^ wrong-id: `K4` is a connector; expected a part.\n',
    ],
    [
      'stands between two different nodes',
      '  - { part: pump, between: [far, far] }\n                                 ^^^ wrong-value: two different nodes\n',
    ],
    [
      'has two nodes',
      '  - { part: pump, between: [far] }\n                           ^^^^^ wrong-value: `between` takes two nodes\n',
    ],
    [
      'has nodes with names of their own',
      '  - { part: pump, between: [far, wire] }\n                                 ^^^^ wrong-id: A node has a name of its own.\n',
    ],
    [
      'stands once',
      `${pump}  - { part: pump, between: [plus, ground] }\n            ^^^^ wrong-loop: stands in another place already\n`,
    ],
    [
      'does not stand in a loop too',
      `${pump}  - { part: lamp, between: [far, ground] }\n            ^^^^ wrong-loop: stands in another place already\n`,
    ],
    [
      'takes a pin once',
      `${pump}  - { connector: K4, pin: 1, between: [far, other] }\n                          ^ wrong-loop: Pin 1 of \`K4\` stands in another place already\n`,
    ],
    [
      'takes no pin of a loop',
      `${pump}  - { connector: K5, pin: 2, between: [far, other] }\n                          ^ wrong-loop: Pin 2 of \`K5\` stands in another place already\n`,
    ],
    [
      'ends at a terminal that there is',
      '  - { part: pump, between: [far, K4.rear.1] }\n                                    ^^^^ wrong-id: `K4` has no side `rear`\n',
    ],
    [
      'ends at a pin that is used',
      '  - { part: pump, between: [far, K4.body.7] }\n                                 ^^^^^^^^^ wrong-id: Pin 7 of `K4` stands in no loop\n',
    ],
  ])('%s', (_, other) => {
    const read = expectMarked(instead(pump, other));
    // What a reading depends on is then not known.
    expect(read.procedure.network.complete).toBe(false);
  });

  test('may end at the terminal of a loop', () => {
    expectMarked(instead(pump, '  - { part: pump, between: [far, K5.end.1] }\n'));
  });
});

describe('what a voltage is expected to be', () => {
  const quiet = readFileSync(
    new URL('../../procedures/two-wire-bus.procedure.yaml', import.meta.url),
    'utf8',
  );
  const findingsWith = (expected: string): readonly string[] => {
    const text = quiet.replace('expect: -0.1..0.1 V', `expect: ${expected}`);
    expect(text === quiet).toBe(expected === '-0.1..0.1 V');
    return readProcedure({ id: 'bus', text }).findings.map(({ message }) => message);
  };

  test.each(['-0.1..0.1 V', '-12.8 V ± 5 %', 'above -0.5 V', 'below -11 V'])(
    'may lie on either side of zero: %s',
    (expected) => {
      expect(findingsWith(expected)).toEqual([]);
    },
  );

  test('still runs from the least to the most', () => {
    expect(findingsWith('-0.1..-0.2 V')).toEqual([expect.stringContaining('runs backwards')]);
  });

  test('a resistance never does', () => {
    const text = quiet.replace('windows: { one-end: 110..140 Ω }', 'windows: { one-end: -110..140 Ω }');
    const [found] = readProcedure({ id: 'bus', text }).findings;
    expect(found?.message).toContain('never negative');
  });
});

describe('a regulated supply', () => {
  test('runs on a source by itself', () => {
    expectMarked(
      instead('from: battery, needs', 'from: five-volt, needs').replace(
        'instruments:\n',
        '                                                            ^^^^^^^^^ wrong-id: `five-volt` is a regulated supply too\ninstruments:\n',
      ),
    );
  });

  test('is not taken away by itself', () => {
    expectMarked(
      instead(
        '  - disconnect: battery\n',
        '  - disconnect: five-volt\n                ^^^^^^^^^ wrong-id: comes and goes with `battery`: name that one.\n',
      ),
    );
  });

  test('is carried by no connector', () => {
    expectMarked(
      instead(
        '  K5: { contact: 2..15 mΩ }\n',
        '  K5: { contact: 2..15 mΩ, carries: five-volt }\n                                    ^^^^^^^^^ wrong-id: is a regulated supply\n',
      ),
    );
  });
});

describe('a measurement', () => {
  const across = '    across: [plus, ground]\n';
  test.each([
    [
      'a node that there is not',
      '    across: [plus, grond]\n                   ^^^^^ unknown-id: no node `grond`. Did you mean `ground`?\n',
    ],
    [
      'a part, which has two ends',
      '    across: [plus, pump]\n                   ^^^^ wrong-id: A probe touches a point\n',
    ],
    [
      'one point twice',
      '    across: [plus, plus]\n                   ^^^^ wrong-value: two different points\n',
    ],
    ['a connector without a side', '    across: K5\n            ^^ wrong-value: `K5.monitor` or `K5.end`\n'],
    [
      'a side of another name',
      '    across: K4.end\n               ^^^ wrong-id: its sides are `loom` and `body`\n',
    ],
    [
      'a pin that is not used',
      '    across: [K5.end.9, ground]\n             ^^^^^^^^ wrong-id: those that do are 1, 2\n',
    ],
  ])('at %s', (_, other) => {
    const read = expectMarked(instead(across, other));
    expect(read.procedure.steps[1]).toMatchObject({ verb: 'broken' });
  });

  test('at a connector of three pins asks which two', () => {
    expectMarked(
      instead(
        across,
        '    across: K5.end\n            ^^^^^^ wrong-value: say which two: `[K5.end.1, K5.end.2]`\n',
      ).replace(
        '  - { part: wire',
        '  - { connector: K5, pin: 3, between: [feed, aside] }\n  - { part: wire',
      ),
    );
  });

  test('with an instrument that measures it', () => {
    expectMarked(
      instead('  - measure: resistance\n', '  - measure: voltage\n').replace(
        '    with: hand-meter\n',
        '    with: hand-meter\n          ^^^^^^^^^^ wrong-id: `hand-meter` measures no voltage\n',
      ),
    );
    expectMarked(
      instead(
        '    with: hand-meter\n',
        '    with: unit\n          ^^^^ wrong-id: `unit` is a monitor; expected a multimeter.\n',
      ),
    );
  });

  test('expects what it measures', () => {
    expectMarked(
      instead(
        '    with: hand-meter\n',
        '    with: hand-meter\n    expect: 1..2 V\n                 ^ quantity: \n',
      ),
    );
  });
});

describe('further windows', () => {
  const outcomes = '    outcomes: { within: next, else: last }\n';
  test('are outcomes by their names', () => {
    const { procedure } = expectMarked(
      instead(
        outcomes,
        '    windows: { short: below 1 Ω, worn: 4..9 Ω }\n    outcomes: { worn: last, else: next }\n',
      ),
    );
    expect(procedure.steps[1]).toMatchObject({
      outcomes: [{ name: 'window', window: 'worn' }, { name: 'else' }],
    });
  });

  test('have no value in common', () => {
    expectMarked(
      instead(
        outcomes,
        '    windows: { short: below 5 Ω, worn: 4..9 Ω }\n                                       ^^^^^^ wrong-value: `worn` and `short` have values in common\n',
      ),
    );
  });

  test('are named as they are', () => {
    expectMarked(
      instead(
        outcomes,
        '    windows: { worn: 4..9 Ω }\n    outcomes: { wron: last, else: next }\n                ^^^^ unknown-key: Did you mean `worn`?\n',
      ),
    );
  });

  test('of another word than those of outcomes', () => {
    expectMarked(
      instead(
        outcomes,
        '    windows: { above: 4..9 Ω }\n               ^^^^^ wrong-value: has a meaning of its own\n',
      ),
    );
  });
});

test('a file without loops and without a network has no circuits', () => {
  const text = base.replace(/loops:\n.*\nnetwork:\n(?: .*\n)+/, '').replace(/ {2}- measure(?:.*\n){4}/, '');
  const read = expectMarked(
    text.replace('format: 1\n', 'format: 1\n^^^^^^ missing-key: The file needs `loops` or `network`\n'),
  );
  expect(read.procedure.loops.size).toBe(0);
});
