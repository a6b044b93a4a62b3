import { describe, expect, test } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { handsInText } from '../../server/src/rules/hands/hands-in-text.ts';

/* Sentences as workshops write them. Common practice, no source. */

/** What is found when a sentence stands as a note, or at another key, at the reading of the loop. */
function found(note: string, key = 'note'): readonly (string | undefined)[] {
  const text = handsInText.examples.passes.text.replace(
    '- read: driver-loop\n',
    `- read: driver-loop\n    ${key}: ${JSON.stringify(note)}\n`,
  );
  const findings = finish(analyse(snapshotOf([{ id: 'note', text }]), 'note').findings('order'));
  expect(findings.every(({ rule }) => rule === 'hands-in-text')).toBe(true);
  return findings.map(({ subject }) => subject);
}

describe('a note that gives a command', () => {
  test.each([
    ['Wiggle K30 while you watch the value.', ['K30']],
    ['Keep the key in your pocket, then unplug K10', ['K10']],
    ['Now carefully touch the pins of K30.', ['K30']],
    ['If it jumps: disconnect battery.', ['battery']],
    ['Fit bench-lamp (cold), and measure stage-1!', ['bench-lamp', 'stage-1']],
    ['Push the control-unit home.', ['control-unit']],
    ['Undo K10 and release stage-1.', ['K10', 'stage-1']],
    ['Apply 12 V to stage-1 for a moment.', ['stage-1']],
  ])('%s', (note, ids) => {
    expect(found(note)).toEqual(ids);
  });
});

test.each(['note', 'why', 'notice', 'caution', 'warning', 'danger', 'see'])(
  'a command is found at `%s`',
  (key) => {
    expect(found('Then unplug K30.', key)).toEqual(['K30']);
  },
);

describe('a note that only mentions', () => {
  test.each([
    'K30 stays unplugged until the lamp is out again.',
    'Never measure at K30 with an ohmmeter.',
    'Do not touch K30 now.',
    'A stage that was replaced is told apart by its plug at K30.',
    'Touch bare metal first, as at K30 before.',
    'The reading holds whether or not you replace stage-1 later.',
    'Plug K30 is the yellow one under the module.',
    'Nobody may touch the module of stage-1.',
    'The battery was disconnected, so codes of K10 may come.',
    'Cutting K10 open would make the part useless.',
  ])('%s', (note) => {
    expect(found(note)).toEqual([]);
  });
});

const assemblies = 'assemblies: { driver-module: [stage-1, K30] }\n';

/** What is found in a procedure of its own with these steps before the reading. */
function foundIn(steps: string): readonly string[] {
  const { text } = handsInText.examples.passes;
  const whole = text.replace('loops:\n', `${assemblies}loops:\n`).replace('steps:\n', `steps:\n${steps}`);
  const findings = finish(analyse(snapshotOf([{ id: 'draft', text: whole }]), 'draft').findings('order'));
  return findings
    .filter(({ rule }) => rule === 'hands-in-text')
    .map(({ subject, at }) => `${subject ?? '-'} at ${at.path.join('/')}`);
}

describe('an assembly', () => {
  test('that a sentence names is touched like its members', () => {
    expect(foundIn('  - do: Lift the driver-module off.\n')).toEqual(['driver-module at steps/0/do']);
  });
  test.each(['driver-module', '[stage-1, K30]'])('may be named where hands are said to be: %s', (at) => {
    expect(foundIn(`  - do: Lift the driver-module off.\n    at: ${at}\n`)).toEqual([]);
  });
  test('is an object of a command in a note too', () => {
    expect(foundIn('  - ignition: off\n    note: Lift driver-module out\n')).toEqual([
      'driver-module at steps/0/note',
    ]);
  });
});

describe('a heading', () => {
  test('may say what a step below it does', () => {
    expect(foundIn('  - section: Unplug K30\n  - ignition: off\n  - unplug: K30\n')).toEqual([]);
  });
  test('is no place for what none of them does', () => {
    expect(foundIn('  - section: Unplug K10 and measure stage-1\n  - ignition: off\n')).toEqual([
      'K10 at steps/0/section',
      'stage-1 at steps/0/section',
    ]);
  });
});

test('a place to read more is no place for a command', () => {
  expect(foundIn('  - ignition: off\n    see: Unplug K30 first\n')).toEqual(['K30 at steps/0/see']);
});

describe('what is moved by hand', () => {
  const advice = (note: string): string => {
    const text = handsInText.examples.passes.text.replace(
      '- read: driver-loop\n',
      `- read: driver-loop\n    note: ${JSON.stringify(note)}\n`,
    );
    const [finding] = finish(analyse(snapshotOf([{ id: 'note', text }]), 'note').findings('order'));
    return /Only steps|only steps are checked: (.*)\.$/.exec(finding?.message ?? '')?.[1] ?? '';
  };

  test.each([
    ['Wiggle coil-coupling.', 'coil-coupling'],
    ['Move K10 to and fro.', 'K10'],
    ['Flex coil-coupling where it leaves the column.', 'coil-coupling'],
    ['Shake K30.', 'K30'],
  ])('%s', (note, id) => {
    expect(advice(note)).toBe(`write a step \`wiggle: ${id}\` that says what is watched meanwhile`);
  });

  test('a load is moved by a verb of its own, and what is no part of the circuit by none', () => {
    expect(advice('Move bench-lamp to the other side.')).toBe('write a step `move: bench-lamp`');
    expect(advice('Shake control-unit.')).toBe('write it as a `do` with `at: control-unit`');
  });

  test('beside the step that moves it, how it is moved is no command', () => {
    const { text } = handsInText.examples.passes;
    const step = `  - wiggle: coil-coupling
    watch: driver-loop
    for: 30 s
    note: Flex coil-coupling to both sides, and do not touch K10.
`;
    const whole = text.replace('  - read: driver-loop\n', `${step}  - read: driver-loop\n`);
    const rules = finish(analyse(snapshotOf([{ id: 'a', text: whole }]), 'a').findings('order')).map(
      ({ rule }) => rule,
    );
    expect(whole).not.toBe(text);
    expect(rules).not.toContain('hands-in-text');
  });
});
