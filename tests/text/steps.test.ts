import { describe, expect, test } from 'vitest';
import { readProcedure } from '../../server/src/text/read-procedure.ts';
import { good } from './good.ts';
import { expectMarked, instead } from './marked.ts';

const unplug = '  - unplug: K30\n';

describe('the verb', () => {
  test('a mistyped one offers the nearest', () => {
    expectMarked(
      instead(
        unplug,
        '  - unplg: K30\n    ^^^^^ unknown-key: is not a verb that is known here. Did you mean `unplug`?\n',
      ),
    );
  });

  test('none', () => {
    expectMarked(instead(unplug, '  - note: Careful.\n    ^^^^ missing-key: This step has no verb\n'));
    expectMarked(instead(unplug, '  -\n  ^ missing-key: This step is empty\n'));
    expectMarked(instead(unplug, '  - unplug K30\n    ^^^^^^^^^^ wrong-value: Write `unplug: …`.\n'));
  });

  test('two', () => {
    expectMarked(
      instead(unplug, '  - unplug: K30\n    plug: K10\n    ^^^^ wrong-value: A step has one verb.\n'),
    );
  });

  test('an unknown key beside it breaks the step: what it was meant to do is not known', () => {
    const read = expectMarked(
      instead(unplug, '  - unplug: K30\n    nte: x\n    ^^^ unknown-key: Did you mean `note`?\n'),
    );
    expect(read.procedure.steps[6]).toMatchObject({ number: 7, verb: 'broken' });
  });

  test('a wrong remark does not', () => {
    const read = expectMarked(
      instead(unplug, '  - unplug: K30\n    note: [a]\n    ^^^^ wrong-value: `note` takes text\n'),
    );
    expect(read.procedure.steps[6]).toMatchObject({ number: 7, verb: 'unplug', connector: 'K30' });
  });

  test('a text that is needed is not empty', () => {
    expectMarked(
      instead('stop: The work is done.\n', "stop: ' '\n          ^^^ wrong-value: not an empty text\n"),
    );
  });
});

describe('sections', () => {
  test('have no number, and their title stands on the steps that follow', () => {
    const { steps } = expectMarked(instead(unplug, unplug)).procedure;
    expect(steps[0]).toMatchObject({ number: 1, path: ['steps', 1], section: 'Confirm' });
    expect(steps[3]).toMatchObject({ number: 4, path: ['steps', 5], section: 'Make safe', id: 'make-safe' });
  });

  test('are items of their own', () => {
    expectMarked(
      instead(
        unplug,
        '  - unplug: K30\n    section: Next\n    ^^^^^^^ wrong-value: A `section` is an item of its own.\n',
      ),
    );
  });

  test('hold nothing but their title', () => {
    expectMarked(
      instead(
        '  - section: Confirm\n',
        '  - section: Confirm\n    note: x\n    ^^^^ unknown-key: Known here: `section`.\n',
      ),
    );
  });
});

describe('outcomes', () => {
  const outcomes = '    outcomes: { within: finish, below: stop-low, else: make-safe }\n';

  test('lead to steps by index, sections not counted', () => {
    const step = expectMarked(instead(outcomes, outcomes)).procedure.steps[2];
    expect(step).toMatchObject({
      verb: 'read',
      outcomes: [
        { name: 'within', target: 23, path: ['steps', 3, 'outcomes', 'within'] },
        { name: 'below', target: 26 },
        { name: 'else', target: 3 },
      ],
    });
  });

  test('an id that no step has leaves the step readable', () => {
    const read = expectMarked(
      instead(
        outcomes,
        `    outcomes: { within: finsh, else: make-safe }
                        ^^^^^ unknown-id: No step has the id \`finsh\`. Did you mean \`finish\`?
`,
      ),
    );
    expect(read.procedure.steps[2]).toMatchObject({
      verb: 'read',
      outcomes: [{ target: null }, { target: 3 }],
    });
  });

  test('`next` behind the last step is the end', () => {
    const read = expectMarked(
      instead(
        '    leaves: [codes, repair]\n',
        '  - inspect: Look around.\n    outcomes: { ok: next, defect: make-safe }\n',
      ),
    );
    expect(read.procedure.steps.at(-1)).toMatchObject({
      outcomes: [{ name: 'ok', target: 'end' }, { target: 3 }],
    });
  });

  test('a class that the verb does not have', () => {
    expectMarked(
      instead(
        outcomes,
        '    outcomes: { within: finish, defect: make-safe }\n                                ^^^^^^ unknown-key: `defect`\n',
      ),
    );
  });

  test('of several loops stand under the name of each loop', () => {
    const several =
      '    outcomes: { stage-1-loop: { open: next }, within: blame-stage, else: blame-coupling }\n';
    const step = expectMarked(instead(several, several)).procedure.steps[10];
    expect(step).toMatchObject({
      outcomes: [
        { name: 'open', of: 'stage-1-loop', target: 11 },
        { name: 'within', target: 13 },
        { name: 'else', target: 11 },
      ],
    });
    expectMarked(
      instead(
        several,
        `    outcomes: { stage-2-loop: { open: next }, else: blame-coupling }
                ^^^^^^^^^^^^ unknown-id: not one of the loops that are read here. Did you mean \`stage-1-loop\`?
`,
      ).replace('- conclude: stage-1\n    id: blame-stage', '- conclude: stage-1'),
    );
    expectMarked(
      instead(
        several,
        `    outcomes: { stage-1-loop: next, within: blame-stage, else: blame-coupling }
                              ^^^^ wrong-value: \`stage-1-loop\` takes outcomes of this loop, not \`next\`.
`,
      ),
    );
  });

  test('`go` takes a step', () => {
    expectMarked(
      instead('go: put-back\n', 'go: put-bak\n        ^^^^^^^ unknown-id: Did you mean `put-back`?\n'),
    );
    expectMarked(instead('go: put-back\n', 'go: next\n        ^^^^ wrong-value: a step id\n'));
  });
});

describe('places', () => {
  const at = '    at: K30.monitor\n';

  test('a load sits on a side of a connector', () => {
    expectMarked(
      instead(
        at,
        '    at: K30\n        ^^^ wrong-value: A load sits on one side of a connector: `K30.monitor` or `K30.end`.\n',
      ),
    );
    expectMarked(
      instead(
        at,
        '    at: K30.middle\n            ^^^^^^ wrong-id: `K30` has no side `middle`; its sides are `monitor` and `end`.\n',
      ),
    );
    expectMarked(instead(at, '    at: K31.monitor\n        ^^^ unknown-id: Nothing is named `K31`\n'));
  });

  test('in a connector of several loops the loop is stated', () => {
    const twice = (fit: string) =>
      instead(at, fit)
        .replace('parts:\n', 'parts:\n  stage-2: { kind: initiator, resistance: 1.7..2.3 Ω, live: true }\n')
        .replace('K21: ["01", 2] }\n', 'K21: ["01", 2], K30: [1, 2] }\n')
        .replace(
          'steps:\n',
          '  stage-2-loop:\n    path: [control-unit, K30, stage-2]\n    pins: { K30: [3, 4] }\nsteps:\n',
        );
    expectMarked(twice('    at: K30.monitor\n        ^^^^^^^^^^^ missing-key: Say which one with `loop`.\n'));
    const read = expectMarked(twice('    at: K30.monitor\n    loop: stage-2-loop\n'));
    expect(read.procedure.steps[7]).toMatchObject({
      verb: 'fit',
      load: 'bench-lamp',
      at: { connector: 'K30', side: 'monitor', loop: 'stage-2-loop' },
    });
    expectMarked(
      twice(
        '    at: K21.monitor\n    loop: stage-2-loop\n          ^^^^^^^^^^^^ wrong-loop: does not pass through `K21`\n',
      ),
    );
  });

  test('in a connector of no loop there is none; the engine says so', () => {
    const read = expectMarked(
      instead(at, '    at: K40.end\n').replace('connectors:\n', 'connectors:\n  K40: { contact: 5 mΩ }\n'),
    );
    expect(read.procedure.steps[7]).toMatchObject({ at: { connector: 'K40', side: 'end', loop: null } });
  });

  test('`at: nothing` says that hands touch nothing, and stands alone', () => {
    const touched = '    at: [K30.monitor, stage-1]\n';
    expect(expectMarked(instead(touched, '    at: nothing\n')).procedure.steps[19]).toMatchObject({
      at: 'nothing',
    });
    expect(expectMarked(instead(touched, '')).procedure.steps[19]).toMatchObject({ at: 'not said' });
    expectMarked(
      instead(
        touched,
        `    at: [K30.monitor, nothing]
                      ^^^^^^^ wrong-value: \`nothing\` stands alone
`,
      ),
    );
  });

  test('what is only looked at is anything that can be seen', () => {
    const touched = '    at: [K30.monitor, stage-1]\n';
    expect(
      expectMarked(
        instead(touched, '    at: nothing\n    of: [K30.end, stage-1, battery, bench-lamp, control-unit]\n'),
      ).procedure.steps[19],
    ).toMatchObject({
      of: ['K30', 'stage-1', 'battery', 'bench-lamp', 'control-unit'].map((id, at) => ({
        id,
        members: [id],
        place: ['of', at],
      })),
    });
    expectMarked(
      instead(
        touched,
        `    of: [K30.end, nothing]
                  ^^^^^^^ wrong-value: \`nothing\` has a meaning of its own
`,
      ),
    );
    expectMarked(
      instead(
        touched,
        `    of: [K30.end, stage-1-loop]
                  ^^^^^^^^^^^^ wrong-id: \`stage-1-loop\` is a loop
`,
      ),
    );
  });

  test('what hands touch is checked and reduced to connectors, parts and monitors', () => {
    const touched = '    at: [K30.monitor, stage-1]\n';
    expect(
      expectMarked(instead(touched, '    at: [K30.end.2, K30, control-unit]\n')).procedure.steps[19],
    ).toMatchObject({
      verb: 'inspect',
      at: [
        { id: 'K30', members: ['K30'], place: ['at', 0] },
        { id: 'control-unit', members: ['control-unit'], place: ['at', 2] },
      ],
    });
    expectMarked(
      instead(
        touched,
        `    at: [K30.monitor.9, bench-lamp]
                     ^ wrong-id: No loop uses pin 9 of \`K30\`
                        ^^^^^^^^^^ wrong-id: \`bench-lamp\` is a load
`,
      ),
    );
    expectMarked(
      instead(
        touched,
        '    at: stage-1.end\n        ^^^^^^^ wrong-id: `stage-1` is a part; expected a connector.\n',
      ),
    );
  });
});

describe('what a stop leaves', () => {
  test('are sources, connectors and loads, codes and a repair', () => {
    const leaves = '    leaves: [codes, repair]\n';
    expect(
      expectMarked(instead(leaves, '    leaves: [K30, battery, bench-lamp, codes]\n')).procedure.steps.at(-1),
    ).toMatchObject({
      leaves: ['K30', 'battery', 'bench-lamp', 'codes'],
    });
    expectMarked(
      instead(
        leaves,
        `    leaves: [code, stage-1]
             ^^^^ unknown-id: Did you mean \`codes\`?
                   ^^^^^^^ wrong-id: \`stage-1\` is a part
`,
      ),
    );
  });
});

test('findings carry their step, and a key that stays when lines move', () => {
  const moved = instead(unplug, '  - unplug: K31\n            ^^^ unknown-id: K31\n');
  const one = expectMarked(moved).findings[0];
  const other = expectMarked(moved.replace('  - section: Confirm\n', '  - section: Confirm\n  - do: Park.\n'))
    .findings[0];
  expect(one?.step).toMatchObject({ number: 7, path: ['steps', 8] });
  expect(other?.step).toMatchObject({ number: 8, path: ['steps', 9] });
  expect(other?.key).toBe(one?.key);
  expect(one?.key).toBe('unknown-id steps/unplug K31/unplug K31');
});

describe('headings alone', () => {
  test('are no steps', () => {
    const { findings } = readProcedure({
      id: 'a.procedure.yaml',
      text: `${good.split('steps:\n')[0] ?? ''}steps:\n  - section: Confirm\n`,
    });
    expect(findings.map(({ rule, at }) => [rule, at.path])).toEqual([['missing-key', ['steps']]]);
  });
});

describe('a place in a list that was written without brackets', () => {
  test('is the value itself', () => {
    const text = `${good.split('steps:\n')[0] ?? ''}steps:\n  - inspect: Look.\n    at: K30\n`;
    const { range } = readProcedure({ id: 'a', text });
    const { from, to } = range({ file: 'a', path: ['steps', 0, 'at', 0], part: 'value' });
    expect(text.slice(from, to)).toBe('K30');
  });
});
