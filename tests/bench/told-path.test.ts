import { describe, expect, test } from 'vitest';
import { pathLines } from '../../server/src/bench/path-lines.ts';
import type { PathLine } from '../../server/src/bench/path-lines.ts';
import { hopInWords, mostHops, tellPath, withPaths } from '../../server/src/bench/told-path.ts';
import { longestInWords, wayInWords } from '../../server/src/paths/trace.ts';
import type { Finding, Hop, Taken, Trace } from '../../server/src/model/finding.ts';
import { stepNumber } from '../../server/src/model/where.ts';
import type { StepRef } from '../../server/src/model/where.ts';
import { analysed } from '../readings/analysed.ts';
import { rules } from '../../server/src/rules/rules.ts';

const text = (steps: readonly string[]): string => {
  const circuit = rules[0]?.examples.passes.text.split('\nsteps:\n')[0] ?? '';
  return `${circuit}\nsteps:\n${steps.map((step) => `  - ${step}\n`).join('')}`;
};

/** The path through these steps as they are written, with the way out of the last one. */
function path(steps: readonly string[], last: Taken | null = null): Trace {
  return { hops: steps.map((_, index) => hop(index, index === steps.length - 1 ? last : { kind: 'next' })) };
}

function hop(index: number, taken: Taken | null, calls: readonly StepRef[] = [], number = index + 1): Hop {
  return { step: ref(number, calls), index, taken };
}

function ref(number: number, calls: readonly StepRef[] = []): StepRef {
  return { file: 'test.procedure.yaml', path: ['steps', number - 1], number, calls };
}

function shown(line: PathLine): string {
  switch (line.kind) {
    case 'hop':
      return hopInWords(line.hop);
    case 'stretch':
      return `${stepNumber(line.first)} to ${stepNumber(line.last)}: ${line.count}`;
    case 'left-out':
      return `left out: ${line.count}`;
  }
}

function lines(steps: readonly string[], trace: Trace): readonly string[] {
  const { procedure } = analysed(text(steps));
  expect(procedure.steps).toHaveLength(steps.length);
  return pathLines(tellPath(procedure, trace)).map(shown);
}

describe('a wait that power makes count for nothing', () => {
  const unplug = ['unplug: K30\n    warning: Clear.', 'plug: K30'];
  const off = ['ignition: off', 'disconnect: battery'];
  const ends = (steps: readonly string[]): readonly string[] => {
    const { findings, procedure } = analysed(text(steps));
    const touch = findings.find(({ rule, because }) => rule === 'short-wait' && because === undefined);
    if (touch?.trace === undefined) throw new Error('no short wait');
    return tellPath(procedure, touch.trace).map(hopInWords);
  };

  test('is told at the step that switches it on', () => {
    const told = ends([...off, 'wait: 3 min', 'reconnect: battery', ...off, ...unplug]);
    expect(told[3]).toBe('step 4, reconnect battery: the wait of step 3 counts no longer');
    expect(told.filter((hop) => hop.includes('counts no longer'))).toHaveLength(1);
  });

  test('by the ignition as well, and of several the last', () => {
    const told = ends([
      ...[...off, 'wait: 3 min', 'ignition: on', 'ignition: off'],
      ...['wait: 3 min', 'ignition: cycle', 'ignition: off', ...unplug],
    ]);
    expect(told.filter((hop) => hop.includes('counts no longer'))).toEqual([
      'step 7, ignition cycle: the wait of step 6 counts no longer',
    ]);
  });

  test('is not told where no wait counted, or where it still does', () => {
    const early = ends(['wait: 3 min', ...off, ...unplug]);
    const short = ends([...off, 'wait: 1 min', ...unplug]);
    for (const told of [early, short]) expect(told.join()).not.toContain('counts no longer');
  });
});

describe('a path that is told step by step', () => {
  test('folds what only lies between, and tells what switches, moves or decides', () => {
    const steps = [
      'ignition: on',
      'do: Look.',
      'do: Look again.',
      'read: driver-loop',
      'unplug: K30',
      'do: Look once more.',
      'ignition: off',
      'do: Hands in.',
    ];
    expect(lines(steps, path(steps))).toEqual([
      'step 1, ignition on',
      '2 to 4: 3',
      'step 5, unplug K30',
      'step 6, do: Look once more.',
      'step 7, ignition off',
      'step 8, do: Hands in.',
    ]);
  });

  test('tells the way that is taken', () => {
    const steps = ['read: driver-loop', 'go: last', 'do: Not here.', 'do: Here.', 'stop: Done.'];
    const trace: Trace = {
      hops: [
        hop(0, { kind: 'outcome', outcome: 'above', of: 'driver-loop' }),
        hop(1, { kind: 'go' }),
        hop(3, { kind: 'next' }),
        hop(4, { kind: 'end' }),
      ],
    };
    expect(lines(steps, trace)).toEqual([
      'step 1, read driver-loop: driver-loop above',
      'step 2, go to step 4',
      'step 4, do: Here.',
      'step 5, stop: Done., then the end',
    ]);
  });

  test('says where a circle closes', () => {
    const steps = ['do: Once.', 'read: driver-loop'];
    const outcome = { kind: 'outcome', outcome: 'else' } as const;
    expect(lines(steps, { ...path(steps, outcome), repeatsFrom: 0 }).at(-1)).toBe(
      'step 2, read driver-loop: else, and step 1 again',
    );
  });

  test('numbers the steps of a routine behind those of its calls, and never folds across its border', () => {
    const steps = ['do: A.', 'do: B.', 'do: C.', 'do: D.', 'do: E.', 'do: F.', 'do: G.'];
    const call = ref(2);
    const trace: Trace = {
      hops: [
        hop(0, { kind: 'next' }),
        hop(1, { kind: 'run' }),
        hop(2, { kind: 'next' }, [call], 1),
        hop(3, { kind: 'return' }, [call], 2),
        hop(4, { kind: 'next' }, [], 3),
        hop(5, { kind: 'next' }, [], 4),
        hop(6, null, [], 5),
      ],
    };
    expect(lines(steps, trace)).toEqual([
      'step 1, do: A.',
      'step 2, do: B.',
      '2.1 to 2.2: 2',
      '3 to 4: 2',
      'step 5, do: G.',
    ]);
    const { procedure } = analysed(text(steps));
    expect(tellPath(procedure, trace).map(({ weight, way }) => [weight, way])).toEqual([
      ['unimportant', ''],
      ['important', ''],
      ['unimportant', ''],
      ['unimportant', ', then back to step 3'],
      ['unimportant', ''],
      ['unimportant', ''],
      ['essential', ''],
    ]);
  });

  test('keeps the start and the end of a long one, and every step is in one line', () => {
    for (const length of [20, 21, 22, 100]) {
      const steps = Array.from({ length }, (_, index) =>
        index % 2 === 0 ? 'ignition: on' : 'ignition: off',
      );
      const told = lines(steps, path(steps));
      expect(told.length).toBe(Math.min(length, 21));
      const leftOut = told.flatMap((line) => (line.startsWith('left out: ') ? [Number(line.slice(10))] : []));
      expect(told.length - leftOut.length + (leftOut[0] ?? 0)).toBe(length);
      expect(told.slice(0, 8)).toEqual(
        steps.slice(0, 8).map((step, i) => `step ${i + 1}, ${step.replace(':', '')}`),
      );
      expect(told.at(-12)).toMatch(new RegExp(`^step ${length - 11},`));
    }
  });
});

describe('paths that are longer than anybody follows', () => {
  const long = (length: number): Trace => path(Array.from({ length }, () => 'do: Look.'));
  const finding = (trace: Trace): Finding => ({
    rule: 'a',
    severity: 'error',
    stage: 'order',
    message: 'It is so.',
    at: { file: 'a', path: [], part: 'key' },
    related: [],
    trace,
    key: 'a',
  });

  test('are told up to a number of steps in one file; then the findings say why they are not', () => {
    const half = finding(long(mostHops / 2));
    const [one, two, three, four] = withPaths([half, half, half, finding(long(1))]);
    expect([one, two]).toEqual([half, half]);
    for (const left of [three, four]) {
      expect(left?.trace).toBeUndefined();
      expect(left?.message).toContain(`more than ${mostHops} steps`);
      expect(left?.message).toMatch(/^It is so\. .*Mend those before it/);
    }
  });

  test('are not counted any further once they are not told', () => {
    let counted = 0;
    const trace: Trace = {
      hops: [],
      get length() {
        counted += 1;
        return mostHops + 1;
      },
    };
    expect([...withPaths(Array.from({ length: 50 }, () => finding(trace)))]).toHaveLength(50);
    expect(counted).toBe(1);
  });

  test('are told by their length where they lead to one of two benches', () => {
    expect(wayInWords(long(longestInWords))).toBe(`by steps 1 to ${longestInWords}`);
    expect(wayInWords(long(longestInWords + 1))).toBe(`by a way of ${longestInWords + 1} steps`);
  });
});
