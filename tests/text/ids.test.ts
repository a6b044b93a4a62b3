import { describe, expect, test } from 'vitest';
import { expectMarked, instead } from './marked.ts';

describe('names', () => {
  test('nothing carries it: those that are equally near are all offered, so that none is suggested', () => {
    const read = expectMarked(
      instead(
        '  - unplug: K30\n',
        '  - unplug: K31\n            ^^^ unknown-id: expected a connector. Did you mean `K21` or `K30`?\n',
      ),
    );
    expect(read.procedure.steps[6]).toMatchObject({ number: 7, verb: 'broken' });
  });

  test('it names something that cannot stand there', () => {
    const read = expectMarked(
      instead(
        '  - unplug: K30\n',
        '  - unplug: stage-1\n            ^^^^^^^ wrong-id: `stage-1` is a part; expected a connector.\n',
      ),
    );
    expect(read.findings[0]?.related[0]?.at.path).toEqual(['parts', 'stage-1']);
  });

  test('a name is given once in all sections', () => {
    const read = expectMarked(
      instead(
        '  K10: { contact: 2..15 mΩ }\n',
        `  K10: { contact: 2..15 mΩ }
  stage-1: { contact: 2..15 mΩ }
  ^^^^^^^ duplicate-id: \`stage-1\` is the name of something else already
`,
      ),
    );
    expect(read.findings[0]?.related[0]?.at).toMatchObject({ path: ['parts', 'stage-1'], part: 'key' });
  });

  test('steps have a name space of their own', () => {
    expectMarked(instead('id: blame-stage\n', 'id: K10\n').replace('within: blame-stage', 'within: K10'));
    expectMarked(
      instead('id: put-back\n', 'id: finish\n')
        .replace('go: put-back', 'go: finish')
        .replace(
          'id: finish\n    minutes',
          'id: finish\n        ^^^^^^ duplicate-id: Every name is given once.\n    minutes',
        ),
    );
  });

  test('words with a meaning of their own are no ids', () => {
    expectMarked(
      instead(
        '  bench-lamp: {',
        '  open: { kind: lamp, resistance: 3.0 Ω }\n  ^^^^ wrong-value: has a meaning of its own\n  bench-lamp: {',
      ),
    );
    expectMarked(
      instead(
        '  bench-lamp: {',
        '  2nd: { kind: lamp, resistance: 3.0 Ω }\n  ^^^ wrong-value: an id starts with a letter\n  bench-lamp: {',
      ),
    );
  });

  test('a source that feeds something unknown', () => {
    const read = expectMarked(
      instead(
        '    feeds: [control-unit]\n',
        `    feeds: [control-unit, contrl-unit, bench-lamp]
                          ^^^^^^^^^^^ unknown-id: Did you mean \`control-unit\`?
                                       ^^^^^^^^^^ wrong-id: \`bench-lamp\` is a load
`,
      ),
    );
    expect(read.procedure.sources.get('battery')).toMatchObject({
      feeds: ['control-unit'],
      feedsComplete: false,
    });
  });
});

describe('loops', () => {
  const path = '    path: [control-unit, K10, dash-harness, K21, coil-coupling, K30, stage-1]\n';

  test('a loop starts at a monitor', () => {
    const read = expectMarked(
      instead(
        path,
        `    path: [dash-harness, K10, K21, coil-coupling, K30, stage-1]
           ^^^^^^^^^^^^ wrong-id: \`dash-harness\` is a part; expected an instrument.
`,
      ),
    );
    expect(read.procedure.loops.get('stage-1-loop')).toMatchObject({ monitor: null, complete: false });
  });

  test('a loop ends in one part that closes it', () => {
    expectMarked(
      instead(
        path,
        `    path: [control-unit, K10, dash-harness, K21, coil-coupling, K30]
                                                                ^^^ wrong-loop: ends in the connector \`K30\`
`,
      ),
    );
    expectMarked(
      instead(
        path,
        `    path: [control-unit, K10, K21, coil-coupling, K30, stage-1, dash-harness]
                                                       ^^^^^^^ wrong-loop: stands last in the path
                                                                ^^^^^^^^^^^^ wrong-loop: does not close the loop
`,
      ),
    );
  });

  test('everything stands once in a loop', () => {
    expectMarked(
      instead(
        path,
        `    path: [control-unit, K10, dash-harness, K21, K10, coil-coupling, K30, stage-1]
                                                 ^^^ wrong-loop: \`K10\` stands in this loop already
`,
      ),
    );
  });

  test('what cannot be read makes the loop incomplete', () => {
    const read = expectMarked(
      instead(
        path,
        `    path: [control-unit, K10, dash-harness, K22, coil-coupling, K30, stage-1]
                                            ^^^ unknown-id: Did you mean \`K21\`?
`,
      ),
    );
    const loop = read.procedure.loops.get('stage-1-loop');
    expect(loop?.complete).toBe(false);
    expect(loop?.elements.map(({ id }) => id)).toEqual([
      'K10',
      'dash-harness',
      'coil-coupling',
      'K30',
      'stage-1',
    ]);
  });

  const second = (pins: string, end = 'stage-2', marks = '') =>
    instead(
      'parts:\n',
      'parts:\n  stage-2: { kind: initiator, resistance: 1.7..2.3 Ω, live: true }\n',
    ).replace(
      'steps:\n',
      `  stage-2-loop:\n    path: [control-unit, K10, dash-harness, ${end}]\n${marks}${pins}steps:\n`,
    );

  test('a part with two conductors may stand in several loops, a connector with pins of its own for each', () => {
    const read = expectMarked(second('    pins: { K10: [5, 6] }\n'));
    expect(read.procedure.loops.get('stage-2-loop')?.pins.get('K10')).toEqual(['5', '6']);
  });

  test('a connector of several loops needs pins', () => {
    expectMarked(
      second('', 'stage-2', '                         ^^^ wrong-loop: each says which pins it uses\n'),
    );
  });

  test('no pin belongs to two loops', () => {
    expectMarked(
      second(
        '    pins: { K10: [4, 5] }\n                  ^ wrong-loop: Pin 4 of `K10` belongs to another loop already.\n',
      ),
    );
  });

  test('a part that closes a loop stands in one', () => {
    expectMarked(
      second(
        '    pins: { K10: [5, 6] }\n',
        'stage-1',
        '                                            ^^^^^^^ wrong-loop: closes the loop `stage-1-loop` already\n',
      ),
    );
  });

  test('pins are two, different, and of a connector on the way', () => {
    const pins = '    pins: { K10: [3, 4], K21: ["01", 2] }\n';
    expectMarked(
      instead(
        pins,
        '    pins: { K10: [3] }\n                 ^^^ wrong-value: two pins, such as `[3, 4]`, not a list of 1\n',
      ),
    );
    expectMarked(
      instead(pins, '    pins: { K10: [3, 3] }\n                     ^ wrong-loop: two different pins\n'),
    );
    expectMarked(
      instead(
        pins,
        '    pins: { K40: [3, 4] }\n            ^^^ wrong-loop: does not pass through `K40`\n',
      ).replace('  K10: { contact', '  K40: { contact: 5 mΩ }\n  K10: { contact'),
    );
  });
});
