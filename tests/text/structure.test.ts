import { describe, expect, test } from 'vitest';
import { expectMarked, instead } from './marked.ts';

describe('keys', () => {
  test('a mistyped key of the file offers the nearest, and is not missing besides', () => {
    expectMarked(instead('steps:\n', 'step:\n^^^^ unknown-key: Did you mean `steps`?\n'));
  });

  test('a mistyped key of a part offers the nearest', () => {
    expectMarked(
      instead(
        'coil-coupling: { kind: rotary-coupling, resistance: 0.05..0.15 Ω }\n',
        `coil-coupling: { kind: rotary-coupling, resistence: 0.05..0.15 Ω }
                                          ^^^^^^^^^^ unknown-key: Did you mean \`resistance\`?
`,
      ),
    );
  });

  test('a mistyped key inside a reserve', () => {
    expectMarked(
      instead(
        'bleed: 4.7 kΩ ± 5 %, safe-below: 2 V }\n',
        `bled: 4.7 kΩ ± 5 %, safe-below: 2 V }
                                                             ^^^^ unknown-key: Did you mean \`bleed\`?
`,
      ),
    );
  });

  test('a key that is needed and absent is reported at its entry, with what it takes', () => {
    expectMarked(
      instead(
        'stage-1: { kind: initiator, resistance: 1.7..2.3 Ω, no-fire: 400 mA, live: true }\n',
        `stage-1: { kind: initiator, resistance: 1.7..2.3 Ω, no-fire: 400 mA }
  ^^^^^^^ missing-key: The part \`stage-1\` needs \`live\`: \`true\` or \`false\`.
`,
      ),
    );
  });

  test('nothing behind a key', () => {
    expectMarked(
      instead(
        '  - unplug: K30\n',
        '  - unplug:\n    ^^^^^^ missing-key: expected a connector id, such as `K30`\n',
      ),
    );
    expectMarked(
      instead(
        'revision: B\n',
        'revision: #2\n^^^^^^^^ missing-key: What follows `#` is a comment; put it in quotes if it is the value.\n',
      ),
    );
  });

  test('an incomplete reserve is an error, since the least wait cannot be computed', () => {
    const read = expectMarked(
      instead(
        '    reserve: { capacitance: 6.8 mF ± 20 %, charged-to: 24 V, bleed: 4.7 kΩ ± 5 %, safe-below: 2 V }\n',
        `    reserve: { capacitance: 6.8 mF ± 20 %, charged-to: 24 V, bleed: 4.7 kΩ ± 5 % }
    ^^^^^^^ missing-key: \`reserve\` needs \`safe-below\`
`,
      ),
    );
    expect(read.procedure.sources.get('battery')?.reserve).toBeNull();
  });
});

describe('values', () => {
  test.each(['yes', 'True', '1', '"true"'])('`live` takes true or false and not %s', (value) => {
    const read = expectMarked(
      instead(
        'no-fire: 400 mA, live: true }\n',
        `no-fire: 400 mA, live: ${value} }
${' '.repeat(77)}${'^'.repeat(value.length)} wrong-value: \`live\` takes \`true\` or \`false\`
`,
      ),
    );
    expect(read.procedure.parts.get('stage-1')?.live).toBe(false);
  });

  test('a word that a key does not know', () => {
    expectMarked(
      instead(
        '  - ignition: on\n  - read-codes',
        `  - ignition: onn
              ^^^ wrong-value: \`ignition\` takes \`on\`, \`off\` or \`cycle\`, not \`onn\`. Did you mean \`on\`?
  - read-codes`,
      ),
    );
  });

  test('a list where one id is taken', () => {
    expectMarked(instead('  - unplug: K30\n', '  - unplug: [K30]\n    ^^^^^^ wrong-value: not a list\n'));
  });

  test('an empty list', () => {
    expectMarked(
      instead('feeds: [control-unit]\n', 'feeds: []\n           ^^ wrong-value: not an empty list\n'),
    );
  });

  test('minutes are a number above zero', () => {
    expectMarked(
      instead('minutes: 1.5\n', 'minutes: 0\n             ^ wrong-value: a number of minutes above 0\n'),
    );
    expectMarked(instead('minutes: 1.5\n', 'minutes: two\n             ^^^ wrong-value: not `two`\n'));
  });

  test('a section of the file that is no map', () => {
    expectMarked(
      instead(
        'conditions: { ambient: 10..35 °C }\n',
        'conditions: 20 °C\n            ^^^^^ wrong-value: `conditions` takes `ambient`, not `20 °C`.\n',
      ),
    );
  });

  test('ids and titles stay as they are written, whatever YAML would make of them', () => {
    const read = expectMarked(
      instead('title: Driver front airbag, stage 1 - loop resistance too high\n', 'title: 0x10\n').replace(
        'revision: B\n',
        'revision: yes\n',
      ),
    );
    expect(read.procedure.title).toBe('0x10');
    expect(read.procedure.revision).toBe('yes');
    expect(read.procedure.loops.get('stage-1-loop')?.pins.get('K21')).toEqual(['01', '2']);
    const plain = expectMarked(instead('K21: ["01", 2]', 'K21: [01, 1e3]'));
    expect(plain.procedure.loops.get('stage-1-loop')?.pins.get('K21')).toEqual(['01', '1e3']);
    const words = expectMarked(
      instead('applies-to: Halden V4 parcel van, restraint training rig', 'applies-to: on'),
    );
    expect(words.procedure.appliesTo).toBe('on');
  });
});

test('what is in quotes is text', () => {
  expectMarked(
    instead('format: 1\n', 'format: "1"\n        ^^^ wrong-value: `format` takes `1`, not `1` in quotes.\n'),
  );
});

describe('kinds', () => {
  test('an unknown kind offers the nearest, and the entry is checked no further', () => {
    expectMarked(
      instead(
        'stage-1: { kind: initiator, resistance: 1.7..2.3 Ω, no-fire: 400 mA, live: true }\n',
        `stage-1: { kind: initator, resistance: 2 V }
                   ^^^^^^^^ wrong-value: Did you mean \`initiator\`?
`,
      ),
    );
  });

  test('no kind', () => {
    expectMarked(
      instead(
        'stage-1: { kind: initiator, resistance: 1.7..2.3 Ω, no-fire: 400 mA, live: true }\n',
        `stage-1: { resistance: 1.7..2.3 Ω }
  ^^^^^^^ missing-key: \`stage-1\` needs \`kind\`
`,
      ),
    );
  });

  test('a cable is given one way', () => {
    const cable = 'dash-harness: { kind: cable, wire: 0.5 mm², length: 1.2 m }\n';
    expectMarked(
      instead(
        cable,
        `dash-harness: { kind: cable, wire: 0.5 mm², length: 1.2 m, resistance: 1 Ω }
                                                             ^^^^^^^^^^ wrong-value: Both are written here
`,
      ),
    );
    expectMarked(
      instead(
        cable,
        'dash-harness: { kind: cable }\n  ^^^^^^^^^^^^ missing-key: needs `wire` and `length`\n',
      ),
    );
    expectMarked(
      instead(
        cable,
        'dash-harness: { kind: cable, wire: 0.5 mm² }\n  ^^^^^^^^^^^^ missing-key: needs `length`: a length\n',
      ),
    );
    expectMarked(instead(cable, 'dash-harness: { kind: cable, resistance: 40..50 mΩ }\n'));
  });
});

describe('what comes later', () => {
  test('a key and a section each give one finding', () => {
    expectMarked(
      instead('  - unplug: K30\n', '  - unplug: K30\n    figure: 1\n    ^^^^^^ not-yet: `figure`\n'),
    );
    expectMarked(instead('connectors:\n', 'faults: {}\n^^^^^^ not-yet: `faults`\nconnectors:\n'));
  });

  test('a key that comes later takes the place of one that is needed', () => {
    expectMarked(
      instead(
        'coil-coupling: { kind: rotary-coupling, resistance: 0.05..0.15 Ω }\n',
        'coil-coupling: { kind: rotary-coupling, faults: [] }\n                                          ^^^^^^ not-yet: `faults`\n',
      ),
    );
  });
});

describe('the version of the format', () => {
  test('another one is refused with one sentence, and nothing else is said', () => {
    const read = expectMarked(
      instead('format: 1\n', 'format: 2\n        ^ file: reads format 1 only\n').replace(
        'steps:\n',
        'stps:\n',
      ),
    );
    expect(read.whole).toBe(false);
  });

  test('none, or no number', () => {
    expectMarked(
      instead('format: 1\n', 'format: one\n        ^^^ wrong-value: `format` takes `1`, not `one`.\n'),
    );
    expectMarked(
      instead('format: 1\ntitle:', 'title:').replace(
        'too high\n',
        'too high\n^^^^^ missing-key: The file needs `format`: `1`.\n',
      ),
    );
  });
});
