import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { writeTextFile } from '../../server/src/host/write-file.ts';
import { rules } from '../../server/src/rules/rules.ts';
import { ran } from './fake-terminal.ts';

const shipped = fileURLToPath(
  new URL('../fixtures/driver-airbag-written-out.procedure.yaml', import.meta.url),
);
const textOf = (name: string): string =>
  rules.find((rule) => rule.name === name)?.examples.triggers.text ?? '';
const good = rules[0]?.examples.passes.text ?? '';

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'procedures-'));
  mkdirSync(join(folder, 'b'));
  writeFileSync(join(folder, 'z.procedure.yaml'), textOf('live-touch'));
  writeFileSync(join(folder, 'b', 'a.procedure.yaml'), textOf('unreachable'));
  writeFileSync(join(folder, 'other.yaml'), 'not: ours');
  symlinkSync(folder, join(folder, 'b', 'round'));
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

test('a file that cannot be written says why in words', () => {
  expect(writeTextFile(join(folder, 'none', 'card.html'), '')).toBe('there is no such folder');
  expect(writeTextFile(folder, '')).toBe('it is a folder');
});

describe('check', () => {
  test('a sound file: nothing found, status 0', () => {
    expect(ran(['check', shipped])).toMatchObject({
      exit: 0,
      out: '1 file checked, no findings.\n',
      err: '',
    });
  });

  test('a folder is walked for procedures, sorted, links not followed', () => {
    const { exit, out } = ran(['check', folder, '--format', 'json']);
    const document = JSON.parse(out) as { files: { file: string }[]; summary: unknown };
    expect(document.files.map(({ file }) => file)).toEqual([
      join(folder, 'b', 'a.procedure.yaml'),
      join(folder, 'z.procedure.yaml'),
    ]);
    expect(document.summary).toEqual({ errors: 1, warnings: 1, waived: 0 });
    expect(exit).toBe(1);
  });

  test('warnings fail only under --strict', () => {
    const path = join(folder, 'b', 'a.procedure.yaml');
    expect(ran(['check', path]).exit).toBe(0);
    expect(ran(['check', path, '--strict']).exit).toBe(1);
  });

  test('a finding says where, what, by which path, and underlines the place', () => {
    const { out } = ran(['check', join(folder, 'z.procedure.yaml')]);
    expect(out).toContain('error live-touch  step 4');
    expect(out).toContain(
      'This step touches K30, in the circuit of stage-1, and the circuit has power: battery is connected.',
    );
    expect(out).toMatch(
      /\n {2}The shortest way there:\n {4}1 {2}ignition on\n(?: {4}\d .*\n)* {4}4 {2}unplug K30\n\n/,
    );
    expect(out).toMatch(/\d+ \| {3}- unplug: K30\n {2} +\| +\^\^\^\n/);
  });

  test('the JSON of a finding has the shape that is promised', () => {
    const { out } = ran(['check', join(folder, 'z.procedure.yaml'), '--format', 'json']);
    const { files, ...head } = JSON.parse(out) as { files: { findings: unknown[] }[] };
    expect(head).toMatchObject({ document: 'check', version: 1, complete: true });
    expect(files[0]?.findings[0]).toMatchObject({
      rule: 'live-touch',
      severity: 'error',
      stage: 'order',
      subject: 'K30',
      step: { number: 4, id: null, routine: null, calls: [] },
      'repeats-from': null,
      related: [],
      waived: null,
      key: 'live-touch/unplug K30/K30',
    });
    const { path, range, step } = files[0]?.findings[0] as {
      path: { step: { number: number }; taken: string | null }[];
      range: { start: { line: number; character: number }; end: { line: number; character: number } };
      step: { line: number };
    };
    expect(path.map((hop) => [hop.step.number, hop.taken])).toEqual([
      [1, 'next'],
      [2, 'next'],
      [3, 'next'],
      [4, null],
    ]);
    expect(range.start.line).toBe(step.line);
    expect(range.end.character - range.start.character).toBe('K30'.length);
  });

  test('standard input needs a name', () => {
    expect(ran(['check', '-', '--name', 'x.procedure.yaml'], good).exit).toBe(0);
    expect(ran(['check', '-', '--name', 'x.procedure.yaml'], textOf('live-touch')).out).toContain(
      'x.procedure.yaml:',
    );
    expect(ran(['check', '-'], good)).toMatchObject({ exit: 2, out: '' });
  });

  test('a file that cannot be read: status 2 and one line, the others are still reported', () => {
    const { exit, out, err } = ran([
      'check',
      join(folder, 'none.procedure.yaml'),
      join(folder, 'z.procedure.yaml'),
    ]);
    expect(exit).toBe(2);
    expect(err).toBe(
      `ohmwright: cannot read ${join(folder, 'none.procedure.yaml')}: there is no such file\n`,
    );
    expect(out).toContain('live-touch');
  });

  test('nothing but the document goes to standard output in a machine format', () => {
    const { out, exit } = ran(['check', join(folder, 'none.procedure.yaml'), '--format', 'json']);
    expect([out, exit]).toEqual(['', 2]);
  });
});

describe('windows', () => {
  test('the JSON has the shape that is promised', () => {
    const { exit, out } = ran(['windows', shipped, '--format', 'json']);
    const document = JSON.parse(out) as { readings: { step: { id: string | null } }[] };
    const lamp = document.readings.find(({ step }) => step.id === 'lamp-at-stage');
    expect(exit).toBe(0);
    expect(document).toMatchObject({ document: 'windows', version: 1, complete: true });
    expect(lamp).toMatchObject({
      of: 'stage-1-loop',
      quantity: 'resistance',
      unit: 'ohm',
      instrument: 'control-unit',
      accepted: { from: 'computed' },
      good: [
        {
          bench: { ignition: 'on', connectors: { K30: 'unplugged' }, loads: { 'bench-lamp': 'K30.monitor' } },
          shows: ['within'],
          exact: true,
        },
      ],
      codes: [{ loop: 'stage-2-loop', code: 'open', certain: true }],
    });
  });

  test('the accepted window is the good one rounded outward, and printed as such', () => {
    const { out } = ran(['windows', shipped, '--format', 'json']);
    const { readings } = JSON.parse(out) as {
      readings: {
        accepted: { least: number; most: number };
        printed: string;
        good: { least: number; most: number }[];
      }[];
    };
    expect(readings.length).toBeGreaterThan(4);
    for (const { accepted, printed, good } of readings) {
      const least = Math.min(...good.map((one) => one.least));
      const most = Math.max(...good.map((one) => one.most));
      expect(least - accepted.least).toBeGreaterThanOrEqual(0);
      expect(least - accepted.least).toBeLessThan(0.01);
      expect(accepted.most - most).toBeGreaterThanOrEqual(0);
      expect(accepted.most - most).toBeLessThan(0.01);
      expect(printed).toBe(`${accepted.least.toFixed(2)}..${accepted.most.toFixed(2)} Ω`);
    }
  });
});

test('things of which the same is assumed share a line, and a voltmeter is never said to be open', () => {
  const bus = fileURLToPath(new URL('../../procedures/two-wire-bus.procedure.yaml', import.meta.url));
  const { out } = ran(['windows', bus, '--why', '--step', 'whole']);
  expect(out).toContain(
    'front-wire-high, front-wire-low, rear-wire-high, rear-wire-low, door-wire-high, door-wire-low: annealed',
  );
  const quiet = ran(['windows', bus, '--why', '--step', '3']).out;
  expect(quiet).toContain('no number beyond 40 V');
  expect(quiet).not.toContain('open beyond');
});

test('what could not be read is not held against a repair', () => {
  const bus = readFileSync(new URL('../../procedures/two-wire-bus.procedure.yaml', import.meta.url), 'utf8');
  for (const [right, wrong] of [
    ['resolution: 0.1 Ω', 'resolution: 0.1 furlong'],
    ['20..50 kΩ', '50..20 kΩ'],
  ] as const) {
    const { out } = ran(['check', '-', '--name', 'bus.procedure.yaml'], bus.replace(right, wrong));
    expect(out).toContain('1 error, 0 warnings');
  }
});

describe('windows --why', () => {
  interface Why {
    readonly 'root-sum-square': { readonly least: number; readonly most: number };
    readonly drawn: { readonly draws: number; readonly least: number; readonly most: number };
    readonly shares: readonly { readonly part: string; readonly share: number }[];
    readonly assumed: readonly { readonly what: string; readonly value: string; readonly source: string }[];
  }

  test('explains each window by likely values within it, by shares that sum to 1, and by what is assumed', () => {
    const { exit, out } = ran(['windows', shipped, '--why', '--step', 'complaint', '--format', 'json']);
    const { readings } = JSON.parse(out) as {
      readings: { good: [{ least: number; most: number }]; why: Why }[];
    };
    expect([exit, readings.length]).toEqual([0, 1]);
    for (const { good, why } of readings) {
      const [worst] = good;
      for (const likely of [why['root-sum-square'], why.drawn]) {
        expect(likely.least).toBeGreaterThan(worst.least);
        expect(likely.most).toBeLessThan(worst.most);
        expect(likely.least).toBeLessThan(likely.most);
      }
      expect(why.shares.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
      expect(why.shares.map(({ part }) => part)).toEqual(
        expect.arrayContaining(['control-unit', 'stage-1', 'dash-harness', 'K30']),
      );
      expect(why.assumed.map(({ source }) => source).join()).toContain(
        'IEC 60228 class 5, plain or coated wires',
      );
    }
  });

  test('where a temperature is entered, tells of its nominal value, and drawn circuits bear it out', () => {
    const sensor = fileURLToPath(new URL('../../procedures/coolant-sensor.procedure.yaml', import.meta.url));
    const { out } = ran(['windows', sensor, '--why', '--step', 'complaint', '--format', 'json']);
    const { readings } = JSON.parse(out) as { readings: { why: Why & { entered: unknown } }[] };
    const why = readings[0]?.why;
    expect(why?.entered).toEqual([{ entry: 'coolant', celsius: 52.5 }]);
    const [squares, drawn] = [why?.['root-sum-square'], why?.drawn].map(
      (one) => (one?.most ?? 0) - (one?.least ?? 0),
    );
    expect((squares ?? NaN) / (drawn ?? NaN)).toBeGreaterThan(0.9);
    expect((squares ?? NaN) / (drawn ?? NaN)).toBeLessThan(1.15);
  });

  test('says of a voltage too which readings prove the circuit good', () => {
    const file = join(folder, 'supply.yaml');
    writeFileSync(
      file,
      `format: 1
title: A supply
sources: { battery: { kind: battery, voltage: 11..13 V, resistance: 0 Ω, feeds: [lamp] } }
instruments:
  hand-meter:
    kind: multimeter
    voltage: { range: 0..20 V, accuracy: 0.5 % + 2 digits, resolution: 0.01 V, input: 10 MΩ }
parts: { lamp: { kind: lamp, rated: 12 V 5 W } }
network: [{ source: battery, between: [plus, ground] }, { part: lamp, between: [plus, ground] }]
steps: [{ measure: voltage, across: [plus, ground], with: hand-meter }]
`,
    );
    // 11 · 1.005 + 0.02 = 11.075; 13 · 0.995 - 0.02 = 12.915.
    expect(ran(['windows', file, '--why']).out).toContain(
      'a reading of 11.08..12.91 V shows that the circuit is good, even at the largest error of the instrument\n',
    );
    const { out } = ran(['windows', file, '--format', 'json']);
    const [reading] = (JSON.parse(out) as { readings: readonly { guarded: unknown }[] }).readings;
    expect(reading?.guarded).toEqual({ least: 11.08, most: 12.91 });
  });

  test('draws the same circuits each time', () => {
    const words = ['windows', shipped, '--why', '--step', 'lamp-at-stage'];
    expect(ran(words).out).toBe(ran(words).out);
    expect(ran(words).out).toMatch(/root sum of squares: [\d.]+ Ω to [\d.]+ Ω/);
    expect(ran(words).out).toMatch(/bench-lamp +█+▌? +\d+ %/);
  });

  test('--step takes a number or an id, and shows that step alone', () => {
    const byNumber = ran(['windows', shipped, '--step', '3']);
    expect(byNumber.out).toBe(ran(['windows', shipped, '--step', 'complaint']).out);
    expect(byNumber.out).toMatch(/^Step 3 /);
    expect(byNumber.out).not.toMatch(/\nStep /);
    expect(byNumber.out).not.toContain('squares');
  });

  test('--step takes the number of a step in a routine as it is printed', () => {
    const folder = mkdtempSync(join(tmpdir(), 'ohmwright-'));
    const file = join(folder, 'calls.procedure.yaml');
    writeFileSync(
      file,
      readFileSync(
        new URL('../../procedures/driver-airbag-resistance.procedure.yaml', import.meta.url),
        'utf8',
      ).replace('  power-up:\n    steps:\n', '  power-up:\n    steps:\n      - read: stage-1-loop\n'),
    );
    expect(ran(['windows', file, '--step', '12.1']).out).toMatch(/^Step 12\.1 {2}read stage-1-loop/);
    expect(ran(['windows', file, '--step', '1']).exit).toBe(2);
    rmSync(folder, { recursive: true });
  });

  test.each(['1', 'make-safe', '999', 'nowhere'])('--step %s, which reads nothing, cannot run', (step) => {
    const { exit, out, err } = ran(['windows', shipped, '--step', step]);
    expect([exit, out]).toEqual([2, '']);
    expect(err).toBe(`ohmwright: no step ${step} of this file reads or measures anything\n`);
  });
});

describe('card', () => {
  test('a sound procedure gives a card', () => {
    const { exit, out, written } = ran(['card', shipped, '-o', 'card.html', '--date', '1 March 2026']);
    expect([exit, out]).toEqual([0, 'Card written to card.html\n']);
    expect(written.get('card.html')).toContain('1 March 2026');
    expect(written.get('card.html')).not.toContain('DRAFT');
  });

  // CSS Paged Media Level 3, 7.1: A5 and A4 are page sizes by name.
  test('is for A4 unless A5 is asked for', () => {
    const sizeOf = (...words: string[]): string | undefined => {
      const { exit, written } = ran(['card', shipped, '-o', 'card.html', ...words]);
      expect(exit).toBe(0);
      return /@page\s*\{[^}]*?\bsize: (\w+)/.exec(written.get('card.html') ?? '')?.[1];
    };
    expect([sizeOf(), sizeOf('--paper', 'a4'), sizeOf('--paper', 'A5'), sizeOf('--paper', 'a5')]).toEqual([
      'A4',
      'A4',
      'A5',
      'A5',
    ]);
  });

  test('is refused with the findings while there are errors, and nothing is written', () => {
    const { exit, out, written } = ran(['card', join(folder, 'z.procedure.yaml'), '-o', 'card.html']);
    expect(exit).toBe(1);
    expect(out).toContain('live-touch');
    expect(written.size).toBe(0);
  });

  test('a draft is written all the same, and marked', () => {
    const { exit, written } = ran(['card', join(folder, 'z.procedure.yaml'), '-o', 'card.html', '--draft']);
    expect(exit).toBe(0);
    expect(written.get('card.html')).toContain('DRAFT');
  });

  test.each([
    [['card', shipped], 'needs a file to write'],
    [['card', shipped, '-o', 'card.pdf'], 'later version'],
    [['card', shipped, '-o', 'card.txt'], '.html'],
    [['card', '-o', 'card.html'], 'one file'],
    [['card', shipped, '-o', 'card.html', '--paper', 'a3'], 'no paper a3: a4 or a5'],
  ])('%j cannot run', (words, why) => {
    const { exit, err } = ran(words);
    expect(exit).toBe(2);
    expect(err).toContain(why);
  });
});

describe('rules and schema', () => {
  test('every rule is listed and can be shown', () => {
    const list = ran(['rules']).out;
    for (const { name, why } of rules) {
      expect(list).toContain(name);
      expect(ran(['rules', name]).out).toContain(why);
    }
    expect(ran(['rules', 'no-such-rule']).exit).toBe(2);
  });

  test('the schema is JSON and of the draft that is promised', () => {
    const schema = JSON.parse(ran(['schema']).out) as Record<string, unknown>;
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
  });
});

describe('the words after the name', () => {
  test.each([
    [[], 'no command'],
    [['chekc'], 'no command chekc'],
    [['check'], 'a file or a folder'],
    [['check', shipped, '--fast'], 'Unknown option'],
    [['check', shipped, '--draft'], 'takes no --draft'],
    [['check', shipped, '--paper', 'a5'], 'takes no --paper'],
    [['check', shipped, '--format', 'xml'], 'no format xml'],
    [['faults', shipped], 'later version'],
    [['serve', '--draft'], 'takes no --draft'],
    [['serve'], 'needs --stdio'],
    [['serve', '--stdio'], 'beside this program'],
    [['draft', shipped], 'later version'],
    [['windows', 'a', 'b'], 'one file'],
    [['constructor'], 'no command constructor'],
    [['rules', 'live-touch', 'short-wait'], 'one name'],
    [['schema', 'x'], 'no words'],
  ])('%j cannot run, and says why in one line', (words, why) => {
    const { exit, out, err } = ran(words);
    expect([exit, out]).toEqual([2, '']);
    expect(err).toContain(why);
    expect(err.trim().split('\n')).toHaveLength(1);
  });

  test('help and version', () => {
    expect(ran(['--help'])).toMatchObject({ exit: 0, err: '' });
    expect(ran(['--version']).out).toMatch(/^\d+\.\d+\.\d+\n$/);
  });
});
