import { describe, expect, test } from 'vitest';
import { deepestCalls } from '../../server/src/text/call-graph.ts';
import { stepNumber } from '../../server/src/model/where.ts';
import { expectMarked, instead } from './marked.ts';

/* Routines, the calls of them, assemblies and waivers, in the sound procedure with one passage written otherwise. */

const routines = (text: string): string => `routines:\n${text}connectors:\n`;
const withRoutine = (text: string, call: string): string =>
  instead('connectors:\n', routines(text)).replace('  - unplug: K30\n', `${call}  - unplug: K30\n`);

const makeSafe = `  make-safe:
    steps:
      - ignition: off
      - disconnect: battery
      - wait: 3 min
`;

const substitute = `  substitute:
    needs: { where: side, what: load, loop: loop }
    steps:
      - unplug: where
      - fit: what
        at: where
        loop: loop
`;

/** The same with the loop written in the routine itself. */
const ofOneLoop = substitute
  .replace(', loop: loop }', ' }')
  .replace('        loop: loop\n', '        loop: stage-1-loop\n');

describe('routines', () => {
  test('behind each call stand the steps of the routine, with numbers below that of the call', () => {
    const read = expectMarked(withRoutine(makeSafe, '  - run: make-safe\n'));
    const call = read.procedure.steps.findIndex(({ verb }) => verb === 'run');
    const { number } = read.procedure.steps[call] ?? { number: 0 };
    const inside = read.procedure.steps.slice(call + 1, call + 5);
    expect(inside.map(({ verb }) => verb)).toEqual(['ignition', 'disconnect', 'wait', 'unplug']);
    expect(inside.map(stepNumber)).toEqual([`${number}.1`, `${number}.2`, `${number}.3`, String(number + 1)]);
    expect(inside[0]).toMatchObject({
      routine: 'make-safe',
      path: ['routines', 'make-safe', 'steps', 0],
      calls: [{ number, path: ['steps', read.procedure.steps[call]?.path[1]] }],
    });
  });

  test('what a call gives stands in the place of what the routine needs', () => {
    const read = expectMarked(
      withRoutine(
        substitute,
        '  - run: substitute\n    given: { where: K21.end, what: bench-lamp, loop: stage-1-loop }\n',
      ),
    );
    const inside = read.procedure.steps.filter(({ routine }) => routine === 'substitute');
    expect(inside).toMatchObject([
      { verb: 'unplug', connector: 'K21' },
      { verb: 'fit', load: 'bench-lamp', at: { connector: 'K21', side: 'end', loop: 'stage-1-loop' } },
    ]);
  });

  test('what is given may stand beside names of the file', () => {
    const read = expectMarked(
      withRoutine(ofOneLoop, '  - run: substitute\n    given: { where: K21.end, what: bench-lamp }\n'),
    );
    expect(
      read.procedure.steps.find(({ routine, verb }) => routine === 'substitute' && verb === 'fit'),
    ).toMatchObject({
      at: { connector: 'K21', loop: 'stage-1-loop' },
    });
  });

  test('jumps in a routine lead to its own steps, and behind its last one the path returns', () => {
    const read = expectMarked(
      withRoutine(
        `  look:
    steps:
      - inspect: Is the lock closed?
        id: again
        outcomes: { ok: done, defect: again }
      - do: Note it.
        id: done
`,
        '  - run: look\n  - run: look\n',
      ),
    );
    const first = read.procedure.steps.findIndex(({ verb }) => verb === 'run');
    expect(read.procedure.steps[first + 1]).toMatchObject({
      outcomes: [{ target: first + 2 }, { target: first + 1 }],
    });
    expect(read.procedure.steps[first + 4]).toMatchObject({
      outcomes: [{ target: first + 5 }, { target: first + 4 }],
    });
  });

  test('a mistake in a routine is told once, where it stands, however often it is called', () => {
    expectMarked(
      withRoutine(
        makeSafe.replace(
          'disconnect: battery\n',
          'disconnect: batery\n                    ^^^^^^ unknown-id: Did you mean `battery`?\n',
        ),
        '  - run: make-safe\n  - run: make-safe\n',
      ),
    );
  });

  test('what is missing, too much or of another kind is told at the call', () => {
    expectMarked(
      withRoutine(
        substitute,
        `  - run: substitute
         ^^^^^^^^^^ wrong-call: \`substitute\` needs \`loop\` (a loop)
    given: { where: K21, what: K30, side: K21.end }
                    ^^^ wrong-call: write \`K21.monitor\` or \`K21.end\`
                               ^^^ wrong-id: \`K30\` is a connector
                                    ^^^^ wrong-call: \`substitute\` does not need \`side\`
`,
      ),
    );
  });

  test('what is wrong only as it is called is told at the call', () => {
    const secondLoop = '  stage-2-loop:\n    path: [control-unit, stage-2]\n';
    expectMarked(
      withRoutine(
        substitute,
        `  - run: substitute
         ^^^^^^^^^^ wrong-loop: In \`substitute\` as it is called here: The loop \`stage-2-loop\` does not pass through \`K30\`.
    given: { where: K30.end, what: bench-lamp, loop: stage-2-loop }
`,
      )
        .replace('parts:\n', 'parts:\n  stage-2: { kind: initiator, resistance: 1.7..2.3 Ω, live: true }\n')
        .replace('loops:\n', `loops:\n${secondLoop}`),
    );
  });

  test('a routine that is not there, and one that leads back into itself', () => {
    expectMarked(
      withRoutine(makeSafe, '  - run: makesafe\n         ^^^^^^^^ unknown-id: Did you mean `make-safe`?\n'),
    );
    expectMarked(
      withRoutine(
        `  one:
    steps:
      - run: other
             ^^^^^ wrong-call: leads back into \`one\`
  other:
    steps:
      - run: one
             ^^^ wrong-call: leads back into \`other\`
`,
        '',
      ),
    );
  });

  /** Routines of which each calls the next; `called` is put behind the name of the routine that is called, by number. */
  const chain = (count: number, called: (at: number) => string = () => ''): string =>
    Array.from({ length: count }, (_, at) => {
      const step = at + 1 < count ? `run: r${at + 1}${called(at)}` : 'wait: 3 min';
      return `  r${at}:\n    steps:\n      - ${step}\n`;
    }).join('');

  test('routines call each other as deep as is followed', () => {
    const { procedure } = expectMarked(withRoutine(chain(deepestCalls), '  - run: r0\n'));
    const waits = procedure.steps.filter(({ verb, calls }) => verb === 'wait' && calls.length > 0);
    expect(waits.map(({ calls }) => calls.length)).toEqual([deepestCalls]);
  });

  test('a call into calls that stand deeper is an error, and leads nowhere', () => {
    const mark = `\n${' '.repeat(13)}^^ wrong-call: routines call each other ${deepestCalls} deep`;
    const { procedure } = expectMarked(
      withRoutine(
        chain(deepestCalls + 1, (at) => (at === 0 ? mark : '')),
        '  - run: r0\n',
      ),
    );
    const inRoutines = procedure.steps.filter(({ calls }) => calls.length > 0);
    expect(inRoutines.map(({ verb }) => verb)).toEqual(['broken']);
  });

  test('a name that a routine needs is not that of something in the file', () => {
    expectMarked(
      withRoutine(
        '  open-it:\n    needs: { K21: connector }\n             ^^^ duplicate-id: `K21` is the name of something\n    steps:\n      - unplug: K21\n',
        '',
      ),
    );
  });

  test('a routine is given on by another', () => {
    const read = expectMarked(
      withRoutine(
        `${substitute}  both:
    needs: { place: side }
    steps:
      - run: substitute
        given: { where: place, what: bench-lamp, loop: stage-1-loop }
`,
        '  - run: both\n    given: { place: K21.monitor }\n',
      ),
    );
    const fit = read.procedure.steps.find(({ verb, routine }) => verb === 'fit' && routine === 'substitute');
    expect(fit).toMatchObject({ at: { connector: 'K21', side: 'monitor' } });
    expect(fit?.calls.map(({ routine }) => routine ?? null)).toEqual([null, 'both']);
  });
});

describe('assemblies', () => {
  const assembly = 'assemblies: { driver-module: [stage-1, K30] }\nconnectors:\n';

  test('mean what they are made of', () => {
    const read = expectMarked(
      instead('connectors:\n', assembly).replace(
        '  - unplug: K30\n',
        '  - replace: driver-module\n  - unplug: K30\n',
      ),
    );
    expect(read.procedure.steps.find(({ verb }) => verb === 'replace')).toMatchObject({
      what: [{ id: 'driver-module', members: ['stage-1', 'K30'], place: ['replace'] }],
    });
  });

  test('are made of parts and connectors', () => {
    expectMarked(
      instead(
        'connectors:\n',
        `assemblies: { driver-module: [stage-1, battery] }
                                       ^^^^^^^ wrong-id: \`battery\` is a source
connectors:
`,
      ),
    );
  });
});

describe('waivers', () => {
  test('name a step of the file or of a routine', () => {
    const read = expectMarked(
      `${withRoutine(makeSafe.replace('ignition: off\n', 'ignition: off\n        id: first\n'), '')}waivers:
  - { rule: repeats, step: first, routine: make-safe, reason: Shown in class. }
  - { rule: repeats, step: frist, routine: make-safe, reason: Shown in class. }
                           ^^^^^ unknown-id: Did you mean \`first\`?
  - { rule: repeats, reason: Shown in class. }
`,
    );
    expect(read.procedure.waivers.map(({ step }) => step)).toEqual([
      ['routines', 'make-safe', 'steps', 0],
      null,
    ]);
  });

  test('need a reason', () => {
    expectMarked(
      instead(
        'connectors:\n',
        'waivers: [{ rule: repeats }]\n            ^^^^ missing-key: A waiver needs `reason`\nconnectors:\n',
      ),
    );
  });
});
