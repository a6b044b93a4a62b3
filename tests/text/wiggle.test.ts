import { describe, expect, test } from 'vitest';
import { readProcedure } from '../../server/src/text/read-procedure.ts';
import { stepInWords } from '../../server/src/model/step-in-words.ts';
import { good } from './good.ts';
import { expectMarked, instead } from './marked.ts';

/* What is moved by hand while something is watched. */

const replaced = '  - unplug: K30\n';

const inStep = (text: string): ReturnType<typeof expectMarked> => expectMarked(instead(replaced, text));

const meter = good.replace(
  'loads:\n',
  `  hand-meter:
    kind: multimeter
    resistance: { range: 0..40 Ω, accuracy: 0.5 % + 2 digits, resolution: 0.01 Ω }
    voltage: { range: 0..60 V, accuracy: 0.5 % + 2 digits, resolution: 0.01 V, input: 10 MΩ }
    zeroed: true
loads:
`,
);

const withMeter = (text: string): ReturnType<typeof readProcedure> =>
  readProcedure({ id: 'a.procedure.yaml', text: meter.replace(replaced, text) });

describe('what is moved', () => {
  test('are parts, connectors and sides, one or several', () => {
    const read = inStep(`  - wiggle: [coil-coupling, K10, K30.monitor]
    watch: stage-1-loop
    for: 30 s
    outcomes: { within: next, open: stop-low, else: stop-low }
`);
    const step = read.procedure.steps[6];
    expect(step).toMatchObject({
      verb: 'wiggle',
      by: 'monitor',
      moved: [
        { id: 'coil-coupling', place: ['wiggle', 0] },
        { id: 'K10', place: ['wiggle', 1] },
        { id: 'K30', side: 'monitor', place: ['wiggle', 2] },
      ],
      seconds: 30,
      loops: ['stage-1-loop'],
      expect: null,
    });
    expect(step === undefined ? '' : stepInWords(step)).toBe(
      'wiggle coil-coupling, K10, K30.monitor for 30 s, watching stage-1-loop',
    );
  });

  test('is no source, load, instrument, loop or terminal, and has the sides that it has', () => {
    inStep(`  - wiggle: [battery, bench-lamp, control-unit, K30.front, coil-coupling.end]
             ^^^^^^^ wrong-id: expected a part or a connector
                      ^^^^^^^^^^ wrong-id: expected a part or a connector
                                  ^^^^^^^^^^^^ wrong-id: expected a part or a connector
                                                    ^^^^^ wrong-id: its sides are
                                                           ^^^^^^^^^^^^^ wrong-id: expected a connector
    watch: stage-1-loop
    for: 30 s
`);
    inStep(`  - wiggle: K30.end.1
            ^^^^^^^^^ wrong-value: takes an id or a side of a connector
    watch: stage-1-loop
    for: 30 s
`);
  });
});

describe('what is watched', () => {
  test('is one thing', () => {
    inStep(`  - wiggle: coil-coupling
    watch: stage-1-loop
    quantity: resistance
    ^^^^^^^^ wrong-value: One thing is watched
    for: 30 s
`);
    inStep(`  - wiggle: coil-coupling
    ^^^^^^ missing-key: Say what is watched
    for: 30 s
`);
    inStep(`  - wiggle: coil-coupling
    watch: K30
           ^^^ wrong-id: expected a loop
    for: 30 s
`);
    inStep(`  - wiggle: coil-coupling
    watch: [stage-1-loop]
    ^^^^^ wrong-value: takes a loop id
    for: 30 s
`);
  });

  test('is measured as by `measure`', () => {
    const { procedure, findings } = withMeter(`  - wiggle: coil-coupling
    quantity: voltage
    across: K30.monitor
    with: hand-meter
    for: 1 min
    expect: below 2 V
    windows: { some: 4..5 V }
    outcomes: { within: next, some: stop-low, else: stop-low }
`);
    expect(findings).toEqual([]);
    const step = procedure.steps[6];
    expect(step).toMatchObject({
      verb: 'wiggle',
      by: 'hand',
      quantity: 'voltage',
      of: 'K30.monitor',
      with: 'hand-meter',
      tester: null,
      carrying: null,
      seconds: 60,
      expect: { below: 2 },
    });
    expect(step === undefined ? '' : stepInWords(step)).toBe(
      'wiggle coil-coupling for 1 min, watching voltage across K30.monitor',
    );
  });

  test('needs the probes and the instrument', () => {
    const { findings } = withMeter(`  - wiggle: coil-coupling
    quantity: resistance
    for: 1 min
`);
    expect(findings.map(({ rule, message }) => [rule, /needs `(\w+)`/.exec(message)?.[1]])).toEqual([
      ['missing-key', 'across'],
      ['missing-key', 'with'],
    ]);
  });

  test('is no insulation: hands are on what the tester charges', () => {
    const { findings } = withMeter(`  - wiggle: coil-coupling
    quantity: insulation
    across: K30.monitor
    with: hand-meter
    for: 1 min
`);
    expect(findings.map(({ rule }) => rule)).toEqual(['wrong-value']);
    expect(findings[0]?.message).toContain('`resistance` or `voltage`');
  });
});

describe('how long', () => {
  test('is said, and more than nothing', () => {
    inStep(`  - wiggle: coil-coupling
    ^^^^^^ missing-key: \`for\`
    watch: stage-1-loop
`);
    inStep(`  - wiggle: coil-coupling
    watch: stage-1-loop
    for: 0 s
         ^^^ quantity: more than zero
`);
  });
});

describe('outcomes', () => {
  test('are those of a reading', () => {
    inStep(`  - wiggle: coil-coupling
    watch: stage-1-loop
    for: 30 s
    outcomes: { ok: next, defect: stop-low }
                ^^ unknown-key: is no outcome of a reading
                          ^^^^^^ unknown-key: is no outcome of a reading
`);
  });
});

test('a routine is given what is moved and what is watched', () => {
  const text = good
    .replace(
      'steps:\n',
      `routines:
  shake:
    needs: { half: side, piece: part, loop-there: loop }
    steps:
      - wiggle: [half, piece]
        watch: loop-there
        for: 30 s
steps:
`,
    )
    .replace(
      replaced,
      '  - run: shake\n    given: { half: K30.monitor, piece: coil-coupling, loop-there: stage-1-loop }\n',
    );
  const { procedure, findings } = readProcedure({ id: 'a.procedure.yaml', text });
  expect(findings).toEqual([]);
  expect(procedure.steps.find(({ verb }) => verb === 'wiggle')).toMatchObject({
    moved: [{ id: 'K30', side: 'monitor' }, { id: 'coil-coupling' }],
    loops: ['stage-1-loop'],
  });
});
